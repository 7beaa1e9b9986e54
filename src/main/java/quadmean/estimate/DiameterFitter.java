package quadmean.estimate;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import quadmean.model.PlotDesign;
import quadmean.stats.MeanEstimate;
import quadmean.stats.WeibullFit;
import quadmean.stats.WeibullScore;
import quadmean.units.Attribute;

/** Fits the Weibull distribution of diameters, each dbh with the number of trees per hectare that the sample gives it. */
final class DiameterFitter {
    /** With more different diameters than this they are taken to the millimetre. */
    private static final int MOST_DIAMETERS = 1000;

    private final Sample sample;
    private final EstimateSettings settings;
    private final double limitCm;
    private final boolean toTheMillimetre;
    private final NavigableSet<Double> diameters = new TreeSet<>();
    private final IdentityHashMap<SampledPlot, NavigableMap<Double, Double>> tables = new IdentityHashMap<>();

    DiameterFitter(Sample sample, List<SampledPlot> plots, EstimateSettings settings) {
        this.sample = sample;
        this.settings = settings;
        this.limitCm = limit(settings);
        this.toTheMillimetre = plots.stream()
                        .flatMap(p -> p.stems().stream())
                        .mapToDouble(Stem::dbhCm)
                        .distinct()
                        .count()
                > MOST_DIAMETERS;
        plots.forEach(p -> diameters.addAll(table(p).keySet()));
    }

    /** The smallest dbh that the design has tallied (cm); trees below it belong to no distribution. */
    static double limit(EstimateSettings settings) {
        double ring = settings.plot() instanceof PlotDesign.Nested nested
                ? nested.rings().get(0).minDbhCm()
                : 0;
        return Math.max(ring, settings.sizes().smallestCm());
    }

    /** The fit; empty where the likelihood has no largest value, as for trees of one dbh. */
    Optional<DiameterFit> fit() {
        TreeMap<Double, Double> weights = new TreeMap<>();
        for (double d : diameters) {
            double w = sample.mean(p -> table(p).getOrDefault(d, 0.0)).mean();
            if (w > 0) {
                weights.put(d, w);
            }
        }
        if (weights.size() < 2) {
            return Optional.empty();
        }
        double[] x = numbers(weights.keySet());
        double trees = weights.values().stream().mapToDouble(w -> w).sum();
        return WeibullFit.truncated(x, numbers(weights.values()), 0, limitCm)
                .map(f -> new DiameterFit(f.weibull(), limitCm, trees));
    }

    private static double[] numbers(java.util.Collection<Double> values) {
        return values.stream().mapToDouble(v -> v).toArray();
    }

    /** Trees per hectare of a plot by dbh. */
    private NavigableMap<Double, Double> table(SampledPlot plot) {
        return tables.computeIfAbsent(plot, p -> {
            NavigableMap<Double, Double> trees = new TreeMap<>();
            p.stems().stream()
                    .filter(s -> s.counts().contains(Attribute.TREES) && s.dbhCm() >= limitCm)
                    .forEach(s ->
                            trees.merge(entry(s.dbhCm()), PlotValue.treesPerHa(settings.plot(), p, s), Double::sum));
            return trees;
        });
    }

    private double entry(double dbhCm) {
        return toTheMillimetre ? Math.max(limitCm, Math.round(dbhCm * 10) / 10.0) : dbhCm;
    }

    /** The shape with its error by plots. */
    MeanEstimate shape(DiameterFit fit) {
        return parameter(fit, fit.weibull().shape(), (shape, scale, both) -> new double[] {scale, -both});
    }

    /** The scale (cm) with its error by plots. */
    MeanEstimate scale(DiameterFit fit) {
        return parameter(fit, fit.weibull().scale(), (shape, scale, both) -> new double[] {-both, shape});
    }

    /** A row of the inverse of a symmetric matrix of two rows, times its determinant. */
    private interface Row {
        double[] of(double shape, double scale, double both);
    }

    /** The mean over plots of the scores, turned by the curvature of the likelihood into the change of a parameter. */
    private MeanEstimate parameter(DiameterFit fit, double value, Row row) {
        WeibullScore score = new WeibullScore(fit.weibull(), fit.limitCm());
        double cc = sample.mean(sum(score::byShapeTwice)).mean();
        double bb = sample.mean(sum(score::byScaleTwice)).mean();
        double cb = sample.mean(sum(score::byBoth)).mean();
        double[] turn = row.of(cc, bb, cb);
        double determinant = cc * bb - cb * cb;
        MeanEstimate change =
                sample.mean(sum(x -> -(turn[0] * score.byShape(x) + turn[1] * score.byScale(x)) / determinant));
        return new MeanEstimate(change.n(), change.df(), value, change.se(), change.sd());
    }

    private ToDoubleFunction<SampledPlot> sum(java.util.function.DoubleUnaryOperator of) {
        return plot -> table(plot).entrySet().stream()
                .mapToDouble(e -> e.getValue() * of.applyAsDouble(e.getKey()))
                .sum();
    }
}
