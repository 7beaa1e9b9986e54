package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.VarianceForm;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.stats.PostStratified;
import quadmean.stats.Reweighting.Target;
import quadmean.stats.Working;

/** Plots drawn at random and sorted afterwards into classes of known area. */
final class GroupedMean implements StratumEstimator {
    @Override
    public MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value, Working working) {
        PostStratified.Variance form = drawn.rules().variance() == VarianceForm.TEXTBOOK
                ? PostStratified.Variance.TEXTBOOK
                : PostStratified.Variance.LINEARISED;
        List<String> groups = groups(drawn);
        int[] group = drawn.plots().stream()
                .mapToInt(p -> groups.indexOf(p.facts().group()))
                .toArray();
        return PostStratified.mean(drawn.sample(drawn.values(value)), group, weights(drawn), form, working);
    }

    @Override
    public boolean isEnough(DrawnPlots drawn) {
        return groups(drawn).stream().noneMatch(g -> ofGroup(drawn, g).plots().isEmpty());
    }

    @Override
    public double[] spread(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value) {
        List<String> groups = groups(drawn);
        double[] weights = weights(drawn);
        List<Double> means = new ArrayList<>();
        double mean = 0;
        for (int g = 0; g < weights.length; g++) {
            means.add(Moments.of(ofGroup(drawn, groups.get(g)).values(value)).mean());
            mean += weights[g] * means.get(g);
        }
        double whole = mean;
        return drawn.values(p -> whole
                + value.applyAsDouble(p)
                - means.get(groups.indexOf(p.facts().group())));
    }

    private static List<String> groups(DrawnPlots drawn) {
        return List.copyOf(drawn.rules().groupAreas().keySet());
    }

    private static double[] weights(DrawnPlots drawn) {
        double[] areas = drawn.rules().groupAreas().values().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        double sum = Moments.sum(areas);
        return java.util.Arrays.stream(areas).map(a -> a / sum).toArray();
    }

    private static DrawnPlots ofGroup(DrawnPlots drawn, String group) {
        return drawn.only(p -> p.facts().group().equals(group));
    }

    /** Plots of all classes are resampled together, as they were drawn; how many fall into a class is left to chance. */
    @Override
    public Optional<Resampling> resampling(DrawnPlots drawn) {
        DrawnPlots own = drawn.inOrder();
        List<String> groups = groups(own);
        int[] group = own.plots().stream()
                .mapToInt(p -> groups.indexOf(p.facts().group()))
                .toArray();
        double[] ones = own.values(p -> 1);
        return Optional.of(
                Resampling.ofPlots(own, same -> same.scaled(group, groups.size(), ones, Target.known(weights(own)))));
    }
}
