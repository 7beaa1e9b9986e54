package quadmean.audit;

import java.util.List;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.model.Stratum;

/**
 * A cruise under way.
 *
 * @param design the design with all of its strata
 * @param cruise the estimate from all plots so far
 * @param plots plots of the plan, and others that were run
 * @param subsets subsets of the plan in the order in which they are walked
 * @param stopping whether it may stop
 * @param crews crews, where there are several
 */
public record ProgressReport(
        Design design,
        CruiseResult cruise,
        List<PlotState> plots,
        List<SubsetState> subsets,
        Stopping stopping,
        List<CrewDifference> crews) {
    public ProgressReport {
        plots = List.copyOf(plots);
        subsets = List.copyOf(subsets);
        crews = List.copyOf(crews);
    }

    /** Strata without a plot so far, which the estimate leaves out. */
    public List<Stratum> notBegun() {
        return design.stratumList().stream()
                .filter(s -> !cruise.design().stratumList().contains(s))
                .toList();
    }

    /** Number of plots in a state. */
    public long count(PlotState.State state) {
        return plots.stream().filter(p -> p.state() == state).count();
    }
}
