package quadmean.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import quadmean.model.Estimator;
import quadmean.model.FinitePopulation;
import quadmean.stats.Cluster;
import quadmean.stats.ClusterMean;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Reweighting;
import quadmean.stats.Reweighting.Target;
import quadmean.stats.Working;

/** Clusters drawn at random, read whole or in part: the mean per plot as a ratio to the clusters' sizes. */
final class Clustered implements StratumEstimator {
    private static final String TWO_STAGES =
            "Clusters are resampled whole with the plots that were read in them: the variation within clusters comes along in their"
                    + " means, and plots are not drawn again within them. Correction for a finite population is left out of these"
                    + " limits, which makes them too wide, if anything, where a large share of the clusters was drawn.";

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

    /** Whole clusters are drawn. Weights by size per plot read, then scaled to 1, are the mean per plot as a ratio to sizes. */
    @Override
    public Optional<Resampling> resampling(DrawnPlots drawn) {
        List<SampledPlot> plots = new ArrayList<>();
        List<Integer> unit = new ArrayList<>();
        List<Double> factor = new ArrayList<>();
        Map<String, List<SampledPlot>> clusters = new TreeMap<>(sorted(drawn.inOrder()));
        int at = 0;
        for (List<SampledPlot> cluster : clusters.values()) {
            for (SampledPlot p : cluster) {
                plots.add(p);
                unit.add(at);
                factor.add(cluster(drawn, cluster, q -> 0).size() / cluster.size());
            }
            at++;
        }
        double[] ones = plots.stream().mapToDouble(p -> 1).toArray();
        Reweighting weights = Reweighting.expanded(
                        unit.stream().mapToInt(Integer::intValue).toArray(),
                        factor.stream().mapToDouble(Double::doubleValue).toArray())
                .scaled(ones, Target.known(1));
        double inStratum = drawn.rules().clusters().getOrDefault(drawn.stratum().code(), Double.POSITIVE_INFINITY);
        return Optional.of(
                drawn.rules().estimator() == Estimator.CLUSTER
                        ? Resampling.ofStratum(inStratum, at, plots, weights, "clusters")
                        : Resampling.ofStratum(Double.POSITIVE_INFINITY, at, plots, weights, "clusters", TWO_STAGES));
    }
}
