package quadmean.estimate;

import quadmean.stats.MeanEstimate;

/**
 * A ratio of two means and where its error comes from.
 *
 * @param numerator mean of the numerator per hectare (metric)
 * @param denominator mean of the denominator per hectare (metric)
 * @param ratio the ratio
 * @param residuals mean of (y - ratio·x)/mean(x) over the plots, whose standard error is that of the ratio
 */
public record RatioWorking(
        MeanEstimate numerator, MeanEstimate denominator, MeanEstimate ratio, MeanWorking residuals) {}
