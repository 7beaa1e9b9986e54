package quadmean.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.stats.RatioEstimate;
import quadmean.stats.StratifiedMean;
import quadmean.stats.StratumSample;
import quadmean.stats.ThreeP;
import quadmean.stats.Working;

/**
 * 3P sampling: every tree of a complete tally, or every tree that a point chooses, has a prediction, and is measured with the
 * probability prediction/limit; those that reach the limit are sure to be measured.
 */
final class ThreePSample implements Sample {
    private final StratifiedSample plots;
    private final PlotDesign design;
    private final Measuring.ThreeP threeP;

    private ThreePSample(StratifiedSample plots, PlotDesign design, Measuring.ThreeP threeP) {
        this.plots = plots;
        this.design = design;
        this.threeP = threeP;
    }

    static ThreePSample of(StratifiedSample plots, PlotDesign design, Measuring.ThreeP threeP) {
        return new ThreePSample(plots, design, threeP);
    }

    @Override
    public List<String> notes() {
        List<SampledPlot> all = plots.plots().stream().flatMap(List::stream).toList();
        int measured = all.stream().mapToInt(p -> p.stems().size()).sum();
        long sure = all.stream()
                .flatMap(p -> p.stems().stream())
                .filter(this::isSure)
                .count();
        return List.of(String.format(
                Locale.ROOT,
                "3P sampling%s: %d trees measured, %d of them sure to be (prediction at or above the limit of %s). The tables show"
                        + " the %s. The number of trees is estimated like everything else."
                        + " An error budget is not worked out for 3P sampling.",
                design instanceof PlotDesign.Complete ? " of a complete tally" : " at points",
                measured,
                sure,
                threeP.limit() == Math.rint(threeP.limit())
                        ? String.format(Locale.ROOT, "%.0f", threeP.limit())
                        : String.valueOf(threeP.limit()),
                threeP.estimator() == Measuring.Estimator.ADJUSTED
                        ? "adjusted estimate (the sum of predictions times the mean ratio of value to prediction; a small bias and a small"
                                + " variance)"
                        : "unadjusted estimate (the sum of value over probability; no bias and a large variance)"));
    }

    @Override
    public double areaHa() {
        return plots.areaHa();
    }

    @Override
    public boolean isComplete() {
        return plots.isComplete();
    }

    /** A complete tally needs no second plot; points do. */
    @Override
    public List<String> strataWithOnePlot() {
        return design instanceof PlotDesign.Complete ? List.of() : plots.strataWithOnePlot();
    }

    @Override
    public long plotsWith(ToDoubleFunction<SampledPlot> value) {
        return plots.plotsWith(value);
    }

    @Override
    public MeanEstimate mean(ToDoubleFunction<SampledPlot> value, Working working) {
        return mean(value, threeP.estimator(), working);
    }

    /** By either of the two estimates. */
    MeanEstimate mean(ToDoubleFunction<SampledPlot> value, Measuring.Estimator estimator) {
        return mean(value, estimator, Working.silent());
    }

    private MeanEstimate mean(ToDoubleFunction<SampledPlot> value, Measuring.Estimator estimator, Working working) {
        if (design instanceof PlotDesign.Point) {
            return ofPoints(value, estimator, working);
        }
        MeanEstimate total = ofTally(value, estimator, working.ofTotals());
        MeanEstimate mean = total.times(1 / areaHa());
        working.heading("Per unit area");
        working.ofTotals().given("T", "total", total.mean(), Working.Scale.VALUE);
        working.ofTotals().given("v_T", "its variance", total.variance(), Working.Scale.SQUARE);
        working.given("A", "area", areaHa(), Working.Scale.AREA);
        working.step("mean", "mean", "{T} / {A}", mean.mean(), Working.Scale.VALUE);
        if (mean.hasError()) {
            working.step("v", "variance", "{v_T} / {A}²", mean.variance(), Working.Scale.SQUARE);
            working.error(mean, "");
        }
        return mean;
    }

    /** From the expanded values of plots, whose number of trees is left to chance; few plots make it rough. */
    @Override
    public MeanEstimate ratio(ToDoubleFunction<SampledPlot> y, ToDoubleFunction<SampledPlot> x, Working working) {
        if (design instanceof PlotDesign.Point) {
            return RatioEstimate.estimate(
                    plots.samples(overChance(y)), plots.samples(overChance(x)), plots.degrees(), working);
        }
        if (plots.plots().stream().flatMap(List::stream).allMatch(p -> p.stems().isEmpty())) {
            return StratumEstimator.UNKNOWN;
        }
        StratumSample ones = StratumSample.of(1, perTree(overChance(x)));
        return RatioEstimate.estimate(
                List.of(StratumSample.of(1, perTree(overChance(y)))), List.of(ones), plots.degrees(), working);
    }

