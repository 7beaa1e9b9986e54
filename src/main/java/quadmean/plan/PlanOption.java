package quadmean.plan;

import java.util.List;

/**
 * One way to reach the target.
 *
 * @param name how plots are shared among strata
 * @param plots plots for each stratum, in the order of the outlook; empty if the target is out of reach
 * @param expectedErrorPercent sampling error expected with them (percent); NaN if out of reach
 */
public record PlanOption(String name, List<Integer> plots, double expectedErrorPercent) {
    public PlanOption {
        plots = List.copyOf(plots);
    }

    /** Plots in all. */
    public int total() {
        return plots.stream().mapToInt(Integer::intValue).sum();
    }

    /** Whether any number of plots reaches the target. */
    public boolean isReachable() {
        return !plots.isEmpty();
    }
}
