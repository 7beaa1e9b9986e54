package quadmean.cruise;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import quadmean.cruise.ErrorPart.Kind;
import quadmean.cruise.ErrorPart.Source;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandMean;
import quadmean.height.CurveTable;
import quadmean.height.HeightedTree;
import quadmean.height.Influence;
import quadmean.height.SharedError;
import quadmean.model.Estimator;
import quadmean.model.Tree;
import quadmean.model.TreeDetail.Top;

/**
 * The error of height curves in the mean of the stand, by formula. All trees of a curve share the error of its parameters; and the plots
 * that fitted it are those that are averaged, so that the two errors hang together. Each measured tree moves the parameters by its
 * influence, and with them the mean; that is put to the account of its plot. The variation between plots with this in it is the error of
 * sampling and curves together; what it is more than without is the part of the curves.
 */
final class CurveError {
    private final StandMean mean;
    private final Estimator estimator;
    private final CurveTable curves;
    private final List<SampledPlot> plots;
    private final List<List<HeightedTree>> trees;
    private final Map<String, SharedError> gradients = new LinkedHashMap<>();
    private int filled;

    CurveError(
            StandMean mean,
            Estimator estimator,
            CurveTable curves,
            List<SampledPlot> plots,
            List<List<HeightedTree>> trees,
            List<TreeEffect> effects) {
        this.mean = mean;
        this.estimator = estimator;
        this.curves = curves;
        this.plots = plots;
        this.trees = trees;
        for (TreeEffect e : effects) {
            List<SharedError> shared = curves.sharedErrors(e.tree().tree());
            filled += shared.isEmpty() || e.perMetre() == 0 ? 0 : e.count();
            for (SharedError s : shared) {
                gradients.merge(s.source(), times(s, e.perMetre()), CurveError::plus);
            }
        }
    }

    private static SharedError times(SharedError s, double k) {
        double[] g = s.gradientM().clone();
        for (int i = 0; i < g.length; i++) {
            g[i] *= k;
        }
        return new SharedError(s.source(), g, s.covariance());
    }

    private static SharedError plus(SharedError a, SharedError b) {
        double[] g = a.gradientM().clone();
        for (int i = 0; i < g.length; i++) {
            g[i] += b.gradientM()[i];
        }
        return new SharedError(a.source(), g, a.covariance());
    }

    /** Whether any height that counts was filled. */
    boolean isNone() {
        return filled == 0;
    }

    /** The variance gᵀVg from the covariance of the parameters alone, curves and plots taken as independent. */
    double independent() {
        return gradients.values().stream()
                .mapToDouble(s -> SharedError.variance(s.gradientM(), s.covariance()))
                .sum();
    }

    /** The part of the curves with their tie to the plots. */
    ErrorPart part() {
        Map<String, Double> perPlot = new HashMap<>();
        Map<String, Double> weights = weights();
        Map<String, SharedError> alone = new LinkedHashMap<>(gradients);
        for (int i = 0; i < plots.size(); i++) {
            double moved = 0;
            for (HeightedTree t : trees.get(i)) {
                moved += moved(t.tree(), alone);
            }
            perPlot.put(
                    key(plots.get(i)), moved == 0 ? 0 : moved / weights.getOrDefault(key(plots.get(i)), Double.NaN));
        }
        double variance = mean.estimate(p -> perPlot.getOrDefault(key(p), 0.0)).variance()
                - mean.estimate().variance();
        for (SharedError s : alone.values()) {
            variance += SharedError.variance(s.gradientM(), s.covariance());
        }
        return new ErrorPart(
                Source.CURVES,
                Kind.ADDED,
                variance,
                "What the curves of " + filled
                        + " filled heights may be off by, their tie to the plots that they were fitted to"
                        + " included (linearised)"
                        + (alone.isEmpty()
                                ? ""
                                : "; heights calibrated to plots by the covariance of their parameters, without that tie")
                        + ".");
    }

    /**
     * What each plot counts with. A line gives plots far out along it more or less, down to nothing, by where their auxiliary lies; that
     * is no reason for their heights to count so, and all plots of a stratum count alike.
     */
    private Map<String, Double> weights() {
        Map<String, Double> weights = new HashMap<>();
        plots.forEach(p -> weights.put(key(p), mean.weight(p)));
        if (!estimator.isLine()) {
            return weights;
        }
        Map<String, Double> alike = plots.stream()
                .collect(Collectors.groupingBy(SampledPlot::stratum, Collectors.averagingDouble(mean::weight)));
        plots.forEach(p -> weights.put(key(p), alike.getOrDefault(p.stratum(), Double.NaN)));
        return weights;
    }

    /** What a measured tree moves the mean by through the curves; sources met here are no longer left alone. */
    private double moved(Tree tree, Map<String, SharedError> alone) {
        if (tree.detail().top() == Top.BROKEN) {
            return 0;
        }
        double sum = 0;
        for (Influence influence : curves.influences(tree)) {
            SharedError gradient = gradients.get(influence.source());
            if (gradient != null) {
                alone.remove(influence.source());
                for (int k = 0; k < influence.shift().length; k++) {
                    sum += gradient.gradientM()[k] * influence.shift()[k];
                }
            }
        }
        return sum;
    }

    private static String key(SampledPlot plot) {
        return plot.stratum() + "\n" + plot.id();
    }
}
