package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import quadmean.model.ListedPlot;
import quadmean.stats.DoubleSampling;
import quadmean.stats.DoubleSampling.PhaseStratum;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Reweighting.Target;
import quadmean.stats.Working;

/** A class for all plots of the plan, trees on some of each class. */
final class DoubleGroups implements StratumEstimator {
    @Override
    public MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value, Working working) {
        List<PhaseStratum> groups = new ArrayList<>();
        sizes(drawn)
                .forEach((group, size) -> groups.add(new PhaseStratum(
                        size, drawn.only(p -> p.facts().group().equals(group)).values(value))));
        return DoubleSampling.stratification(groups, drawn.plotsInStratum(), working);
    }

    @Override
    public boolean isEnough(DrawnPlots drawn) {
        return sizes(drawn).keySet().stream()
                .noneMatch(group ->
                        drawn.plots().stream().noneMatch(p -> p.facts().group().equals(group)));
    }

    private static Map<String, Integer> sizes(DrawnPlots drawn) {
        Map<String, Integer> sizes = new TreeMap<>();
        for (ListedPlot plot : drawn.firstPhase()) {
            sizes.merge(plot.facts().group(), 1, Integer::sum);
        }
        return sizes;
    }

    @Override
    public Optional<Resampling> resampling(DrawnPlots drawn) {
        List<String> groups = List.copyOf(sizes(drawn).keySet());
        DrawnPlots own = drawn.inOrder();
        int[] group = own.plots().stream()
                .mapToInt(p -> groups.indexOf(p.facts().group()))
                .toArray();
        return Optional.of(TwoPhases.resampling(
                drawn,
                (plain, first) -> plain.scaled(
                        group,
                        groups.size(),
                        own.values(p -> 1),
                        Target.ofUnits(
                                first.stream()
                                        .mapToInt(p -> groups.indexOf(p.facts().group()))
                                        .toArray(),
                                first.stream().mapToDouble(p -> 1).toArray()))));
    }
}
