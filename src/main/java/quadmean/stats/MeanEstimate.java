package quadmean.stats;

/**
 * An estimated mean or ratio with its error.
 *
 * @param n number of sampled units
 * @param df degrees of freedom; 0 where there is no variance
 * @param mean the estimate
 * @param se its standard error; NaN where a stratum has fewer than two units
 * @param sd standard deviation between units: within strata, weighted by their size
 */
public record MeanEstimate(int n, double df, double mean, double se, double sd) {

    /** Whether there were enough units for a standard error. */
    public boolean hasError() {
        return Double.isFinite(se) && df > 0;
    }

    /** Coefficient of variation between units, in percent of the mean; NaN for a mean of zero. */
    public double cvPercent() {
        return mean == 0 ? Double.NaN : 100 * sd / Math.abs(mean);
    }

    /**
     * Half the width of the confidence interval, t·SE.
     *
     * @param confidence confidence level, in (0, 1)
     */
    public double halfWidth(double confidence) {
        return hasError() ? StudentT.critical(confidence, df) * se : Double.NaN;
    }

    /** Confidence limits by Student's t; NaN without a standard error. */
    public Interval interval(double confidence) {
        double half = halfWidth(confidence);
        return new Interval(mean - half, mean + half);
    }

    /** Half width of the confidence interval in percent of the mean; NaN for a mean of zero. */
    public double samplingErrorPercent(double confidence) {
        return mean == 0 ? Double.NaN : 100 * halfWidth(confidence) / Math.abs(mean);
    }

    /** The same estimate in another scale: all but n and df times k. */
    public MeanEstimate times(double k) {
        return new MeanEstimate(n, df, k * mean, Math.abs(k) * se, Math.abs(k) * sd);
    }

    /** The same error about another value. */
    MeanEstimate about(double value) {
        return new MeanEstimate(n, df, value, se, sd);
    }

    /** The same value with another variance on other degrees of freedom; a negative variance gives no error. */
    MeanEstimate withVariance(double variance, double otherDf) {
        return new MeanEstimate(n, Double.isNaN(variance) ? 0 : otherDf, mean, Math.sqrt(variance), sd);
    }

    /** The squared standard error. */
    public double variance() {
        return se * se;
    }
}
