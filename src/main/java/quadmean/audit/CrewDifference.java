package quadmean.audit;

/**
 * How the plots of a crew stand to those of the other crews, each less the mean of its stratum.
 *
 * @param crew the crew
 * @param plots its plots so far
 * @param mean mean of its plots less those of their strata (per hectare, metric)
 * @param percent the same in percent of the mean of all plots
 * @param pValue probability of a difference from the other crews at least as large, if there were none (Welch's t test); NaN unless
 *     plots were given to crews at random, and where it cannot be computed
 */
public record CrewDifference(String crew, int plots, double mean, double percent, double pValue) {}
