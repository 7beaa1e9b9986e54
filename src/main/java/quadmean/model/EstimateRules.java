package quadmean.model;

/**
 * What the design says of how to estimate.
 *
 * @param interval how confidence limits are made
 * @param replicates number of resamples of a bootstrap
 * @param estimation how plots become estimates
 * @param errors what goes into the error budget
 * @param product how the error of counts times a ratio of measured trees is worked out
 */
public record EstimateRules(
        IntervalRule interval, int replicates, EstimatorRules estimation, ErrorRules errors, ProductRule product) {
    /** Student's t; 2000 resamples where a bootstrap is asked for; means of plots. */
    public static final EstimateRules STANDARD = new EstimateRules(
            IntervalRule.STUDENT_T, 2000, EstimatorRules.STANDARD, ErrorRules.STANDARD, ProductRule.BRUCE);

    /** The same with another way from plots to estimates. */
    public EstimateRules with(EstimatorRules other) {
        return new EstimateRules(interval, replicates, other, errors, product);
    }
}
