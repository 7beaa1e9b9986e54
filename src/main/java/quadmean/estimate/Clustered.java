package quadmean.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import quadmean.model.Estimator;
import quadmean.model.FinitePopulation;
import quadmean.stats.Cluster;
import quadmean.stats.ClusterMean;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Working;

/** Clusters drawn at random, read whole or in part: the mean per plot as a ratio to the clusters' sizes. */
final class Clustered implements StratumEstimator {
    @Override
    public MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value, Working working) {
        double inStratum = drawn.rules().clusters().getOrDefault(drawn.stratum().code(), Double.POSITIVE_INFINITY);
        return ClusterMean.perElement(
                sorted(drawn).values().stream()
                        .map(plots -> cluster(drawn, plots, value))
                        .toList(),
                inStratum,
                working);
    }

    @Override
    public int units(DrawnPlots drawn) {
        return sorted(drawn).size();
    }

    private static Map<String, List<SampledPlot>> sorted(DrawnPlots drawn) {
        Map<String, List<SampledPlot>> clusters = new LinkedHashMap<>();
        drawn.plots()
                .forEach(p -> clusters.computeIfAbsent(p.facts().cluster(), k -> new ArrayList<>())
                        .add(p));
        return clusters;
    }

    private static Cluster cluster(DrawnPlots drawn, List<SampledPlot> plots, ToDoubleFunction<SampledPlot> value) {
        double[] values = plots.stream().mapToDouble(value).toArray();
        if (drawn.rules().estimator() == Estimator.CLUSTER) {
            return Cluster.whole(values);
        }
        double size = plots.get(0).facts().clusterSize();
        return drawn.settings().finitePopulation() == FinitePopulation.CORRECT
                ? Cluster.sampled(size, values)
                : new Cluster(size, Double.POSITIVE_INFINITY, values);
    }
}
