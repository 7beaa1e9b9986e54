package quadmean.estimate;

/**
 * The estimate per hectare as it stood after the first so many plots of the tally.
 *
 * @param plots number of plots
 * @param plot the last of them
 * @param mean the estimate (metric, per hectare); NaN while a stratum has no plot
 * @param lower lower confidence limit; NaN while a stratum has fewer than two plots
 * @param upper upper confidence limit
 */
public record RunningMean(int plots, String plot, double mean, double lower, double upper) {}
