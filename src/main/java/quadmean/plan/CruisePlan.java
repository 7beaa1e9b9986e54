package quadmean.plan;

import java.util.List;
import quadmean.model.FinitePopulation;

/**
 * How many plots a cruise needs.
 *
 * @param variation where the expected variation comes from, in words
 * @param outlook what is expected of each stratum
 * @param targetErrorPercent allowed sampling error (percent)
 * @param confidence confidence level, in (0, 1)
 * @param finitePopulation whether the size of the tract was taken into account
 * @param options ways to reach the target
 * @param notes what a reader should know, in sentences
 */
public record CruisePlan(
        String variation,
        List<StratumOutlook> outlook,
        double targetErrorPercent,
        double confidence,
        FinitePopulation finitePopulation,
        List<PlanOption> options,
        List<String> notes) {
    public CruisePlan {
        outlook = List.copyOf(outlook);
        options = List.copyOf(options);
        notes = List.copyOf(notes);
    }
}
