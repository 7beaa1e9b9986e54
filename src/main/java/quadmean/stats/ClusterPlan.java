package quadmean.stats;

/**
 * Clusters or other first-stage units drawn at random, and m of the M units in each read. With correlation ρ between units of a
 * cluster, the variance S² of single units splits into ρ·S² between clusters and (1 - ρ)·S² within, so that the mean has variance
 * (1 - n/N)·S²·(ρ + (1 - ρ)/M)/n + (1 - m/M)·S²·(1 - ρ)/(n·m) (Cochran 1977, section 10.3, and Kish 1965 for ρ; numbers from
 * memory). A cluster read whole has m = M, and S²·(1 + (m - 1)·ρ)/(n·m) without correction. On n - 1 degrees of freedom.
 *
 * @param cvPercent coefficient of variation between single units (percent), above 0
 * @param correlation ρ, in [0, 1)
 * @param perCluster m, at least 1
 * @param clusterUnits M, at least m; infinity where a cluster has room for any number
 * @param populationClusters N; infinity for no correction
 */
public record ClusterPlan(
        double cvPercent, double correlation, int perCluster, double clusterUnits, double populationClusters)
        implements PlannedSample {
    /** Refuses what is no spread, correlation or size. */
    public ClusterPlan {
        Arguments.positive(cvPercent, "CV");
        if (!(correlation >= 0 && correlation < 1)) {
            throw new IllegalArgumentException("a correlation within clusters must lie in [0, 1), got " + correlation);
        }
        Arguments.atLeast(perCluster, 1, "units of a cluster");
        if (!(clusterUnits >= perCluster)) {
            throw new IllegalArgumentException("a cluster of " + clusterUnits + " units has not " + perCluster);
        }
    }

    /**
     * The number of units in a cluster that gives the least error for the cost: √(c1/c2·(1 - ρ)/ρ), c1 the cost of a cluster and c2
     * that of a unit (Cochran 1977, section 10.6; number from memory).
     *
     * @return not whole; infinity for a correlation of 0
     */
    public static double bestPerCluster(double clusterCost, double unitCost, double correlation) {
        return Math.sqrt(clusterCost / unitCost * (1 - correlation) / correlation);
    }

    @Override
    public int least() {
        return 2;
    }

    @Override
    public int most() {
        return (int) Math.min(SampleSize.LARGEST / (double) perCluster, Math.ceil(populationClusters));
    }

    /** Clusters, and units in all of them. */
    @Override
    public int[] parts(int n) {
        return new int[] {n, n * perCluster};
    }

    @Override
    public MeanEstimate expected(int[] parts) {
        double n = parts[0];
        double spread = cvPercent * cvPercent;
        double between = spread * (correlation + (1 - correlation) / clusterUnits);
        double within = spread * (1 - correlation);
        double variance = Math.max(0, 1 - n / populationClusters) * between / n
                + (1 - perCluster / clusterUnits) * within / (n * perCluster);
        return new MeanEstimate(parts[0], n - 1, 100, Math.sqrt(variance), cvPercent);
    }
}
