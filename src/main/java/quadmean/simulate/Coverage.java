package quadmean.simulate;

import quadmean.model.IntervalRule;
import quadmean.stats.Interval;
import quadmean.stats.Proportion;

/**
 * How often confidence limits held the truth.
 *
 * @param rule how the limits were made
 * @param intervals cruises that had limits
 * @param covered of these, limits that held the truth
 * @param below limits that lay wholly below it
 * @param above limits that lay wholly above it
 * @param halfWidth mean of half the width of the limits, in the unit of the estimate
 */
public record Coverage(IntervalRule rule, long intervals, long covered, long below, long above, double halfWidth) {
    private static final double CERTAIN = 0.95;

    /** Share of limits that held the truth; NaN without limits. */
    public double share() {
        return (double) covered / intervals;
    }

    /** Its binomial standard error. */
    public double error() {
        return Math.sqrt(share() * (1 - share()) / intervals);
    }

    /** Exact 95 % limits of the share (Clopper and Pearson). */
    public Interval limits() {
        return intervals == 0
                ? new Interval(Double.NaN, Double.NaN)
                : new Proportion(Math.toIntExact(covered), Math.toIntExact(intervals)).exact(CERTAIN);
    }
}
