package quadmean.cli;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import quadmean.measure.InstrumentUse;
import quadmean.model.CubicRule;
import quadmean.model.Policy;
import quadmean.units.AngleScale;
import quadmean.units.DistanceTo;
import quadmean.units.UnitSystem;
import quadmean.volume.Solid;
import quadmean.volume.VolumeFitForm;
import quadmean.volume.VolumeFitWeights;

/** Options that take one of a few words. */
final class Choices {
    private Choices() {}

    static final class Scale implements ITypeConverter<AngleScale> {
        @Override
        public AngleScale convert(String text) {
            return find(AngleScale.values(), AngleScale::id, text);
        }
    }

    static final class Units implements ITypeConverter<UnitSystem> {
        @Override
        public UnitSystem convert(String text) {
            return find(UnitSystem.values(), UnitSystem::id, text);
        }
    }

    static final class To implements ITypeConverter<DistanceTo> {
        @Override
        public DistanceTo convert(String text) {
            return find(DistanceTo.values(), DistanceTo::id, text.equals("center") ? "centre" : text);
        }
    }

    static final class Instruments implements ITypeConverter<InstrumentUse> {
        @Override
        public InstrumentUse convert(String text) {
            return find(InstrumentUse.values(), InstrumentUse::id, text);
        }
    }

    static final class Forms implements ITypeConverter<VolumeFitForm> {
        @Override
        public VolumeFitForm convert(String text) {
            return find(VolumeFitForm.values(), VolumeFitForm::id, text);
        }
    }

    static final class FitWeights implements ITypeConverter<VolumeFitWeights> {
        @Override
        public VolumeFitWeights convert(String text) {
            return find(VolumeFitWeights.values(), VolumeFitWeights::id, text);
        }
    }

    static final class CubicRules implements ITypeConverter<CubicRule> {
        @Override
        public CubicRule convert(String text) {
            return find(CubicRule.values(), CubicRule::id, text);
        }
    }

    /** The solids that taper to a tip. */
    static final class Tips implements ITypeConverter<Solid> {
        @Override
        public Solid convert(String text) {
            return find(new Solid[] {Solid.CONE, Solid.PARABOLOID, Solid.NEILOID}, Solid::label, text);
        }
    }

    /** What becomes of a row that cannot be used. */
    static final class BadRows implements ITypeConverter<Policy> {
        @Override
        public Policy convert(String text) {
            return find(new Policy[] {Policy.REFUSE, Policy.DROP}, Policy::id, text);
        }
    }

    /** From where several readings of a tree were taken. */
    enum Sides {
        /** Anywhere: plain repeats. */
        ANY("any"),
        /** Two, from opposite sides in the plane of the lean. */
        OPPOSITE("opposite");

        private final String id;

        Sides(String id) {
            this.id = id;
        }

        String id() {
            return id;
        }

        static final class Converter implements ITypeConverter<Sides> {
            @Override
            public Sides convert(String text) {
                return find(values(), Sides::id, text);
            }
        }
    }

    private static <T> T find(T[] values, Function<T, String> id, String text) {
        return Arrays.stream(values)
                .filter(v -> id.apply(v).equals(text))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("'" + text + "' is none of "
                        + Arrays.stream(values).map(id).collect(Collectors.joining(", "))));
    }
}
