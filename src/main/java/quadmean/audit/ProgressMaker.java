package quadmean.audit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import quadmean.audit.PlotState.State;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.cruise.SomePlots;
import quadmean.design.Design;
import quadmean.design.ProgressSettings;
import quadmean.design.StratumEntry;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandMean;
import quadmean.estimate.Worksheet;
import quadmean.model.ListedPlot;
import quadmean.model.Tally;

/** Looks at a cruise under way. */
public final class ProgressMaker {
    private final Design design;
    private final CruiseResult cruise;
    private final Worksheet sheet;
    private final Map<String, String> subsets = new LinkedHashMap<>();

    private ProgressMaker(Design design, CruiseResult cruise, Worksheet sheet) {
        this.design = design;
        this.cruise = cruise;
        this.sheet = sheet;
        cruise.tally().listed().stream()
                .filter(p -> !p.subset().isEmpty())
                .forEach(p -> subsets.put(p.id(), p.subset()));
        design.followUp().progress().subsets().forEach(s -> s.plots().forEach(p -> subsets.put(p, s.name())));
    }

    /**
     * Reads the tally so far, estimates from it and compares it with the plan.
     *
     * @throws IOException if a tally file is missing or cannot be read
     */
    public static ProgressRun run(Design design) throws IOException {
        CruiseRun run = SomePlots.run(design);
        CruiseResult result = run.result();
        Worksheet sheet = run.worksheet();
        if (result == null || sheet == null) {
            return new ProgressRun(run.tally(), null);
        }
        return new ProgressRun(run.tally(), new ProgressMaker(design, result, sheet).report());
    }

    private ProgressReport report() {
        List<PlotState> plots = plots();
        List<SubsetState> states = subsets(plots);
        return new ProgressReport(
                design,
                cruise,
                plots,
                states,
                new StoppingMaker(design, sheet, plots, states, isPlanned()).stopping(),
                CrewDifferences.of(plots, design.followUp().progress().assigned()));
    }

    private boolean isPlanned() {
        return !cruise.tally().listed().isEmpty()
                || design.strata().stream().anyMatch(s -> !s.plots().isEmpty());
    }

    /** Plots of the plan in its order, then those that were run besides. */
    private List<PlotState> plots() {
        Tally tally = cruise.tally();
        Map<String, String> stratumOf = new LinkedHashMap<>();
        for (StratumEntry s : design.strata()) {
            s.plots().forEach(p -> stratumOf.put(p, s.stratum().code()));
        }
        tally.listed().stream()
                .filter(p -> !p.isFirstPhaseOnly())
                .forEach((ListedPlot p) -> stratumOf.putIfAbsent(p.id(), p.stratum()));
        Set<String> done = tally.plots().stream().map(p -> p.id()).collect(Collectors.toSet());
        tally.plots().forEach(p -> stratumOf.putIfAbsent(p.id(), p.stratum()));
        Map<String, Double> values = values();
        List<PlotState> states = new ArrayList<>();
        stratumOf.forEach((plot, stratum) -> states.add(new PlotState(
                plot,
                stratum,
                subsets.getOrDefault(plot, ""),
                design.followUp().crewOf(plot).orElse(""),
                done.contains(plot)
                        ? State.DONE
                        : design.exceptions().notReached().contains(plot) ? State.NOT_REACHED : State.MISSING,
                values.getOrDefault(plot, Double.NaN))));
        return states;
    }

    private Map<String, Double> values() {
        if (Audit.whyNoValues(cruise).isPresent()) {
            return Map.of();
        }
        StandMean mean = StandMean.of(sheet.strata(), sheet.plots(), sheet.settings(), design.targetAttribute());
        return sheet.plots().stream().collect(Collectors.toMap(SampledPlot::id, mean::value));
    }

    /** In the order of the design; those of a plot list by number where names are numbers, else by name. */
    private List<SubsetState> subsets(List<PlotState> plots) {
        Map<String, List<PlotState>> bySubset = plots.stream()
                .filter(p -> !p.subset().isEmpty())
                .collect(Collectors.groupingBy(PlotState::subset, LinkedHashMap::new, Collectors.toList()));
        return bySubset.entrySet().stream()
                .map(e -> new SubsetState(e.getKey(), e.getValue().size(), (int) e.getValue().stream()
                        .filter(p -> p.state() != State.MISSING)
                        .count()))
                .sorted(order())
                .toList();
    }

    private Comparator<SubsetState> order() {
        List<String> walked = design.followUp().progress().subsets().stream()
                .map(ProgressSettings.Subset::name)
                .toList();
        Comparator<SubsetState> byRank =
                Comparator.comparingInt(s -> walked.contains(s.name()) ? walked.indexOf(s.name()) : walked.size());
        return byRank.thenComparingLong(s -> s.name().matches("\\d{1,9}") ? Long.parseLong(s.name()) : Long.MAX_VALUE)
                .thenComparing(SubsetState::name);
    }
}
