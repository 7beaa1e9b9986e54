package quadmean.stats;

/**
 * Confidence limits.
 *
 * @param lower lower limit
 * @param upper upper limit
 */
public record Interval(double lower, double upper) {}
