package quadmean.volume;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import quadmean.model.FelledTree;
import quadmean.stats.LinearFit;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Fits a form to felled trees by weighted linear least squares, and says so where that gives no equation. */
final class VolumeFitter {
    private final VolumeFitForm form;
    private final List<FelledTree> trees;
    private final VolumeFitWeights weights;
    private final UnitSystem units;

    private VolumeFitter(VolumeFitForm form, List<FelledTree> trees, VolumeFitWeights weights, UnitSystem units) {
        this.form = form;
        this.trees = trees;
        this.weights = weights;
        this.units = units;
    }

    static VolumeFit fit(VolumeFitForm form, List<FelledTree> trees, VolumeFitSettings settings) {
        VolumeFitWeights weights = form.isFittedInVolume() ? settings.weights() : VolumeFitWeights.EQUAL;
        return new VolumeFitter(form, trees, weights, settings.units()).fit();
    }

    private VolumeFit fit() {
        int p = form.coefficients().size();
        if (trees.size() < form.treesNeeded()) {
            String remark = trees.size() + (trees.size() == 1 ? " tree, " : " trees, ") + form.treesNeeded()
                    + " needed: " + form.treesNeededWhy();
            return new VolumeFit(
                    form, weights, units, trees, VolumeFitStatus.TOO_FEW_TREES, remark, null, unknown(), unknown());
        }
        LinearFit fit = regression(p);
        if (!fit.hasFullRank()) {
            return result(
                    VolumeFitStatus.COLLINEAR,
                    "the trees are too alike in size to tell the coefficients apart",
                    fit,
                    unknown(),
                    unknown());
        }
        double[] fitted = volumes(i -> form.volume(trees.get(i), fit.fitted()[i], fit.sigma(), units));
        double[] deleted = volumes(i -> form.volume(trees.get(i), fit.deletedFitted(i), fit.deletedSigma(i), units));
        return judged(fit, fitted, deleted);
    }

    private VolumeFit judged(LinearFit fit, double[] fitted, double[] deleted) {
        int negative = firstUnusable(fitted);
        if (negative >= 0) {
            String remark = "the equation has no volume above zero for tree "
                    + trees.get(negative).id();
            return result(VolumeFitStatus.NO_VOLUME, remark, fit, fitted, deleted);
        }
        int alone = firstUnknown(deleted);
        if (alone >= 0) {
            String remark = "without tree " + trees.get(alone).id() + " its volume cannot be predicted";
            return result(VolumeFitStatus.HANGS_ON_ONE_TREE, remark, fit, fitted, deleted);
        }
        return result(VolumeFitStatus.FITTED, remark(fit), fit, fitted, deleted);
    }

    /** What to mind of an equation: it may leave the domain of volumes within the range of its own trees. */
    private String remark(LinearFit fit) {
        double dbh = trees.stream().mapToDouble(FelledTree::dbhCm).min().orElseThrow();
        double height = trees.stream().mapToDouble(FelledTree::heightM).min().orElseThrow();
        FelledTree smallest = new FelledTree("", 0, "", dbh, height, 1);
        double[] x = form.predictors(smallest, units);
        double y = 0;
        for (int k = 0; k < x.length; k++) {
            y += fit.coefficients()[k] * x[k];
        }
        return form.volume(smallest, y, fit.sigma(), units) > 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        "no volume above zero for a tree of the smallest dbh and height, %.1f %s and %.1f %s",
                        Unit.CENTIMETRE.convert(dbh, units.diameter()),
                        units.diameter().symbol(),
                        Unit.METRE.convert(height, units.length()),
                        units.length().symbol());
    }

    private LinearFit regression(int p) {
        double[][] columns = new double[p][trees.size()];
        double[] y = new double[trees.size()];
        double[] w = new double[trees.size()];
        for (int i = 0; i < y.length; i++) {
            FelledTree tree = trees.get(i);
            double[] x = form.predictors(tree, units);
            for (int k = 0; k < p; k++) {
                columns[k][i] = x[k];
            }
            y[i] = form.response(tree, units);
            w[i] = weights.of(VolumeFitForm.COMBINED_VARIABLE.predictors(tree, units)[1]);
        }
        return LinearFit.of(columns, y, w);
    }

    private double[] volumes(IntToDoubleFunction inFitUnit) {
        double[] volumes = new double[trees.size()];
        Arrays.setAll(volumes, i -> units.volume().convert(inFitUnit.applyAsDouble(i), Unit.CUBIC_METRE));
        return volumes;
    }

    private double[] unknown() {
        double[] unknown = new double[trees.size()];
        Arrays.fill(unknown, Double.NaN);
        return unknown;
    }

    private static int firstUnusable(double[] volumes) {
        for (int i = 0; i < volumes.length; i++) {
            if (!(volumes[i] > 0 && volumes[i] < Double.POSITIVE_INFINITY)) {
                return i;
            }
        }
        return -1;
    }

    /** A straight line may well go below zero without its smallest tree; an inverse then has no meaning. */
    private int firstUnknown(double[] deleted) {
        if (!form.isFittedInVolume()) {
            return firstUnusable(deleted);
        }
        for (int i = 0; i < deleted.length; i++) {
            if (!Double.isFinite(deleted[i])) {
                return i;
            }
        }
        return -1;
    }

    private VolumeFit result(VolumeFitStatus status, String remark, LinearFit fit, double[] fitted, double[] deleted) {
        return new VolumeFit(form, weights, units, trees, status, remark, fit, fitted, deleted);
    }
}
