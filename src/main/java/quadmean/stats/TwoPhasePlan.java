package quadmean.stats;

/**
 * Double sampling: a cheap reading on n1 units and the dear one on n2 of them, with the variance of {@link DoubleSampling} for a
 * correlation r between the two. On n2 - 2 degrees of freedom. Its size is n2; n1 follows in a fixed ratio.
 *
 * @param cvPercent coefficient of variation of the dear reading between units (percent), above 0
 * @param correlation r between the readings, in (0, 1)
 * @param firstPerSecond n1/n2, at least 1
 */
public record TwoPhasePlan(double cvPercent, double correlation, double firstPerSecond) implements PlannedSample {
    private static final int LEAST = 3;

    /** Refuses what is no spread or correlation. */
    public TwoPhasePlan {
        Arguments.positive(cvPercent, "CV");
        Arguments.inside(correlation, 0, 1, "correlation of the two readings");
        Arguments.inside(firstPerSecond, 0, SampleSize.LARGEST, "units counted for each one measured");
    }

    /**
     * The ratio n1/n2 that gives the least error for the cost: √(r²/(1 - r²)·c2/c1) (Cochran 1977, section 12.7; number from memory),
     * at least 1, and no more than the largest sample has on its fewest units.
     *
     * @param firstCost c1 of the cheap reading
     * @param secondCost c2 that the dear one adds
     */
    public static double bestRatio(double correlation, double firstCost, double secondCost) {
        double explained = correlation * correlation;
        double best = Math.sqrt(explained / (1 - explained) * secondCost / firstCost);
        return Math.min(Math.max(1, best), (double) SampleSize.LARGEST / LEAST);
    }

    @Override
    public int least() {
        return LEAST;
    }

    @Override
    public int most() {
        return (int) (SampleSize.LARGEST / Math.max(1, firstPerSecond));
    }

    /** Units of the first sample, and of the second. */
    @Override
    public int[] parts(int n) {
        return new int[] {(int) Math.max(n, Math.ceil(n * firstPerSecond)), n};
    }

    @Override
    public MeanEstimate expected(int[] parts) {
        double spread = cvPercent * cvPercent;
        double residual = spread * (1 - correlation * correlation);
        double variance = DoubleSampling.variance(residual, spread, parts[1], parts[0], Double.POSITIVE_INFINITY);
        return new MeanEstimate(parts[1], parts[1] - 2.0, 100, Math.sqrt(variance), Math.sqrt(residual));
    }
}
