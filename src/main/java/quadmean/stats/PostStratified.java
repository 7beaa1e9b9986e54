package quadmean.stats;

/**
 * Strata known in size but not sampled by themselves: a simple random sample sorted afterwards, Σ W·mean (Cochran 1977, section
 * 5A.9; number from memory).
 */
public final class PostStratified {
    private PostStratified() {}

    /** The two variances in use. */
    public enum Variance {
        /** That of the mean of n·W_h·(y - mean_h)/n_h: follows the sample at hand (Taylor linearisation, as in R's survey). */
        LINEARISED("linearised"),
        /** (1-f)/n·ΣW·s² + Σ(1-W)·s²/n²: over all samples of n (Cochran 1977, from memory). */
        TEXTBOOK("textbook");

        private final String label;

        Variance(String label) {
            this.label = label;
        }

        /** The name used in outputs. */
        public String label() {
            return label;
        }
    }

    /**
     * The post-stratified mean.
     *
     * @param sample a simple random sample; its weight is not used
     * @param stratum for each unit the index of its stratum
     * @param weights known share of each stratum; together 1
     * @param form which variance; on n minus strata degrees of freedom
     * @throws IllegalArgumentException if a stratum has no unit: join it to another first
     */
    public static MeanEstimate mean(StratumSample sample, int[] stratum, double[] weights, Variance form) {
        return mean(sample, stratum, weights, form, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate mean(
            StratumSample sample, int[] stratum, double[] weights, Variance form, Working working) {
        double[] y = sample.values();
        Arguments.sameLength(stratum.length, y.length, "strata of units and values");
        int n = y.length;
        Moments[] moments = new Moments[weights.length];
        double[] z = new double[n];
        double mean = 0;
        double within = 0;
        double chance = 0;
        for (int h = 0; h < weights.length; h++) {
            moments[h] = Moments.of(valuesOf(h, y, stratum));
            Arguments.atLeast(moments[h].n(), 1, "units in a stratum");
            show(h + 1, valuesOf(h, y, stratum), moments[h], weights[h], working);
            mean += weights[h] * moments[h].mean();
            within += weights[h] * moments[h].variance();
            chance += (1 - weights[h]) * moments[h].variance();
        }
        for (int i = 0; i < n; i++) {
            Moments m = moments[stratum[i]];
            z[i] = n * weights[stratum[i]] * (y[i] - m.mean()) / m.n();
        }
        double linearised = StratifiedMean.simple(sample.with(z)).variance();
        double textbook = sample.unseen() / n * within + chance / n / n;
        double variance = form == Variance.LINEARISED ? linearised : textbook;
        MeanEstimate e =
                new MeanEstimate(n, 0, mean, Double.NaN, Math.sqrt(within)).withVariance(variance, n - weights.length);
        working.heading("All classes, variance " + form.label());
        working.number("n", "number of values", n);
        working.number("H", "classes", weights.length);
        working.step("mean", "mean", each("{W%} × {m%}", weights.length), mean, Working.Scale.VALUE);
        if (e.hasError()) {
            show(sample.with(z), form, weights.length, e, working);
        }
        return e;
    }

    private static void show(int h, double[] values, Moments m, double weight, Working working) {
        working.heading("Class " + h + ", in the order of the design");
        working.number("W" + h, "its share of the area", weight);
        working.mean("m" + h, "mean", "n" + h, values, m.mean(), Working.Scale.VALUE);
        if (m.n() > 1) {
            double[] deviations =
                    java.util.Arrays.stream(values).map(v -> v - m.mean()).toArray();
            String formula = "(" + Working.SQUARES + ") / ({n" + h + "} - 1)";
            working.sum("s²" + h, "variance", formula, deviations, m.variance(), Working.Scale.SQUARE);
        }
    }

    private static void show(StratumSample z, Variance form, int h, MeanEstimate e, Working working) {
        String unseen = working.unseen(z, "n");
        if (form == Variance.LINEARISED) {
            String formula = "(" + Working.SQUARES + ") / ({n} - 1) / {n}" + unseen;
            working.sum(
                    "v",
                    "variance, squares of n × W × (value - class mean) / plots of the class",
                    formula,
                    z.values(),
                    e.variance(),
                    Working.Scale.SQUARE);
        } else {
            String formula = "(" + each("{W%} × {s²%}", h) + ") / {n}" + unseen + " + (" + each("(1 - {W%}) × {s²%}", h)
                    + ") / {n}²";
            working.step("v", "variance", formula, e.variance(), Working.Scale.SQUARE);
        }
        working.error(e, "{n} - {H}");
    }

    private static String each(String term, int classes) {
        return java.util.stream.IntStream.rangeClosed(1, classes)
                .mapToObj(h -> term.replace("%", Integer.toString(h)))
                .collect(java.util.stream.Collectors.joining(" + "));
    }

    private static double[] valuesOf(int h, double[] y, int[] stratum) {
        return java.util.stream.IntStream.range(0, y.length)
                .filter(i -> stratum[i] == h)
                .mapToDouble(i -> y[i])
                .toArray();
    }
}
