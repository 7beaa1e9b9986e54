package quadmean.stats;

import java.util.List;

/**
 * A share of elements that have a property, where elements come in clusters, such as trees on plots: those of a cluster are
 * alike, so that they tell less than as many independent ones.
 *
 * @param having elements that have it
 * @param n elements in all, 1 or more
 * @param clusters clusters in all that have elements
 * @param effective independent elements that would tell as much, at most n; NaN for a single cluster
 */
public record ClusteredShare(int having, int n, int clusters, double effective) {

    /**
     * A cluster.
     *
     * @param having its elements that have the property
     * @param n its elements
     */
    public record Count(int having, int n) {
        /** Refuses counts that are no share. */
        public Count {
            Arguments.atLeast(having, 0, "elements with the property");
            Arguments.atLeast(n, having, "elements in a cluster");
        }
    }

    /**
     * The share over all clusters. Its effective number is p(1 - p)/v, v the linearised variance between clusters, lowered for
     * the degrees of freedom of v (Korn and Graubard 1998, from memory; R survey, svyciprop, method beta). Where all elements
     * have the property, or none, there is no variance to go by: then clusters count as elements, which is cautious.
     *
     * @param confidence confidence level of the two-sided limits that the degrees of freedom are allowed for, in (0, 1)
     * @throws IllegalArgumentException without elements
     */
    public static ClusteredShare of(List<Count> counts, double confidence) {
        List<Count> filled = counts.stream().filter(c -> c.n() > 0).toList();
        int having = filled.stream().mapToInt(Count::having).sum();
        int n = Arguments.atLeast(filled.stream().mapToInt(Count::n).sum(), 1, "elements");
        int k = filled.size();
        if (k < 2) {
            return new ClusteredShare(having, n, k, Double.NaN);
        }
        if (having == 0 || having == n) {
            return new ClusteredShare(having, n, k, k);
        }
        List<Cluster> clusters =
                filled.stream().map(c -> Cluster.whole(zerosAndOnes(c))).toList();
        double p = (double) having / n;
        double v = ClusterMean.perElement(clusters, Double.POSITIVE_INFINITY).variance();
        double ratio = StudentT.critical(confidence, n - 1.0) / StudentT.critical(confidence, k - 1.0);
        return new ClusteredShare(having, n, k, Math.min(n, p * (1 - p) / v * ratio * ratio));
    }

    /** The share. */
    public double share() {
        return (double) having / n;
    }

    /**
     * Limits as the exact ones of a binomial with the effective number; NaN for a single cluster.
     *
     * @param confidence confidence level, in (0, 1)
     */
    public Interval limits(double confidence) {
        return Proportion.limits(share() * effective, effective, confidence);
    }

    private static double[] zerosAndOnes(Count c) {
        double[] values = new double[c.n()];
        java.util.Arrays.fill(values, 0, c.having(), 1);
        return values;
    }
}
