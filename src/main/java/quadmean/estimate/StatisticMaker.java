package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.IntervalRule;
import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;

/** Makes the statistics of a stratum, or of the whole stand. */
final class StatisticMaker {
    /** Reineke's exponent and the diameter his index refers to, 10 in (Reineke 1933). */
    private static final double REINEKE = 1.605;

    private static final double REINEKE_CM = 25.4;

    /** Square metres of a hectare. */
    private static final double M2_PER_HA = 10_000;

    private final Sample sample;
    private final List<SampledPlot> plots;
    private final EstimateSettings settings;
    private final String stratum;
    private final ToDoubleFunction<SampledPlot> trees;
    private final ToDoubleFunction<SampledPlot> basalArea;
    private final List<StandStatistic> made = new ArrayList<>();

    private StatisticMaker(Sample sample, List<SampledPlot> plots, EstimateSettings settings, String stratum) {
        this.sample = sample;
        this.plots = plots;
        this.settings = settings;
        this.stratum = stratum;
        this.trees = of(Attribute.TREES, stem -> 1);
        this.basalArea = of(Attribute.BASAL_AREA, stem -> BasalArea.ofTree(stem.dbhCm()));
    }

    /**
     * All statistics.
     *
     * @param sample the plots
     * @param plots the same plots
     * @param fitter fits the distribution of diameters to them
     * @param fit that distribution, if there is one
     */
    static List<StandStatistic> of(
            Sample sample,
            List<SampledPlot> plots,
            EstimateSettings settings,
            String stratum,
            DiameterFitter fitter,
            Optional<DiameterFit> fit) {
        StatisticMaker maker = new StatisticMaker(sample, plots, settings, stratum);
        maker.diameters();
        maker.heights();
        maker.densities();
        maker.volume();
        maker.weibull(fitter, fit);
        return maker.made;
    }

    private ToDoubleFunction<SampledPlot> of(Attribute counting, ToDoubleFunction<Stem> value) {
        return PlotValue.of(settings.plot(), counting, stem -> true, value);
    }

    private void diameters() {
        add(Statistic.BASAL_AREA, sample.mean(basalArea), "");
        MeanEstimate qmd = new RowMaker(sample, settings, stratum).quadraticMeanDiameter(EstimateRow.ALL);
        add(Statistic.QUADRATIC_MEAN_DIAMETER, qmd, "");
        add(Statistic.MEAN_DIAMETER, ratio(of(Attribute.TREES, Stem::dbhCm), trees), "");
    }

    private void heights() {
        String missing = withoutHeight();
        add(Statistic.MEAN_HEIGHT, ratio(of(Attribute.TREES, Stem::heightM), trees), missing);
        ToDoubleFunction<SampledPlot> weighted =
                of(Attribute.BASAL_AREA, stem -> BasalArea.ofTree(stem.dbhCm()) * stem.heightM());
        add(Statistic.LOREY_HEIGHT, ratio(weighted, basalArea), missing);
        add(Statistic.TOP_HEIGHT, ratio(this::topHeight, this::hasTopHeight), topRule(), missing);
    }

    private void densities() {
        double half = REINEKE / 2;
        PowerProduct reineke = PowerProduct.of(Math.pow(REINEKE_CM * REINEKE_CM * BasalArea.M2_PER_CM2, -half))
                .times(trees, 1 - half)
                .times(basalArea, half);
        add(Statistic.SDI_REINEKE, reineke.estimate(sample), "");
        add(
                Statistic.SDI_SUMMATION,
                sample.mean(of(Attribute.TREES, stem -> Math.pow(stem.dbhCm() / REINEKE_CM, REINEKE))),
                "");
        PowerProduct curtis = PowerProduct.of(Math.pow(BasalArea.M2_PER_CM2, 0.25))
                .times(basalArea, 0.75)
                .times(trees, 0.25);
        add(Statistic.RELATIVE_DENSITY, curtis.estimate(sample), "");
        PowerProduct spacing = PowerProduct.of(Math.sqrt(M2_PER_HA))
                .times(trees, -0.5)
                .over(this::topHeight)
                .times(this::hasTopHeight, 1);
        add(Statistic.RELATIVE_SPACING, careful(spacing.estimate(sample)), withoutHeight());
    }

    private void volume() {
        ToDoubleFunction<SampledPlot> volume = PlotValue.of(settings.plot(), Attribute.VOLUME, stem -> true);
        add(Statistic.VOLUME_PER_TREE, ratio(volume, trees), settings.whyMissing(Attribute.VOLUME));
    }

