package quadmean.volume;

import java.util.OptionalDouble;
import quadmean.model.BarkSpec;
import quadmean.units.Unit;

/** Takes bark off diameters: dib = a·dob^b, in the unit of the coefficients. */
public final class Bark {
    private final BarkSpec spec;

    private Bark(BarkSpec spec) {
        this.spec = spec;
    }

    /**
     * The bark that a design states.
     *
     * @throws IllegalArgumentException unless both coefficients are above zero and finite
     */
    public static Bark of(BarkSpec spec) {
        Sizes.positive(spec.a(), "bark coefficient a");
        Sizes.positive(spec.b(), "bark coefficient b");
        return new Bark(spec);
    }

    /** The statement of the coefficients. */
    public BarkSpec spec() {
        return spec;
    }

    /**
     * Diameter inside bark; where the formula would have bark of less than no thickness, the diameter outside it.
     *
     * @param outsideCm diameter outside bark (cm), zero or more
     * @return cm
     * @throws IllegalArgumentException if the diameter is out of its domain
     */
    public double insideCm(double outsideCm) {
        double outside =
                Unit.CENTIMETRE.convert(Sizes.notNegative(outsideCm, "diameter outside bark (cm)"), spec.unit());
        double inside = spec.a() * Math.pow(outside, spec.b());
        return Math.min(outsideCm, spec.unit().convert(inside, Unit.CENTIMETRE));
    }

    /** Volume inside bark over volume outside: k² where the ratio of diameters is k all along the stem, else empty. */
    public OptionalDouble volumeRatio() {
        double k = Math.min(1, spec.a());
        return spec.b() == 1 ? OptionalDouble.of(k * k) : OptionalDouble.empty();
    }
}
