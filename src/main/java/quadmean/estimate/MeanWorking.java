package quadmean.estimate;

import java.util.List;
import quadmean.stats.MeanEstimate;

/**
 * A mean per hectare and the strata that it is made of.
 *
 * @param areaHa area estimated (ha)
 * @param strata its strata
 * @param mean the estimate
 * @param t Student's t for the confidence level and degrees of freedom; NaN without a standard error
 * @param way how it follows from the plot values
 */
public record MeanWorking(double areaHa, List<StratumWorking> strata, MeanEstimate mean, double t, Way way) {
    public MeanWorking {
        strata = List.copyOf(strata);
    }

    /** How an estimate follows from plot values. */
    public enum Way {
        /** By means and variances of strata, weighted by area. */
        STRATA,
        /** By another estimator of the sampling design. */
        OTHER
    }
}
