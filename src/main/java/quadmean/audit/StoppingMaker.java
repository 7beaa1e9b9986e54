package quadmean.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import quadmean.audit.Stopping.Decision;
import quadmean.audit.Stopping.State;
import quadmean.design.Design;
import quadmean.design.ProgressSettings;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandMean;
import quadmean.estimate.Worksheet;
import quadmean.stats.FixedWidth;
import quadmean.stats.MeanEstimate;

/**
 * Decides whether a cruise may stop: at the end of a whole subset alone, for then the plots run are a sample of the tract.
 *
 * @param design the design
 * @param sheet plots run so far
 * @param plots plots of the plan
 * @param subsets its subsets in the order in which they are walked
 * @param isPlanned whether the design lists plots
 */
record StoppingMaker(
        Design design, Worksheet sheet, List<PlotState> plots, List<SubsetState> subsets, boolean isPlanned) {
    private static final MeanEstimate NONE = new MeanEstimate(0, 0, Double.NaN, Double.NaN, Double.NaN);

    Stopping stopping() {
        State state = state();
        FixedWidth rule = FixedWidth.of(settings().rule().id());
        MeanEstimate first = estimate(firstStage());
        MeanEstimate now = estimate(whole());
        boolean known = first.hasError() && now.hasError() && now.mean() > 0;
        MeanEstimate reported = known ? rule.reported(first, now) : now;
        double needed = known && rule == FixedWidth.TWO_STAGE
                ? Math.ceil(FixedWidth.unitsNeeded(first, design.targetErrorPercent(), design.confidence()))
                : Double.NaN;
        boolean may = known && rule.mayStop(first, now, design.targetErrorPercent(), design.confidence());
        return new Stopping(state, decision(state, may), first, reported, needed);
    }

    private ProgressSettings settings() {
        return design.followUp().progress();
    }

    private State state() {
        if (!isPlanned) {
            return State.NO_LIST;
        }
        long done =
                plots.stream().filter(p -> p.state() == PlotState.State.DONE).count();
        if (plots.stream().noneMatch(p -> p.state() == PlotState.State.MISSING)) {
            return State.COMPLETE;
        }
        if (done == 0) {
            return State.NOT_STARTED;
        }
        if (subsets.isEmpty()) {
            return State.NO_SUBSETS;
        }
        boolean loose = plots.stream()
                .anyMatch(p -> p.state() == PlotState.State.DONE && p.subset().isEmpty());
        return loose || subsets.stream().anyMatch(SubsetState::isPart) ? State.PART_WALKED : State.WHOLE_SUBSETS;
    }

    private static Decision decision(State state, boolean may) {
        return switch (state) {
            case NO_LIST, NOT_STARTED -> Decision.CANNOT_TELL;
            case COMPLETE -> Decision.DONE;
            case NO_SUBSETS -> Decision.FINISH_PLAN;
            case PART_WALKED -> Decision.FINISH_SUBSET;
            case WHOLE_SUBSETS -> may ? Decision.MAY_STOP : Decision.GO_ON;
        };
    }

    private Set<String> whole() {
        return subsets.stream()
                .filter(SubsetState::isWhole)
                .map(SubsetState::name)
                .collect(Collectors.toSet());
    }

    /** The first subsets that together have the least number of plots; none before they are walked. */
    private Set<String> firstStage() {
        Set<String> names = new HashSet<>();
        int run = 0;
        for (SubsetState s : subsets) {
            if (!s.isWhole()) {
                return Set.of();
            }
            names.add(s.name());
            run += s.plots();
            if (run >= settings().minimumPlots()) {
                return names;
            }
        }
        return Set.of();
    }

    private MeanEstimate estimate(Set<String> names) {
        Set<String> own = plots.stream()
                .filter(p -> names.contains(p.subset()))
                .map(PlotState::plot)
                .collect(Collectors.toSet());
        List<SampledPlot> chosen =
                sheet.plots().stream().filter(p -> own.contains(p.id())).toList();
        if (chosen.isEmpty()) {
            return NONE;
        }
        return StandMean.of(sheet.strata(), chosen, sheet.settings(), design.targetAttribute())
                .estimate();
    }
}
