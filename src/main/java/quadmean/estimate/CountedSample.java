package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.ProductRule;
import quadmean.stats.DoubleSampling;
import quadmean.stats.MeanEstimate;
import quadmean.stats.ProductEstimate;
import quadmean.stats.RatioEstimate;
import quadmean.stats.Reweighting;
import quadmean.stats.Reweighting.Target;
import quadmean.stats.StratifiedMean;
import quadmean.stats.StratumSample;
import quadmean.stats.Working;
import quadmean.units.Attribute;

/**
 * Points at which trees are counted and some are measured, be it all trees of some points or at each point those of a larger
 * factor: basal area by count, times the ratio of anything else to the basal area of the measured trees.
 */
final class CountedSample implements Sample {
    private static final String TOGETHER =
            "Points are resampled with their counts and their measured trees together, so that these limits take in how counts and"
                    + " ratios vary together, which the formula of Bruce leaves out.";

    private static final double ROUNDING = 1e-12;
    private static final MeanEstimate UNKNOWN = new MeanEstimate(0, 0, Double.NaN, Double.NaN, Double.NaN);

    private final StratifiedSample points;
    private final PlotDesign.Point design;
    private final ProductRule rule;

    CountedSample(StratifiedSample points, PlotDesign.Point design, ProductRule rule) {
        this.points = points;
        this.design = design;
        this.rule = rule;
    }

    @Override
    public List<String> notes() {
        long all = points.plots().stream().mapToLong(List::size).sum();
        long measured =
                points.plots().stream().mapToLong(h -> measured(h).size()).sum();
        return List.of(String.format(
                Locale.ROOT,
                "Basal area comes from counts on %d points; everything else is basal area times its ratio to the basal area of the"
                        + " measured trees, on %d points. Species share in the counted basal area as they do in the measured."
                        + " Standard errors of the products: %s. Ratios have a bias of order 1/n.",
                all,
                measured,
                rule.label()));
    }

    @Override
    public double areaHa() {
        return points.areaHa();
    }

    @Override
    public boolean isComplete() {
        return points.plots().stream().noneMatch(h -> measured(h).isEmpty());
    }

    @Override
    public List<String> strataWithOnePlot() {
        return points.strataWithOnePlot();
    }

    @Override
    public long plotsWith(ToDoubleFunction<SampledPlot> value) {
        return points.plotsWith(value);
    }

    @Override
    public MeanEstimate mean(ToDoubleFunction<SampledPlot> value, Working working) {
        if (!isComplete()) {
            return UNKNOWN;
        }
        working.heading("Basal area by count on all points (m²/ha)");
        MeanEstimate count =
                StratifiedMean.estimate(points.samples(this::counted), points.degrees(), working.ofNumbers());
        working.heading("Ratio of the value, y, to basal area (m²/ha), x, on points with measured trees");
        MeanEstimate ratio = ratio(value, this::ofMeasured, working.ofFactors());
        working.number("X", "basal area by count, again (m²/ha)", count.mean());
        MeanEstimate product = rule == ProductRule.DOUBLE_SAMPLING
                ? twoPhase(value, count, ratio, working)
                : ProductEstimate.of(
                        List.of(count, ratio),
                        rule == ProductRule.BRUCE ? ProductEstimate.Variance.BRUCE : ProductEstimate.Variance.GOODMAN,
                        working);
        // nothing measured of a kind is a zero, whatever was counted
        if (count.mean() == 0 || ratio.mean() == 0) {
            return onlyCount(count, 0, working);
        }
        // a ratio that never varies, as that of basal area to itself, leaves the error of all counts
        return ratio.se() <= ROUNDING * Math.abs(ratio.mean()) ? onlyCount(count, ratio.mean(), working) : product;
    }

    private static MeanEstimate onlyCount(MeanEstimate count, double ratio, Working working) {
        working.heading("The ratio is the same on every point: what varies is the count");
        working.given("r", "ratio", ratio, Working.Scale.FACTOR);
        working.number("v_X", "variance of X", count.variance());
        MeanEstimate e = count.times(ratio);
        working.step("mean", "mean", "{r} × {X}", e.mean(), Working.Scale.VALUE);
        if (e.hasError()) {
            working.step("v", "variance", "{r}² × {v_X}", e.variance(), Working.Scale.SQUARE);
            working.error(e, "");
        }
        return e;
    }

    /** On the measured points or trees alone. */
    @Override
    public MeanEstimate ratio(ToDoubleFunction<SampledPlot> y, ToDoubleFunction<SampledPlot> x, Working working) {
        return isComplete() ? RatioEstimate.estimate(onMeasured(y), onMeasured(x), points.degrees(), working) : UNKNOWN;
    }

    @Override
    public boolean hasLinearRatios() {
        return false;
    }

