package quadmean.estimate;

import java.util.List;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Working;

/**
 * A ratio of two means and where its error comes from.
 *
 * @param numerator mean of the numerator per hectare (metric)
 * @param denominator mean of the denominator per hectare (metric)
 * @param ratio the ratio
 * @param residuals mean of (y - ratio·x)/mean(x) over the plots, whose standard error is that of the ratio
 * @param own its steps where it is no ratio of those two means but one of the measured trees alone; else empty
 */
public record RatioWorking(
        MeanEstimate numerator,
        MeanEstimate denominator,
        MeanEstimate ratio,
        MeanWorking residuals,
        List<Working.Step> own) {
    public RatioWorking {
        own = List.copyOf(own);
    }
}
