package quadmean.model;

/**
 * What the design says of how to estimate.
 *
 * @param interval how confidence limits are made
 * @param replicates number of resamples of a bootstrap
 * @param product how the error of counts times a ratio of measured trees is worked out
 */
public record EstimateRules(IntervalRule interval, int replicates, ProductRule product) {
    /** Student's t; 2000 resamples where a bootstrap is asked for. */
    public static final EstimateRules STANDARD = new EstimateRules(IntervalRule.STUDENT_T, 2000, ProductRule.BRUCE);
}
