package quadmean.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quadmean.design.PlanCosts;
import quadmean.model.FinitePopulation;

/**
 * How many plots a cruise needs.
 *
 * @param variation where the expected variation comes from, in words
 * @param targets what is to be reached and what is expected, the target of the cruise first
 * @param finitePopulation whether the size of the tract was taken into account
 * @param costs what plots cost
 * @param options ways to reach the targets
 * @param laidOut the option whose plots are laid out; empty if it is out of reach
 * @param pilot what the uncertainty of a pilot means; empty without a pilot
 * @param notes what a reader should know, in sentences
 */
public record CruisePlan(
        String variation,
        List<TargetOutlook> targets,
        FinitePopulation finitePopulation,
        PlanCosts costs,
        List<PlanOption> options,
        Optional<PlanOption> laidOut,
        Optional<PilotEffect> pilot,
        List<String> notes) {
    public CruisePlan {
        targets = List.copyOf(targets);
        options = List.copyOf(options);
        notes = List.copyOf(notes);
    }

    /** The target of the cruise. */
    public PlanTarget target() {
        return targets.get(0).target();
    }

    /** What is expected of each stratum for the target of the cruise. */
    public List<StratumOutlook> outlook() {
        return targets.get(0).strata();
    }

    /** Plots to lay out in each stratum, those of clusters counted one by one; none if out of reach. */
    public Map<String, Integer> plotsByStratum() {
        Map<String, Integer> plots = new LinkedHashMap<>();
        laidOut.ifPresent(o -> {
            boolean whole = o.kind() == SampleKind.CLUSTER;
            for (int i = 0; i < outlook().size(); i++) {
                plots.put(outlook().get(i).code(), whole ? o.total() : o.plots().get(i));
            }
        });
        return plots;
    }
}
