package quadmean.stats;

import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Double sampling: a cheap reading x on many units, the dear one y on some of them. Variances have two parts: of the units that
 * carry y about what x foretells, and of the first sample (Cochran 1977, chapter 12; number from memory).
 */
public final class DoubleSampling {
    private DoubleSampling() {}

    /** Which variance a regression through two samples gets. */
    public enum Variance {
        /**
         * s²_yx/n2 + (s²_y - s²_yx)/n1 - s²_y/N (Cochran 1977, equation 12.51, from memory). The middle term is negative where
         * the line does not help; it is not cut off.
         */
        COCHRAN("Cochran, large sample"),
        /**
         * s²_yx·[1/n2 + (mean1 - mean2)²/SSx]·(1 - n2/n1) + s²_y/n1·(1 - n1/N) (Freese 1962, from memory).
         */
        HANDBOOK("handbook form");

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
     * One class of the first sample.
     *
     * @param firstPhase units of the first sample that fell into it, at least as many as carry y
     * @param values y of those drawn among them, at least one; two unless all are
     */
    @SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
    public record PhaseStratum(int firstPhase, double[] values) {}

    /**
     * The line of the second sample, read at the first sample's mean of x.
     *
     * @param first x of the whole first sample; its population units N correct both parts, its weight is not used
     * @param x x of the second sample, drawn at random from the first; at least two
     * @param y y of the second sample
     * @param form which variance; on n2 - 2 degrees of freedom
     */
    public static MeanEstimate regression(StratumSample first, double[] x, double[] y, Variance form) {
        return regression(first, x, y, form, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate regression(StratumSample first, double[] x, double[] y, Variance form, Working working) {
        FittedLine fit = FittedLine.through(x, y);
        double meanX = Moments.of(first.values()).mean();
        double s2 = fit.residualVariance();
        double variance = form == Variance.COCHRAN
                ? twoPhase(first, y, s2)
                : s2 * fit.leverage(meanX) * unseen(first, y) + ofFirst(first, y);
        MeanEstimate e = new MeanEstimate(y.length, 0, fit.line().at(meanX), Double.NaN, Math.sqrt(s2))
                .withVariance(variance, y.length - 2);
        showFirst(first, meanX, working);
        fit.show(x, y, meanX, working);
        if (e.hasError()) {
            working.heading("Variance, " + form.label());
            String of = form == Variance.COCHRAN ? "{s²} / {n}" : "{s²} × (1 / {n} + ({X} - {x̄})² / {SS})";
            showVariance(first, y, of, e, "{n} - 2", working);
        }
        return e;
    }

    private static void showFirst(StratumSample first, double meanX, Working working) {
        working.heading("First sample: auxiliaries of all plots of the plan");
        working.mean("X", "mean", "n1", first.values(), meanX, Working.Scale.NUMBER);
        working.heading("Second sample: plots with trees");
    }

    /** Both parts of a variance: of the second sample, its formula at hand, and of the first. */
    private static void showVariance(
            StratumSample first, double[] y, String second, MeanEstimate e, String degrees, Working working) {
        Moments m = Moments.of(y);
        double[] deviations = java.util.Arrays.stream(y).map(v -> v - m.mean()).toArray();
        String formula = "(" + Working.SQUARES + ") / ({n} - 1)";
        working.sum("s²y", "variance between values", formula, deviations, m.variance(), Working.Scale.SQUARE);
        String all = second + " × (1 - {n} / {n1}) + {s²y} / {n1}" + working.unseen(first, "n1");
        working.step("v", "variance", all, e.variance(), Working.Scale.SQUARE);
        working.error(e, degrees);
    }

    /**
     * The ratio of the second sample times the first sample's mean of x: s²_d/n2 + (s²_y - s²_d)/n1 - s²_y/N, s²_d the spread of
     * y - r·x. Also the whole error of counts on many points and a ratio on some of them.
     *
     * @param first as for the regression
     * @param x x of the second sample, at least two
     * @param y y of the second sample
     * @return the mean, on n2 - 1 degrees of freedom
     */
    public static MeanEstimate ratio(StratumSample first, double[] x, double[] y) {
        return ratio(first, x, y, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate ratio(StratumSample first, double[] x, double[] y, Working working) {
        StratumSample second = StratumSample.of(1, y);
        DegreesOfFreedom rule = DegreesOfFreedom.UNITS_MINUS_STRATA;
        double r = RatioEstimate.estimate(List.of(second), List.of(second.with(x)), rule)
                .mean();
        double[] residuals = RatioEstimate.residuals(y, x, r, 1);
        Moments residual = Moments.of(residuals);
        double meanX = Moments.of(first.values()).mean();
        double mean = r * meanX;
        MeanEstimate e = new MeanEstimate(y.length, 0, mean, Double.NaN, residual.sd())
                .withVariance(twoPhase(first, y, residual.variance()), y.length - 1);
        showFirst(first, meanX, working);
        working.mean("ȳ", "mean of their values", "n", y, Moments.of(y).mean(), Working.Scale.VALUE);
        working.mean("x̄", "mean of their auxiliary", "n", x, Moments.of(x).mean(), Working.Scale.NUMBER);
        working.step("r", "ratio", "{ȳ} / {x̄}", r, Working.Scale.FACTOR);
        working.step("mean", "mean", "{r} × {X}", mean, Working.Scale.VALUE);
        if (e.hasError()) {
            String formula = "(" + Working.SQUARES + ") / ({n} - 1)";
            working.sum("s²", "variance of y - r × x", formula, residuals, residual.variance(), Working.Scale.SQUARE);
            showVariance(first, y, "{s²} / {n}", e, "{n} - 1", working);
        }
        return e;
    }

    /**
     * The same over strata with one ratio for all of them: the mean of x over all strata times R = Σ W·mean(y)/Σ W·mean(x), and
     * in each stratum the variance above with the common R (by algebra).
     *
     * @param first whole first sample of each stratum
     * @param x x of the second sample, at least two units in each stratum for an error
     * @param y y of the second sample, strata and units in the same order
     * @return the mean, on Σ(n2_h - 1) degrees of freedom
     */
    public static MeanEstimate ratio(List<StratumSample> first, List<StratumSample> x, List<StratumSample> y) {
        return ratio(first, x, y, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate ratio(
            List<StratumSample> first, List<StratumSample> x, List<StratumSample> y, Working working) {
        DegreesOfFreedom rule = DegreesOfFreedom.UNITS_MINUS_STRATA;
        double r = RatioEstimate.estimate(y, x, rule).mean();
        double mean = r * StratifiedMean.estimate(first, rule).mean();
        double variance = 0;
        double within = 0;
        int n = 0;
        StringJoiner sum = new StringJoiner(" + ");
        for (int h = 0; h < y.size(); h++) {
            double[] values = y.get(h).values();
            double[] residuals = RatioEstimate.residuals(values, x.get(h).values(), r, 1);
            Moments residual = Moments.of(residuals);
            double w = y.get(h).weight();
            double part = twoPhase(first.get(h), values, residual.variance());
            variance += w * w * part;
            within += w * residual.variance();
            n += values.length;
            sum.add("{W%}² × {v%}".replace("%", Integer.toString(h + 1)));
            show(h + 1, first.get(h), y.get(h), residuals, part, working);
        }
        MeanEstimate e =
                new MeanEstimate(n, 0, mean, Double.NaN, Math.sqrt(within)).withVariance(variance, n - y.size());
        working.number("n", "units of the second sample", n);
        working.number("H", "strata", y.size());
        working.heading("All strata");
        working.given("r", "ratio over all strata", r, Working.Scale.FACTOR);
        working.number(
                "X",
                "mean of the first sample over all strata",
                StratifiedMean.estimate(first, rule).mean());
        working.step("mean", "mean", "{r} × {X}", mean, Working.Scale.VALUE);
        working.step("v", "variance of the whole", sum.toString(), variance, Working.Scale.SQUARE);
        working.error(e, "{n} - {H}");
        return e;
    }

    private static void show(
            int h, StratumSample first, StratumSample y, double[] residuals, double part, Working working) {
        double[] values = y.values();
        Moments m = Moments.of(values);
        working.heading("Variance of stratum " + h + ", both samples");
        working.number("W" + h, "weight", y.weight());
        working.number("n1", "units of the first sample", first.values().length);
        working.number("n", "units of the second sample", values.length);
        String formula = "(" + Working.SQUARES + ") / ({n} - 1)";
        double[] deviations =
                java.util.Arrays.stream(values).map(v -> v - m.mean()).toArray();
        double s2 = Moments.of(residuals).variance();
        double mean = Moments.of(residuals).mean();
        double[] spread = java.util.Arrays.stream(residuals).map(v -> v - mean).toArray();
        working.sum("s²", "variance of y - r × x", formula, spread, s2, Working.Scale.SQUARE);
        working.sum("s²y", "variance of the values", formula, deviations, m.variance(), Working.Scale.SQUARE);
        String all = "{s²} / {n} × (1 - {n} / {n1}) + {s²y} / {n1}" + working.unseen(first, "n1");
        working.step("v" + h, "variance", all, part, Working.Scale.SQUARE);
    }

    /**
     * Classes whose sizes the first sample estimates, and y on some units of each: Σ (n1_h/n1)·mean_h. The variance is unbiased
     * where the number of y depends on the first sample only through its class sizes: Σ w²·s²·(1/n2 - 1/n1_h) for the second
     * sample, and for the first the variance of all its y rebuilt from parts within and between classes (by algebra; as Rao 1973
     * and Cochran 1977, section 12.2, from memory).
     *
     * @param strata classes with at least one unit in the first sample
     * @param populationUnits N; infinity for no correction
     * @return the mean, on Σ(n2_h - 1) degrees of freedom
     */
    public static MeanEstimate stratification(List<PhaseStratum> strata, double populationUnits) {
        return stratification(strata, populationUnits, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate stratification(List<PhaseStratum> strata, double populationUnits, Working working) {
        int n1 = strata.stream().mapToInt(PhaseStratum::firstPhase).sum();
        int n2 = strata.stream().mapToInt(s -> s.values().length).sum();
        double mean = 0;
        for (PhaseStratum s : strata) {
            Arguments.atLeast(s.values().length, 1, "units with y in a class");
            Arguments.atLeast(s.firstPhase(), s.values().length, "units of a class in the first sample");
            mean += (double) s.firstPhase() / n1 * Moments.of(s.values()).mean();
        }
        double ofSecond = 0;
        double squares = 0;
        double within = 0;
        working.number("n1", "plots of the first sample", n1);
        for (PhaseStratum s : strata) {
            Moments m = Moments.of(s.values());
            double w = (double) s.firstPhase() / n1;
            double s2 = s.firstPhase() == 1 ? 0 : m.variance();
            double drawn = s2 * (1.0 / m.n() - 1.0 / s.firstPhase());
            show(strata.indexOf(s) + 1, s, m, s2, working);
            ofSecond += w * w * drawn;
            within += w * s2;
            squares += (s.firstPhase() - 1) * s2
                    + s.firstPhase() * ((m.mean() - mean) * (m.mean() - mean) - (1 - w) * drawn);
        }
        double variance = ofSecond + squares / (n1 - 1) * (1.0 / n1 - 1 / populationUnits);
        MeanEstimate e =
                new MeanEstimate(n2, 0, mean, Double.NaN, Math.sqrt(within)).withVariance(variance, n2 - strata.size());
        showAll(strata.size(), populationUnits, ofSecond, squares, e, working);
        return e;
    }

    private static void show(int h, PhaseStratum s, Moments m, double s2, Working working) {
        working.heading("Class " + h + ", in the order of the alphabet");
        working.number("M%".replace("%", Integer.toString(h)), "plots of it in the first sample", s.firstPhase());
        String n = "n2_" + h;
        working.mean("m" + h, "mean of those with trees", n, s.values(), m.mean(), Working.Scale.VALUE);
        if (m.n() > 1) {
            double[] deviations =
                    java.util.Arrays.stream(s.values()).map(v -> v - m.mean()).toArray();
            String formula = "(" + Working.SQUARES + ") / ({" + n + "} - 1)";
            working.sum("s²" + h, "their variance", formula, deviations, m.variance(), Working.Scale.SQUARE);
        } else {
            working.given("s²" + h, "their variance", s2, Working.Scale.SQUARE);
        }
        String drawn = "{s²%} × (1 / {n2_%} - 1 / {M%})".replace("%", Integer.toString(h));
        working.step(
                "d" + h,
                "variance of that mean within the class",
                drawn,
                s2 * (1.0 / m.n() - 1.0 / s.firstPhase()),
                Working.Scale.SQUARE);
    }

    private static void showAll(
            int classes, double populationUnits, double second, double squares, MeanEstimate e, Working working) {
        working.heading("All classes");
        working.step("mean", "mean", each("{M%} / {n1} × {m%}", classes), e.mean(), Working.Scale.VALUE);
        if (!e.hasError()) {
            return;
        }
        String drawn = each("({M%} / {n1})² × {d%}", classes);
        working.step("v2", "variance from the second sample", drawn, second, Working.Scale.SQUARE);
        String rebuilt = each("({M%} - 1) × {s²%} + {M%} × (({m%} - {mean})² - (1 - {M%} / {n1}) × {d%})", classes);
        working.step("Q", "squares of all values about the mean, rebuilt", rebuilt, squares, Working.Scale.SQUARE);
        String left = "(1 / {n1})";
        if (populationUnits < Double.POSITIVE_INFINITY) {
            working.number("N", "units in the population, for the finite population correction", populationUnits);
            left = "(1 / {n1} - 1 / {N})";
        }
        working.step("v", "variance", "{v2} + {Q} / ({n1} - 1) × " + left, e.variance(), Working.Scale.SQUARE);
        working.number("n", "plots with trees", e.n());
        working.number("H", "classes", classes);
        working.error(e, "{n} - {H}");
    }

    private static String each(String term, int classes) {
        return IntStream.rangeClosed(1, classes)
                .mapToObj(h -> term.replace("%", Integer.toString(h)))
                .collect(Collectors.joining(" + "));
    }

    /**
     * Variance of a mean through two samples: s²·(1 - n2/n1)/n2 + s²_y·(1 - n1/N)/n1.
     *
     * @param residual s² of y about what x foretells
     * @param total s²_y
     * @param n2 units of the second sample
     * @param n1 units of the first, at least n2
     * @param populationUnits N; infinity for no correction
     */
    static double variance(double residual, double total, int n2, int n1, double populationUnits) {
        Arguments.atLeast(n1, n2, "units of the first sample");
        return residual * (1 - (double) n2 / n1) / n2 + total / n1 * Math.max(0, 1 - n1 / populationUnits);
    }

    private static double twoPhase(StratumSample first, double[] y, double residual) {
        return variance(residual, Moments.of(y).variance(), y.length, first.values().length, first.populationUnits());
    }

    /** Share of the first sample that carries no y. */
    private static double unseen(StratumSample first, double[] y) {
        return 1 - (double) y.length / Arguments.atLeast(first.values().length, y.length, "units of the first sample");
    }

    /** Variance of the first sample's mean, had all its units y. */
    private static double ofFirst(StratumSample first, double[] y) {
        return Moments.of(y).variance() / first.values().length * first.unseen();
    }
}