    @Override
    public boolean hasLinearRatios() {
        return false;
    }

    /** None but of the unadjusted estimate at points: of the others the error goes by the number of measured trees too. */
    @Override
    public List<StratumSample> samples(ToDoubleFunction<SampledPlot> value) {
        return design instanceof PlotDesign.Point && threeP.estimator() == Measuring.Estimator.UNADJUSTED
                ? plots.samples(overChance(value))
                : List.of();
    }

    private MeanEstimate ofTally(ToDoubleFunction<SampledPlot> value, Measuring.Estimator estimator, Working working) {
        Trees sure = trees(value, true);
        Trees drawn = trees(value, false);
        if (estimator == Measuring.Estimator.UNADJUSTED) {
            Trees all = sure.and(drawn);
            return ThreeP.unadjusted(all.y(), all.prediction(), threeP.limit(), working);
        }
        if (drawn.y().length == 0 && sumOfPredictions() > 0) {
            return StratumEstimator.UNKNOWN;
        }
        if (drawn.y().length == 0) {
            int n = sure.y().length;
            working.sum(
                    "S",
                    "sum of the trees, all sure",
                    Working.SUM,
                    sure.y(),
                    Moments.sum(sure.y()),
                    Working.Scale.VALUE);
            return new MeanEstimate(n, Double.POSITIVE_INFINITY, Moments.sum(sure.y()), 0, 0);
        }
        return ThreeP.adjusted(drawn.y(), drawn.prediction(), sumOfPredictions(), sure.y(), working);
    }

    /**
     * Trees sure to be measured as they are, and of the others the predictions per hectare times the mean ratio r of value to
     * prediction: variance between points of that sum, and of r times the squared mean of the predictions (two stages of chance that
     * know nothing of each other; by algebra, and as Bruce's formula where no tree is sure).
     */
    private MeanEstimate ofPoints(ToDoubleFunction<SampledPlot> value, Measuring.Estimator estimator, Working working) {
        if (estimator == Measuring.Estimator.UNADJUSTED) {
            working.heading("Points, with each measured tree over its probability, prediction / limit");
            return StratifiedMean.estimate(plots.samples(overChance(value)), plots.degrees(), working);
        }
        Trees drawn = trees(value, false);
        if (drawn.y().length == 0 && sumOfPredictions() > 0) {
            return StratumEstimator.UNKNOWN;
        }
        Trees expanded = trees(p -> predicted(p.stems().get(0)), false);
        double[] ratios = IntStream.range(0, drawn.y().length)
                .mapToDouble(i -> drawn.y()[i] / expanded.y()[i])
                .toArray();
        Moments r = Moments.of(ratios);
        double mean = r.n() == 0 ? 0 : r.mean();
        showRatios(ratios, r, working.ofFactors());
        working.heading("Points: trees sure to be measured + r × predictions of all others, per ha");
        MeanEstimate between = StratifiedMean.estimate(
                plots.samples(p -> sureValue(p, value) + mean * predicted(p)), plots.degrees(), working);
        if (r.n() == 0) {
            return between;
        }
        double x = StratifiedMean.estimate(plots.samples(this::predicted), plots.degrees())
                .mean();
        double ofRatio = x * x * r.variance() / r.n();
        double variance = between.variance() + ofRatio;
        double df = variance
                * variance
                / (between.variance() * between.variance() / between.df() + ofRatio * ofRatio / (r.n() - 1));
        MeanEstimate e = new MeanEstimate(
                between.n(), variance > 0 ? df : between.df(), between.mean(), Math.sqrt(variance), between.sd());
        showBoth(between, x, ofRatio, e, working);
        return e;
    }

    private static void showRatios(double[] ratios, Moments r, Working working) {
        if (r.n() == 0) {
            return;
        }
        working.heading("Measured trees that were not sure to be: value over prediction, both per ha");
        working.number("n_r", "number of them", r.n());
        working.sum("r", "mean", "(" + Working.SUM + ") / {n_r}", ratios, r.mean(), Working.Scale.VALUE);
        if (r.n() > 1) {
            double[] deviations = Arrays.stream(ratios).map(v -> v - r.mean()).toArray();
            String formula = "(" + Working.SQUARES + ") / ({n_r} - 1)";
            working.sum("s²_r", "variance between them", formula, deviations, r.variance(), Working.Scale.SQUARE);
        }
    }

