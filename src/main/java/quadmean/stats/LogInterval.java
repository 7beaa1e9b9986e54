package quadmean.stats;

/**
 * Confidence limits on a log scale, mean·exp(±t·SE/mean): never below zero, and wider above than below, as fits skewed positive
 * values (by the delta method). The mean stays the arithmetic one; a mean of logarithms would fail at plots without trees.
 */
public final class LogInterval {
    private LogInterval() {}

    /**
     * The limits.
     *
     * @param estimate an estimate above 0
     * @param confidence confidence level, in (0, 1)
     * @return limits; NaN without an error, or where the estimate is not above 0
     */
    public static Interval of(MeanEstimate estimate, double confidence) {
        double mean = estimate.mean();
        double step = mean > 0 ? estimate.halfWidth(confidence) / mean : Double.NaN;
        return new Interval(mean * Math.exp(-step), mean * Math.exp(step));
    }
}