    private void weibull(DiameterFitter fitter, Optional<DiameterFit> fit) {
        MeanEstimate none = new MeanEstimate(plots.size(), 0, Double.NaN, Double.NaN, Double.NaN);
        String why = "these diameters have no Weibull distribution of largest likelihood";
        double limit = DiameterFitter.limit(settings);
        for (Statistic s : List.of(Statistic.WEIBULL_SHAPE, Statistic.WEIBULL_SCALE)) {
            MeanEstimate e = fit.map(f -> s == Statistic.WEIBULL_SHAPE ? fitter.shape(f) : fitter.scale(f))
                    .orElse(none);
            String rule = s.rule()
                    + (limit > 0
                            ? ", for trees from the smallest tallied dbh on"
                            : ", as if trees of every size were tallied: smallest_dbh in the design says from where on");
            add(s, careful(e), rule, why);
        }
    }

    private double topHeight(SampledPlot plot) {
        TopTrees top = top(plot);
        return top.isEmpty() ? 0 : top.meanHeightM();
    }

    private double hasTopHeight(SampledPlot plot) {
        return top(plot).isEmpty() ? 0 : 1;
    }

    private TopTrees top(SampledPlot plot) {
        return TopTrees.of(settings.plot(), settings.sizes().topHeight(), plot);
    }

    /** The rule of top height, and on how many plots it cannot be kept. */
    private String topRule() {
        double rule = settings.sizes().topHeight().treesPerHa();
        List<TopTrees> tops =
                plots.stream().map(this::top).filter(t -> !t.isEmpty()).toList();
        long small =
                tops.stream().filter(t -> t.thickestPerHa() > rule * (1 + 1e-9)).count();
        long few = tops.stream().filter(t -> t.treesPerHa() < rule * (1 - 1e-9)).count();
        String words = Statistic.TOP_HEIGHT.rule() + " of the "
                + settings.sizes().topHeight().label() + " on each";
        if (small > 0) {
            words += "; on " + small + " of " + tops.size()
                    + " plots with trees the thickest tree alone stands for more than that, and is taken for them";
        }
        return few > 0 ? words + "; on " + few + " of " + tops.size() + " there are fewer, and all are taken" : words;
    }

    /** Which trees lack a height; empty if none does. */
    private String withoutHeight() {
        List<String> species = plots.stream()
                .flatMap(p -> p.stems().stream())
                .filter(s -> Double.isNaN(s.heightM()))
                .map(Stem::species)
                .distinct()
                .sorted()
                .toList();
        return species.isEmpty() ? "" : "no height and no height curve for " + String.join(", ", species);
    }

    private MeanEstimate ratio(ToDoubleFunction<SampledPlot> y, ToDoubleFunction<SampledPlot> x) {
        return careful(sample.ratio(y, x));
    }

    /** Trees of one or two plots show next to nothing of how trees vary, and a ratio's error comes out far too small. */
    private MeanEstimate careful(MeanEstimate e) {
        return RowMaker.isOnFewPlots(sample.plotsWith(trees), e.n())
                ? new MeanEstimate(e.n(), 0, e.mean(), Double.NaN, Double.NaN)
                : e;
    }

    private void add(Statistic statistic, MeanEstimate e, String missing) {
        add(statistic, e, statistic.rule(), missing);
    }

    private void add(Statistic statistic, MeanEstimate e, String rule, String missing) {
        Interval limits = RowLimits.byFormula(e, settings);
        made.add(new StandStatistic(
                stratum,
                statistic,
                e.n(),
                e.hasError() ? e.df() : Double.NaN,
                e.mean(),
                e.hasError() ? e.se() : Double.NaN,
                limits.lower(),
                limits.upper(),
                e.mean() == 0 ? Double.NaN : 50 * (limits.upper() - limits.lower()) / Math.abs(e.mean()),
                rule + limitRule(),
                reason(e, missing)));
    }

    /** Statistics are not resampled, and say so where rows are. */
    private String limitRule() {
        IntervalRule rule = settings.rules().interval();
        return rule.isBootstrap() ? "; limits by Student's t, not by the bootstrap" : "";
    }

    private String reason(MeanEstimate e, String missing) {
        boolean empty = sample.plotsWith(trees) == 0;
        if (Double.isNaN(e.mean())) {
            return empty || missing.isEmpty() ? "no trees tallied here" : missing;
        }
        if (e.hasError()) {
            return empty ? "no trees tallied here" : "";
        }
        return RowMaker.noError(sample);
    }
}
