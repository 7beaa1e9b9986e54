package quadmean.stats;

/**
 * Totals from units that come into the sample with known unequal probabilities: Σ y/π, unbiased (Horvitz and Thompson 1952).
 * Degrees of freedom are n - 1 (common practice, no source).
 */
public final class HorvitzThompson {
    private HorvitzThompson() {}

    /** Variances that need the probability of each pair; both unbiased where none of them is zero, and both can be negative. */
    public enum PairVariance {
        /** Σ(1-π)·(y/π)² + ΣΣ(π_ij - π_i·π_j)/π_ij·(y_i/π_i)(y_j/π_j) (Horvitz and Thompson 1952). */
        HORVITZ_THOMPSON("Horvitz-Thompson") {
            @Override
            double of(double[] z, double[] pi, double[][] joint) {
                double v = poisson(z, pi);
                for (int i = 0; i < z.length; i++) {
                    for (int j = 0; j < i; j++) {
                        v += 2 * (1 - pi[i] * pi[j] / joint[i][j]) * z[i] * z[j];
                    }
                }
                return v;
            }
        },
        /** ΣΣ_{i<j}(π_i·π_j/π_ij - 1)·(y_i/π_i - y_j/π_j)²: for samples of fixed size (Sen 1953; Yates and Grundy 1953). */
        SEN_YATES_GRUNDY("Sen-Yates-Grundy") {
            @Override
            double of(double[] z, double[] pi, double[][] joint) {
                double v = 0;
                for (int i = 0; i < z.length; i++) {
                    for (int j = 0; j < i; j++) {
                        v += (pi[i] * pi[j] / joint[i][j] - 1) * (z[i] - z[j]) * (z[i] - z[j]);
                    }
                }
                return v;
            }
        };

        private final String label;

        PairVariance(String label) {
            this.label = label;
        }

        abstract double of(double[] z, double[] pi, double[][] joint);

        /** The name used in outputs. */
        public String label() {
            return label;
        }
    }

    /** Variances from the probabilities of single units. */
    public enum UnitVariance {
        /** Σ(1-π)·(y/π)²: exact and unbiased where each unit is drawn by itself, so that n is random (Poisson sampling). */
        POISSON("Poisson") {
            @Override
            double of(double[] z, double[] pi) {
                return poisson(z, pi);
            }
        },
        /** n/(n-1)·Σ(1-π)·(y/π - A)², A their mean weighted by 1-π: an approximation for a fixed n (Hájek 1964). */
        HAJEK("Hájek approximation") {
            @Override
            double of(double[] z, double[] pi) {
                double centre = centre(z, pi);
                double v = 0;
                for (int i = 0; i < z.length && !Double.isNaN(centre); i++) {
                    v += (1 - pi[i]) * Math.pow(z[i] - centre, 2);
                }
                return z.length < 2 ? Double.NaN : v * z.length / (z.length - 1);
            }
        };

        private final String label;

        UnitVariance(String label) {
            this.label = label;
        }

        abstract double of(double[] z, double[] pi);

        /** Each unit's part of the variance, as √(1-π)·(y/π - A), A zero for Poisson sampling. */
        private void show(double[] z, double[] pi, MeanEstimate e, Working working) {
            double centre = 0;
            if (this == HAJEK) {
                centre = centre(z, pi);
                working.given("A", "mean of value over chance, weighted by 1 - chance", centre, Working.Scale.FACTOR);
            }
            double[] parts = new double[z.length];
            for (int i = 0; i < z.length; i++) {
                parts[i] = Math.sqrt(1 - pi[i]) * (z[i] - centre);
            }
            boolean isPoisson = this == POISSON;
            working.sum(
                    "v",
                    "variance, squares of √(1 - chance) × " + (isPoisson ? "value / chance" : "(value / chance - A)"),
                    "(" + Working.SQUARES + ")" + (isPoisson ? "" : " × {n} / ({n} - 1)"),
                    parts,
                    e.variance(),
                    Working.Scale.SQUARE);
        }

        /** The name used in outputs. */
        public String label() {
            return label;
        }
    }

    /**
     * The total with a variance from pairs.
     *
     * @param y value of each unit in the sample
     * @param pi probability that it comes into the sample, in (0, 1]
     * @param joint probability that two come into it together, above 0; the diagonal is not read
     * @return the total; without error where the variance comes out negative, see {@link #variance}
     */
    public static MeanEstimate total(double[] y, double[] pi, double[][] joint, PairVariance form) {
        return total(y, pi, form.of(HansenHurwitz.expanded(y, pi), pi, joint));
    }

    /**
     * The total with a variance from single units.
     *
     * @param y value of each unit in the sample
     * @param pi probability that it comes into the sample, in (0, 1]
     */
    public static MeanEstimate total(double[] y, double[] pi, UnitVariance form) {
        return total(y, pi, form, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate total(double[] y, double[] pi, UnitVariance form, Working working) {
        double[] z = HansenHurwitz.expanded(y, pi);
        MeanEstimate e = total(y, pi, form.of(z, pi));
        working.number("n", "number of values", z.length);
        working.sum("mean", "sum of value over chance", Working.SUM, z, e.mean(), Working.Scale.VALUE);
        if (e.hasError()) {
            form.show(z, pi, e, working);
            working.error(e, "{n} - 1");
        }
        return e;
    }

    /** The variance from pairs as it comes out, which may be below zero. */
    public static double variance(double[] y, double[] pi, double[][] joint, PairVariance form) {
        return form.of(HansenHurwitz.expanded(y, pi), pi, joint);
    }

    private static MeanEstimate total(double[] y, double[] pi, double variance) {
        double[] z = HansenHurwitz.expanded(y, pi);
        double sd = Moments.of(z).sd();
        return new MeanEstimate(y.length, 0, Moments.sum(z), Double.NaN, sd)
                .withVariance(variance < 0 ? Double.NaN : variance, y.length - 1);
    }

    /** Mean weighted by 1 - π; NaN where every unit was sure to come in. */
    private static double centre(double[] z, double[] pi) {
        double weights = 0;
        double sum = 0;
        for (int i = 0; i < z.length; i++) {
            weights += 1 - pi[i];
            sum += (1 - pi[i]) * z[i];
        }
        return weights > 0 ? sum / weights : Double.NaN;
    }

    private static double poisson(double[] z, double[] pi) {
        double v = 0;
        for (int i = 0; i < z.length; i++) {
            v += (1 - pi[i]) * z[i] * z[i];
        }
        return v;
    }
}
