package quadmean.volume;

import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.jspecify.annotations.Nullable;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.units.BasalArea;
import quadmean.units.Unit;

/** A tree volume equation, evaluated in the units of its coefficients. */
public final class TreeEquation {
    private static final double LN_10 = Math.log(10);
    /** Cubic feet over square inches in cubic metres over square centimetres: by definition 0.0043891. */
    private static final double HONER_TO_METRIC =
            Unit.CUBIC_FOOT.convert(1, Unit.CUBIC_METRE) / Math.pow(Unit.INCH.convert(1, Unit.CENTIMETRE), 2);

    private static final double FOOT = Unit.FOOT.convert(1, Unit.METRE);

    private final VolumeSpec spec;
    private final @Nullable DoubleBinaryOperator stem;

    private TreeEquation(VolumeSpec spec, @Nullable DoubleBinaryOperator stem) {
        this.spec = spec;
        this.stem = stem;
    }

    /** The equation that a design states; of the form {@link VolumeForm#TAPER} it gives no volume. */
    public static TreeEquation of(VolumeSpec spec) {
        return new TreeEquation(spec, null);
    }

    /**
     * The equation that a design states, with a stem profile for the form {@link VolumeForm#TAPER}.
     *
     * @param spec the statement
     * @param stem volume of the stem (m³) of dbh (cm) and height (m)
     */
    public static TreeEquation of(VolumeSpec spec, DoubleBinaryOperator stem) {
        return new TreeEquation(spec, stem);
    }

    /** The statement of the equation. */
    public VolumeSpec spec() {
        return spec;
    }

    /** Why a tree gets no volume. */
    public enum Gap {
        NO_HEIGHT("the tree has no height"),
        NO_LOGS("the tree has no number of 16-ft logs"),
        NO_PROFILE("the species has no stem profile"),
        OUTSIDE_TABLE("the tree lies outside the volume table"),
        NOT_POSITIVE("the equation gives nothing above zero");

        private final String label;

        Gap(String label) {
            this.label = label;
        }

        /** The reason in words. */
        public String label() {
            return label;
        }
    }

    /**
     * Volume of one tree by dbh and height.
     *
     * @param dbhCm dbh (cm), above 0
     * @param heightM total height (m), above 0
     * @return volume (m³; board feet of an equation for board feet); NaN where the equation has no positive value, as at
     *     the edge of its range, or needs logs
     */
    public double volumeM3(double dbhCm, double heightM) {
        return volume(dbhCm, heightM, Double.NaN);
    }

    /**
     * Volume of one tree.
     *
     * @param dbhCm dbh (cm), above 0
     * @param heightM total height (m), above 0; NaN if not known
     * @param logs number of 16-ft logs; NaN if not known
     * @return m³, or board feet where {@link VolumeSpec#isBoardFeet} says so; NaN where {@link #gap} says why
     */
    public double volume(double dbhCm, double heightM, double logs) {
        double v = raw(dbhCm, heightM, logs);
        if (!(v > 0 && v < Double.POSITIVE_INFINITY)) {
            return Double.NaN;
        }
        return spec.isBoardFeet() ? v : spec.volumeUnit().convert(v, Unit.CUBIC_METRE);
    }

    /**
     * An equation with the numbers of one tree, in the units of its coefficients.
     *
     * @param spec the equation
     * @param dbh dbh
     * @param height total height; NaN if not known
     * @param logs number of 16-ft logs; NaN if not known
     * @param value what the equation gives, of any sign; NaN where it has no value
     */
    public record Working(VolumeSpec spec, double dbh, double height, double logs, double value) {}

    /** The numbers behind {@link #volume}. */
    public Working working(double dbhCm, double heightM, double logs) {
        return new Working(
                spec,
                Unit.CENTIMETRE.convert(dbhCm, spec.dbhUnit()),
                spec.needsHeight() ? Unit.METRE.convert(heightM, spec.heightUnit()) : Double.NaN,
                logs,
                raw(dbhCm, heightM, logs));
    }

    /** Why a tree gets no volume; empty if it gets one. */
    public Optional<Gap> gap(double dbhCm, double heightM, double logs) {
        if (!Double.isNaN(volume(dbhCm, heightM, logs))) {
            return Optional.empty();
        }
        if (spec.needsLogs() && Double.isNaN(logs)) {
            return Optional.of(Gap.NO_LOGS);
        }
        if (spec.needsHeight() && Double.isNaN(heightM)) {
            return Optional.of(Gap.NO_HEIGHT);
        }
        if (spec.form() == VolumeForm.TAPER && stem == null) {
            return Optional.of(Gap.NO_PROFILE);
        }
        boolean outside = spec.form() == VolumeForm.TABLE && Double.isNaN(raw(dbhCm, heightM, logs));
        return Optional.of(outside ? Gap.OUTSIDE_TABLE : Gap.NOT_POSITIVE);
    }

    /** Value in the unit of the equation, of any sign; NaN where it has none. */
    private double raw(double dbhCm, double heightM, double logs) {
        double d = Unit.CENTIMETRE.convert(dbhCm, spec.dbhUnit());
        double h = Unit.METRE.convert(heightM, spec.heightUnit());
        return switch (spec.form()) {
            case COMBINED_VARIABLE -> c(0) + c(1) * d * d * h;
            case SCHUMACHER_HALL -> fromLog(c(0), c(1) * Math.log(d) + c(2) * Math.log(h), 0);
            case LOG_POLYNOMIAL -> logPolynomial(Math.log(d), Math.log(h));
            case HONER -> d * d / (c(0) + c(1) / h);
            case HONER_METRIC -> HONER_TO_METRIC * d * d / (c(0) + FOOT * c(1) / h);
            case FORM_FACTOR -> Unit.CUBIC_METRE.convert(c(0) * BasalArea.ofTree(dbhCm) * heightM, spec.volumeUnit());
            case FORM_CLASS -> formClass(d, logs);
            case TABLE -> TableReader.volume(spec.table().orElseThrow(), d, spec.needsLogs() ? logs : h);
            case TAPER ->
                stem == null
                        ? Double.NaN
                        : Unit.CUBIC_METRE.convert(stem.applyAsDouble(dbhCm, heightM), spec.volumeUnit());
        };
    }

    private double logPolynomial(double lnD, double lnH) {
        double second = c(3) * lnD * lnD + c(4) * lnH * lnH + c(5) * lnD * lnH;
        return fromLog(c(0), c(1) * lnD + c(2) * lnH, second);
    }

    /**
     * Back-transformed with the factor exp(σ²/2) where the residual standard deviation σ on the log scale is stated
     * (Baskerville 1972, from memory).
     *
     * @param constant on the log scale of the equation
     * @param first terms of first degree in natural logarithms, which no base changes
     * @param second terms of second degree in natural logarithms
     */
    private double fromLog(double constant, double first, double second) {
        double perUnit = spec.logBase() == LogBase.TEN ? LN_10 : 1;
        double sd = perUnit * spec.residualSd();
        return Math.exp(perUnit * constant + first + second / perUnit + sd * sd / 2);
    }

    private double formClass(double d, double logs) {
        double table = inLogs(0, logs) + inLogs(3, logs) * d + inLogs(6, logs) * d * d;
        return table * (1 + c(9) / 100 * (c(11) - c(10)));
    }

    private double inLogs(int first, double logs) {
        return c(first) + c(first + 1) * logs + c(first + 2) * logs * logs;
    }

    private double c(int i) {
        return spec.coefficients().get(i);
    }
}
