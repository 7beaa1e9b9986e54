package quadmean.measure;

import quadmean.units.DistanceTo;

/**
 * A tree near the limit of a point sample, taped.
 *
 * @param gauge the gauge of the point
 * @param dbhCm dbh (cm), above 0
 * @param distance distance along the line to the tree as taped (m), above 0, to the part of the stem that {@code to} says
 * @param to the part of the stem taped to
 * @param toTree slope along that line
 */
public record BorderlineTree(PointGauge gauge, double dbhCm, double distance, DistanceTo to, Slope toTree) {
    /** Ties that only the rounding of doubles would break, as between inches and metres, count as ties (m). */
    private static final double TIE = 1e-9;

    /** Whether a tree is tallied. */
    public enum Verdict {
        /** At the limit or nearer (at the limit: common practice, no source). */
        IN,
        /** Beyond the limit. */
        OUT
    }

    /** @throws IllegalArgumentException if dbh or distance is not above zero */
    public BorderlineTree {
        Checks.positive(dbhCm, "the dbh");
        Checks.positive(distance, "the distance");
    }

    /** Limiting distance along the line taped (m). */
    public double limit() {
        return gauge.limitingDistance(dbhCm, to, toTree);
    }

    /** Limit less distance, along the line taped (m); negative means out. */
    public double margin() {
        return limit() - distance;
    }

    /** In or out. */
    public Verdict verdict() {
        return margin() >= -TIE ? Verdict.IN : Verdict.OUT;
    }

    /**
     * Standard deviation of the margin (m): first order, independent errors of distance, dbh and slope,
     * σ² = σS² + (sec θ·PRF·σd)² + (LD·sec θ·tan θ·σθ)².
     */
    public double marginSd(BorderlineErrors errors) {
        double byDbh = toTree.along(gauge.plotRadiusFactor(to)) * errors.dbhSd();
        double bySlope = limit() * toTree.ratio() * errors.slopeSd();
        return Math.sqrt(errors.distanceSd() * errors.distanceSd() + byDbh * byDbh + bySlope * bySlope);
    }
}