    private static void showBoth(MeanEstimate between, double x, double ofRatio, MeanEstimate e, Working working) {
        working.heading("Points and ratios together");
        if (e.hasError()) {
            working.given("v_b", "variance between points", between.variance(), Working.Scale.SQUARE);
            working.number("d_b", "its degrees of freedom", between.df());
            working.number("x", "mean of the predictions that were not sure to be measured, per ha", x);
            String formula = "{x}² × {s²_r} / {n_r}";
            working.step("v_r", "variance from the ratio", formula, ofRatio, Working.Scale.SQUARE);
            working.step("v", "variance", "{v_b} + {v_r}", e.variance(), Working.Scale.SQUARE);
            working.error(e, e.variance() > 0 ? "{v}² / ({v_b}² / {d_b} + {v_r}² / ({n_r} - 1))" : "");
        }
        working.given("mean", "mean, as between points", e.mean(), Working.Scale.VALUE);
    }

    /** Predictions of all trees of a point that were not sure to be measured, per hectare. */
    private double predicted(SampledPlot plot) {
        double sum = plot.counted().stream()
                .mapToDouble(c -> c.count() * c.prediction())
                .sum();
        sum += plot.stems().stream()
                .filter(s -> !isSure(s))
                .mapToDouble(s -> s.count() * s.prediction())
                .sum();
        return ((PlotDesign.Point) design).perTree() * sum / plot.inside();
    }

    private double predicted(Stem stem) {
        return ((PlotDesign.Point) design).perTree() * stem.count() * stem.prediction();
    }

    private double sureValue(SampledPlot plot, ToDoubleFunction<SampledPlot> value) {
        return plot.stems().stream()
                .filter(this::isSure)
                .mapToDouble(s -> value.applyAsDouble(plot.only(s)))
                .sum();
    }

    /** Over the whole tally, without the trees that were sure to be measured. */
    private double sumOfPredictions() {
        double counted = plots.plots().stream()
                .flatMap(List::stream)
                .flatMap(p -> p.counted().stream())
                .mapToDouble(c -> c.count() * c.prediction())
                .sum();
        return counted
                + plots.plots().stream()
                        .flatMap(List::stream)
                        .flatMap(p -> p.stems().stream())
                        .filter(s -> !isSure(s))
                        .mapToDouble(s -> s.count() * s.prediction())
                        .sum();
    }

    private boolean isSure(Stem stem) {
        return stem.prediction() >= threeP.limit();
    }

    /** The value of a plot with each tree over its probability. */
    private ToDoubleFunction<SampledPlot> overChance(ToDoubleFunction<SampledPlot> value) {
        return plot -> Moments.sum(plot.stems().stream()
                .mapToDouble(s -> value.applyAsDouble(plot.only(s)) / Math.min(1, s.prediction() / threeP.limit()))
                .toArray());
    }

    private double[] perTree(ToDoubleFunction<SampledPlot> value) {
        return plots.plots().stream()
                .flatMap(List::stream)
                .flatMap(p -> p.stems().stream().map(p::only))
                .mapToDouble(value)
                .toArray();
    }

    /** Values and predictions of the measured trees that were sure to be measured, or were not. */
    private Trees trees(ToDoubleFunction<SampledPlot> value, boolean sure) {
        List<double[]> found = new ArrayList<>();
        for (SampledPlot plot : plots.plots().stream().flatMap(List::stream).toList()) {
            plot.stems().stream()
                    .filter(s -> isSure(s) == sure)
                    .forEach(s -> found.addAll(Collections.nCopies(
                            trees(s), new double[] {value.applyAsDouble(plot.only(s)) / trees(s), s.prediction()})));
        }
        return new Trees(
                found.stream().mapToDouble(f -> f[0]).toArray(),
                found.stream().mapToDouble(f -> f[1]).toArray());
    }

    /** A row of several trees alike of a complete tally stands for so many draws; at a point the edge alone multiplies. */
    private int trees(Stem stem) {
        return design instanceof PlotDesign.Complete ? stem.count() : 1;
    }

    @SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
    private record Trees(double[] y, double[] prediction) {
        Trees and(Trees other) {
            return new Trees(join(y, other.y), join(prediction, other.prediction));
        }

        private static double[] join(double[] a, double[] b) {
            return java.util.stream.DoubleStream.concat(java.util.Arrays.stream(a), java.util.Arrays.stream(b))
                    .toArray();
        }
    }

    @Override
    public String whyNoEstimate() {
        return "no tree was measured but those sure to be, and nothing tells the ratio of value to prediction of the others";
    }

    @Override
    public String whyNoBootstrap() {
        return "no bootstrap limits: in 3P sampling each tree is measured with a chance of its own, and resamples of plots would not"
                + " vary as that does; take interval = \"t\" or \"log\"";
    }
}
