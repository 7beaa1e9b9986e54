package quadmean.volume;

import java.util.List;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.units.Unit;

/** A tree volume equation, evaluated in the units of its coefficients. */
public final class TreeEquation {
    private static final double LN_10 = Math.log(10);

    private final VolumeSpec spec;

    private TreeEquation(VolumeSpec spec) {
        this.spec = spec;
    }

    /** The equation that a design states. */
    public static TreeEquation of(VolumeSpec spec) {
        return new TreeEquation(spec);
    }

    /** The statement of the equation. */
    public VolumeSpec spec() {
        return spec;
    }

    /**
     * Volume of one tree.
     *
     * @param dbhCm dbh (cm), above 0
     * @param heightM total height (m), above 0
     * @return volume (m³); NaN where the equation has no positive value, as at the edge of its range
     */
    public double volumeM3(double dbhCm, double heightM) {
        double d = Unit.CENTIMETRE.convert(dbhCm, spec.dbhUnit());
        double h = Unit.METRE.convert(heightM, spec.heightUnit());
        double v = switch (spec.form()) {
            case COMBINED_VARIABLE -> coefficient(0) + coefficient(1) * d * d * h;
            case SCHUMACHER_HALL -> schumacherHall(d, h);
            case HONER -> d * d / (coefficient(0) + coefficient(1) / h);
        };
        return v > 0 && v < Double.POSITIVE_INFINITY ? spec.volumeUnit().convert(v, Unit.CUBIC_METRE) : Double.NaN;
    }

    /**
     * Back-transformed with the factor exp(σ²/2) where the design states the residual standard deviation σ on the log
     * scale (Baskerville 1972, from memory).
     */
    private double schumacherHall(double d, double h) {
        double perUnit = spec.logBase() == LogBase.TEN ? LN_10 : 1;
        double logs = perUnit * coefficient(0) + coefficient(1) * Math.log(d) + coefficient(2) * Math.log(h);
        double sd = perUnit * spec.residualSd();
        return Math.exp(logs + sd * sd / 2);
    }

    private double coefficient(int i) {
        List<Double> c = spec.coefficients();
        return c.get(i);
    }
}
