package quadmean.stats;

import java.util.List;

/**
 * Counts on many units times a ratio from some trees: points counted and trees measured for their volume per basal area, or
 * predictions summed on plots and some trees measured. The error is that of {@link ProductEstimate}, the two taken as independent.
 *
 * @param firstCvPercent coefficient of variation of the count or sum between units (percent), above 0
 * @param ratioCvPercent coefficient of variation of the ratio between trees (percent), above 0
 * @param treesPerUnit trees measured for each unit counted, above 0
 */
public record ProductPlan(double firstCvPercent, double ratioCvPercent, double treesPerUnit) implements PlannedSample {
    private static final int LEAST = 2;

    /** Refuses what is no spread. */
    public ProductPlan {
        Arguments.positive(firstCvPercent, "CV of the counts");
        Arguments.positive(ratioCvPercent, "CV of the ratio");
        Arguments.inside(treesPerUnit, 0, SampleSize.LARGEST, "trees measured for each unit");
    }

    /**
     * Trees to measure for each unit counted that give the least error for the cost: CVr/CVc·√(c1/c2), by the same algebra as Neyman's
     * shares with costs; no more than the largest sample has on its fewest units.
     *
     * @param unitCost c1 of counting a unit
     * @param treeCost c2 of measuring a tree
     */
    public static double bestTreesPerUnit(
            double firstCvPercent, double ratioCvPercent, double unitCost, double treeCost) {
        double best = ratioCvPercent / firstCvPercent * Math.sqrt(unitCost / treeCost);
        return Math.min(best, (double) SampleSize.LARGEST / LEAST);
    }

    @Override
    public int least() {
        return LEAST;
    }

    @Override
    public int most() {
        return (int) (SampleSize.LARGEST / Math.max(1, treesPerUnit));
    }

    /** Units counted, and trees measured: at least two. */
    @Override
    public int[] parts(int n) {
        return new int[] {n, (int) Math.max(2, Math.ceil(n * treesPerUnit))};
    }

    @Override
    public MeanEstimate expected(int[] parts) {
        return ProductEstimate.of(
                List.of(factor(firstCvPercent, parts[0]), factor(ratioCvPercent, parts[1])),
                ProductEstimate.Variance.BRUCE);
    }

    /** A mean of 10, so that the product is 100 and errors are percentages of it. */
    private static MeanEstimate factor(double cvPercent, int n) {
        return new SimplePlan(cvPercent, Double.POSITIVE_INFINITY)
                .expected(new int[] {n})
                .times(0.1);
    }
}
