package quadmean.audit;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
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

    /** Plots of the plan that no subset has, where there are subsets. */
    public List<String> inNoSubset() {
        return subsets.isEmpty()
                ? List.of()
                : plots.stream()
                        .filter(p -> p.subset().isEmpty())
                        .map(PlotState::plot)
                        .toList();
    }

    /** Plots that subsets of the design name and the plan does not have. */
    public List<String> notInPlan() {
        Set<String> plan = plots.stream().map(PlotState::plot).collect(Collectors.toSet());
        return design.followUp().progress().subsets().stream()
                .flatMap(s -> s.plots().stream())
                .filter(p -> !plan.contains(p))
                .toList();
    }

    /** Names of the subsets that have no plot in one of several strata, and so are no samples of the whole tract. */
    public List<String> withoutPlotsIn(Stratum stratum) {
        return design.stratumList().size() < 2
                ? List.of()
                : subsets.stream()
                        .map(SubsetState::name)
                        .filter(name -> plots.stream()
                                .noneMatch(p ->
                                        p.subset().equals(name) && p.stratum().equals(stratum.code())))
                        .toList();
    }

    /** Number of plots in a state. */
    public long count(PlotState.State state) {
        return plots.stream().filter(p -> p.state() == state).count();
    }
}