    /** None: the error goes by the counts and by the measured trees, each with its own number. */
    @Override
    public List<StratumSample> samples(ToDoubleFunction<SampledPlot> value) {
        return List.of();
    }

    private List<StratumSample> onMeasured(ToDoubleFunction<SampledPlot> value) {
        double[] weights = points.weights();
        List<StratumSample> samples = new ArrayList<>();
        for (int h = 0; h < weights.length; h++) {
            samples.add(
                    StratumSample.of(weights[h], values(measured(points.plots().get(h)), value)));
        }
        return samples;
    }

    private MeanEstimate twoPhase(
            ToDoubleFunction<SampledPlot> value, MeanEstimate count, MeanEstimate ratio, Working working) {
        if (design.measuring() instanceof Measuring.LargerFactor) {
            return linearised(value, count, ratio, working);
        }
        return DoubleSampling.ratio(
                points.samples(this::counted), onMeasured(this::counted), onMeasured(value), working);
    }

    /** Count and ratio from the same points: the variance of x·R + (mean(x)/mean(z))·(y - R·z), point by point. */
    private MeanEstimate linearised(
            ToDoubleFunction<SampledPlot> value, MeanEstimate count, MeanEstimate ratio, Working working) {
        double r = ratio.mean();
        double scale = count.mean()
                / StratifiedMean.estimate(onMeasured(this::ofMeasured), points.degrees())
                        .mean();
        working.heading("On each point count × r + c × (y - r × x), c = X over the mean of x: mean and error of these");
        working.number("c", "c", scale);
        return StratifiedMean.estimate(
                points.samples(p -> counted(p) * r + scale * (value.applyAsDouble(p) - r * ofMeasured(p))),
                points.degrees(),
                working);
    }

    /** Basal area of all trees of a point by count (m²/ha). */
    private double counted(SampledPlot point) {
        return counted(design, point);
    }

    static double counted(PlotDesign.Point design, SampledPlot point) {
        double trees = point.counted().stream()
                .filter(c -> c.counts().contains(Attribute.BASAL_AREA))
                .mapToDouble(CountedStem::count)
                .sum();
        return design.perTree() * (trees + measuredTrees(point));
    }

    /** Basal area that the measured trees of a point stand for (m²/ha). */
    private double ofMeasured(SampledPlot point) {
        return design.perMeasuredTree() * measuredTrees(point);
    }

    private static double measuredTrees(SampledPlot point) {
        return point.stems().stream()
                .filter(s -> s.counts().contains(Attribute.BASAL_AREA))
                .mapToDouble(Stem::count)
                .sum();
    }

    private List<SampledPlot> measured(List<SampledPlot> stratum) {
        return design.measuring() instanceof Measuring.SomePoints some
                ? stratum.stream().filter(p -> isMeasured(p, some)).toList()
                : stratum;
    }

    /** Without a list a point counts as measured where a measured tree stands on it: an empty one adds nothing to a ratio. */
    private static boolean isMeasured(SampledPlot point, Measuring.SomePoints some) {
        return some.points().isEmpty()
                ? !point.stems().isEmpty() && point.counted().isEmpty()
                : some.points().contains(point.id());
    }

    private static double[] values(List<SampledPlot> plots, ToDoubleFunction<SampledPlot> value) {
        return plots.stream().mapToDouble(value).toArray();
    }

    /**
     * Points are drawn with their counts and measured trees: weights of measured points first stand for their stratum, then are
     * scaled until the basal area of the measured trees is that of the counts.
     */
    @Override
    public Optional<Resampling> resampling() {
        if (!isComplete()) {
            return Optional.empty();
        }
        Resampling units = points.resampling().orElseThrow();
        List<SampledPlot> all = units.plots();
        double[] shares = points.weights();
        List<SampledPlot> items = new ArrayList<>();
        List<Integer> unit = new ArrayList<>();
        List<Integer> stratum = new ArrayList<>();
        int at = 0;
        for (int h = 0; h < shares.length; h++) {
            int end = at + units.strata().get(h).units();
            List<SampledPlot> measured = measured(all.subList(at, end));
            for (; at < end; at++) {
                if (measured.contains(all.get(at))) {
                    items.add(all.get(at));
                    unit.add(at);
                    stratum.add(h);
                }
            }
        }
        Target counts = Target.ofUnits(
                new int[all.size()], all.stream().mapToDouble(this::counted).toArray());
        double[] ones = items.stream().mapToDouble(p -> 1).toArray();
        Reweighting weights = Reweighting.expanded(
                        unit.stream().mapToInt(i -> i).toArray(), ones)
                .scaled(stratum.stream().mapToInt(i -> i).toArray(), shares.length, ones, Target.known(shares))
                .scaled(items.stream().mapToDouble(this::ofMeasured).toArray(), counts);
        return Optional.of(new Resampling(units.strata(), items, weights, "points", List.of(TOGETHER)));
    }
}
