package quadmean.stats;

import java.util.List;

/**
 * Variances for a systematic sample, none of them unbiased: one random start tells nothing of other starts. All are (1-f)/n times
 * a mean of squared contrasts, over all pairs of units for the first, over neighbours for the others, which leave out what changes
 * slowly over the ground (Cochran 1977, section 8.9; Matérn 1947 and 1960 for the blocks; from memory). On a regular pattern of the
 * same spacing all of them fail.
 */
public enum SystematicVariance {
    /** As if the units had been drawn at random; too large where neighbours resemble each other. */
    AS_SIMPLE_RANDOM("as if random") {
        @Override
        MeanEstimate of(StratumSample sample, List<GridPosition> grid, Working working) {
            return StratifiedMean.simple(sample, working);
        }
    },
    /** Σ(y_i - y_i+1)²/(2n(n-1)), row by row to and fro. */
    SUCCESSIVE_DIFFERENCES("successive differences") {
        @Override
        MeanEstimate of(StratumSample sample, List<GridPosition> grid, Working working) {
            return byContrasts(sample, Contrast.successive(Contrast.serpentine(grid)), working);
        }
    },
    /** Half the mean squared difference of all neighbours in rows and columns, over n. */
    NEIGHBOUR_DIFFERENCES("differences of neighbours") {
        @Override
        MeanEstimate of(StratumSample sample, List<GridPosition> grid, Working working) {
            return byContrasts(sample, Contrast.neighbours(grid), working);
        }
    },
    /** Mean of (a - b - c + d)²/4 over all squares of four neighbours, over n: a slope of the ground in any direction falls out. */
    OVERLAPPING_BLOCKS("overlapping squares of four") {
        @Override
        MeanEstimate of(StratumSample sample, List<GridPosition> grid, Working working) {
            return byContrasts(sample, Contrast.blocks(grid), working);
        }
    };

    private final String label;

    SystematicVariance(String label) {
        this.label = label;
    }

    abstract MeanEstimate of(StratumSample sample, List<GridPosition> grid, Working working);

    /** The name used in outputs. */
    public String label() {
        return label;
    }

    /**
     * The mean with this variance.
     *
     * @param sample the units of one grid; its weight is not used; strata join by {@link WeightedSum}
     * @param grid where each unit stands, no two at the same place; a single line of units has one row
     * @return the mean, its sd from the same contrasts; degrees of freedom by the moments of independent normal values (for
     *     successive differences 2(n-1)²/(3n-4)). Without error where no contrast can be formed
     */
    public MeanEstimate estimate(StratumSample sample, List<GridPosition> grid) {
        return estimate(sample, grid, Working.silent());
    }

    /** The same, step by step. */
    public MeanEstimate estimate(StratumSample sample, List<GridPosition> grid, Working working) {
        Arguments.sameLength(grid.size(), sample.values().length, "positions and values");
        return of(sample, grid, working);
    }

    /** The same for units in the order in which they follow each other on the ground. */
    public MeanEstimate inOrder(StratumSample sample) {
        return estimate(
                sample,
                java.util.stream.IntStream.range(0, sample.values().length)
                        .mapToObj(i -> new GridPosition(0, i))
                        .toList());
    }

    private static MeanEstimate byContrasts(StratumSample sample, List<Contrast> contrasts, Working working) {
        int n = sample.values().length;
        double mean = Moments.of(sample.values()).mean();
        double[] each =
                contrasts.stream().mapToDouble(c -> c.of(sample.values())).toArray();
        double[] squares = java.util.Arrays.stream(each).map(v -> v * v).toArray();
        double s2 = squares.length == 0 ? Double.NaN : Moments.sum(squares) / squares.length;
        MeanEstimate e = new MeanEstimate(n, 0, mean, Double.NaN, Math.sqrt(s2))
                .withVariance(s2 / n * sample.unseen(), Contrast.degreesOfFreedom(contrasts));
        working.mean("mean", "mean", "n", sample.values(), mean, Working.Scale.VALUE);
        if (e.hasError()) {
            working.number("K", "differences between neighbours that can be formed", squares.length);
            String formula = "(" + Working.SQUARES + ") / {K}";
            working.sum("s²", "mean of their squares", formula, each, s2, Working.Scale.SQUARE);
            working.step(
                    "v",
                    "variance of the mean",
                    "{s²} / {n}" + working.unseen(sample, "n"),
                    e.variance(),
                    Working.Scale.SQUARE);
            working.error(e, "");
        }
        return e;
    }
}
