package quadmean.stats;

/** A sample not yet drawn, whose kind is settled and whose size is open: what it is expected to tell at each size. */
public sealed interface PlannedSample permits SimplePlan, StratifiedPlan, ClusterPlan, TwoPhasePlan, ProductPlan {
    /** The smallest size that gives a standard error. */
    int least();

    /** The largest size: all units of the population, or {@link SampleSize#LARGEST}. */
    int most();

    /**
     * Units of each part of a sample of size n: strata, stages, or phases.
     *
     * @param n size, from {@link #least} to {@link #most}
     */
    int[] parts(int n);

    /**
     * The estimate to expect, with its error and degrees of freedom.
     *
     * @param parts units of each part, as {@link #parts} gives them or more
     */
    MeanEstimate expected(int[] parts);

    /** Degrees of freedom of the expected error's own spread, for the chance of reaching a target. */
    default double spreadDf(int[] parts) {
        return expected(parts).df();
    }
}
