package quadmean.stats;

import java.util.List;

/**
 * Means over clusters drawn at random, in one stage or two: the clusters' totals are the units of a mean or ratio, and where
 * elements were drawn within them the share f1 of that second variance is added (Cochran 1977, chapters 9 to 11; numbers from
 * memory). A cluster read whole has no second part, so one-stage cluster sampling is the same formula. Without a correction at
 * the first stage the second part is already inside the first. Degrees of freedom: clusters minus one. Strata of clusters join by
 * {@link WeightedSum}.
 */
public final class ClusterMean {
    private ClusterMean() {}

    /**
     * Mean per element as a ratio to size, Σ size·mean / Σ size: for clusters of unequal size, where the total size need not be
     * known. With equal sizes it is the plain mean of cluster means and unbiased; else biased as a ratio is.
     *
     * @param clusters sampled clusters
     * @param populationClusters clusters in the population N; infinity for no correction
     */
    public static MeanEstimate perElement(List<Cluster> clusters, double populationClusters) {
        return perElement(clusters, populationClusters, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate perElement(List<Cluster> clusters, double populationClusters, Working working) {
        double[] sizes = clusters.stream().mapToDouble(Cluster::size).toArray();
        double[] totals = totals(clusters);
        double meanSize = Moments.of(sizes).mean();
        double ratio = Moments.sum(totals) / Moments.sum(sizes);
        double[] linear = RatioEstimate.residuals(totals, sizes, ratio, meanSize);
        String all = Working.SUM;
        working.sum("M", "sizes of the clusters, together", all, sizes, Moments.sum(sizes), Working.Scale.NUMBER);
        working.sum("T", "their totals, size × mean, together", all, totals, Moments.sum(totals), Working.Scale.FACTOR);
        working.step("r", "mean over all", "{T} / {M}", ratio, Working.Scale.VALUE);
        working.heading("Its error: of each cluster (total - r × size) / mean size");
        MeanEstimate e = withSecondStage(clusters, populationClusters, linear, meanSize, working)
                .about(ratio);
        working.step("mean", "mean", "{r}", ratio, Working.Scale.VALUE);
        return e;
    }

    /**
     * Mean total of a cluster, unbiased; times the number of clusters it is the total, over the mean size the mean per element.
     *
     * @param clusters sampled clusters
     * @param populationClusters clusters in the population N; infinity for no correction
     */
    public static MeanEstimate perCluster(List<Cluster> clusters, double populationClusters) {
        return withSecondStage(clusters, populationClusters, totals(clusters), 1, Working.silent());
    }

    private static double[] totals(List<Cluster> clusters) {
        return clusters.stream().mapToDouble(c -> c.size() * c.mean()).toArray();
    }

    private static MeanEstimate withSecondStage(
            List<Cluster> clusters, double populationClusters, double[] linear, double divisor, Working working) {
        StratumSample units = new StratumSample(1, populationClusters, linear);
        MeanEstimate between = StratifiedMean.simple(units, working);
        int n = linear.length;
        double seen = 1 - units.unseen();
        if (seen == 0) {
            return between;
        }
        double[] within = clusters.stream()
                .mapToDouble(c -> c.size() * c.size() * c.variance())
                .toArray();
        double second = seen * Moments.sum(within) / (divisor * divisor) / n / n;
        MeanEstimate both = between.withVariance(between.variance() + second, n - 1);
        working.heading("Plots drawn within clusters add to the variance; a cluster read whole adds nothing");
        working.number("f", "share of the clusters that was drawn", seen);
        working.number("m", "mean size", divisor);
        working.given("v1", "variance between clusters", between.variance(), Working.Scale.SQUARE);
        String formula = "{f} × (" + Working.SUM + ") / {m}² / {n}²";
        working.sum(
                "v2", "from size² × variance of each cluster's mean", formula, within, second, Working.Scale.SQUARE);
        working.step("v", "together", "{v1} + {v2}", both.variance(), Working.Scale.SQUARE);
        working.error(both, "{n} - 1");
        return both;
    }
}
