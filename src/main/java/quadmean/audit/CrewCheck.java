package quadmean.audit;

import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;

/**
 * How a crew reads beside the checker.
 *
 * @param crew the crew
 * @param reading what was read
 * @param trees its matched trees with such a reading
 * @param plots its check plots with such a reading
 * @param bias mean of crew less checker, with the error between plots
 * @param limits its limits, wide enough for all crews and readings together; NaN on a single plot
 */
public record CrewCheck(String crew, Reading reading, int trees, int plots, MeanEstimate bias, Interval limits) {
    /** Whether the crew reads high or low by more than chance. */
    public boolean isBiased() {
        return limits.lower() > 0 || limits.upper() < 0;
    }
}
