package quadmean.estimate;

import java.util.List;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Working;

/**
 * A mean per hectare and the strata that it is made of.
 *
 * @param areaHa area estimated (ha)
 * @param strata its strata
 * @param mean the estimate
 * @param t Student's t for the confidence level and degrees of freedom; NaN without a standard error
 * @param way how it follows from the plot values
 * @param steps its steps as the estimator takes them; empty where strata say all
 */
public record MeanWorking(
        double areaHa, List<StratumWorking> strata, MeanEstimate mean, double t, Way way, List<Working.Step> steps) {
    public MeanWorking {
        strata = List.copyOf(strata);
        steps = List.copyOf(steps);
    }

    /** How an estimate follows from plot values. */
    public enum Way {
        /** By means and variances of strata, weighted by area. */
        STRATA,
        /** By another estimator of the sampling design. */
        OTHER
    }
}
