package quadmean.plan;

import quadmean.stats.SampleSearch.Goal;
import quadmean.units.Attribute;

/**
 * What a cruise is to reach.
 *
 * @param attribute what it applies to
 * @param errorPercent allowed sampling error (percent), above 0
 * @param confidence confidence level, in (0, 1)
 */
public record PlanTarget(Attribute attribute, double errorPercent, double confidence) {
    Goal goal() {
        return Goal.expected(errorPercent, confidence);
    }
}
