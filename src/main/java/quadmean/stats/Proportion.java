package quadmean.stats;

import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * A share of units that have a property, from a simple random sample.
 *
 * @param having units that have it, 0 to n
 * @param n units in the sample, at least 1
 */
public record Proportion(int having, int n) {
    private static final double FINE = 1e-14;

    /** Refuses counts that are no share. */
    public Proportion {
        Arguments.atLeast(having, 0, "units with the property");
        Arguments.atLeast(n, Math.max(1, having), "units in the sample");
    }

    /**
     * The share with its standard error √(p(1-p)/(n-1)·(1-f)), on n - 1 degrees of freedom: a mean of zeros and ones (Freese
     * 1962).
     *
     * @param populationUnits N; infinity for no correction
     */
    public MeanEstimate estimate(double populationUnits) {
        double[] values = new double[n];
        java.util.Arrays.fill(values, 0, having, 1);
        return StratifiedMean.simple(new StratumSample(1, populationUnits, values));
    }

    /**
     * Exact limits without finite population correction: each tail holds at most half of 1 - confidence (Clopper and Pearson
     * 1934).
     *
     * @param confidence confidence level, in (0, 1)
     */
    public Interval exact(double confidence) {
        return limits(having, n, confidence);
    }

    /**
     * The same for numbers that need not be whole, such as effective ones.
     *
     * @param having units that have it, 0 to n; NaN gives no limits
     * @param n units in the sample, above 0
     */
    static Interval limits(double having, double n, double confidence) {
        double tail = (1 - Arguments.confidence(confidence)) / 2;
        if (Double.isNaN(having) || Double.isNaN(n)) {
            return new Interval(Double.NaN, Double.NaN);
        }
        double lower = having == 0
                ? 0
                : new BetaDistribution(null, having, n - having + 1.0, FINE).inverseCumulativeProbability(tail);
        double upper = having == n
                ? 1
                : new BetaDistribution(null, having + 1.0, n - having, FINE).inverseCumulativeProbability(1 - tail);
        return new Interval(lower, upper);
    }
}
