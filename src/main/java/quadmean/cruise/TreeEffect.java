package quadmean.cruise;

import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandMean;
import quadmean.estimate.Stem;
import quadmean.height.CurveTable;
import quadmean.height.HeightedTree;
import quadmean.model.Tree;

/**
 * What one row of the tally adds to the mean of the stand, and how that moves with its height and its dbh. Derivatives are differences
 * over ±5 % of the height and ±2.5 % of the dbh, wide enough to go over the steps of log rules.
 *
 * @param tree the tree
 * @param value what it adds to the mean, per hectare
 * @param treesPerHa how many trees of each hectare of the stand it stands for
 * @param perMetre change of {@code value} with each metre of height
 * @param perCm change with each centimetre of dbh, the height held
 * @param perCmFilled change with each centimetre of dbh, a filled height moving along its curve
 */
record TreeEffect(
        HeightedTree tree, double value, double treesPerHa, double perMetre, double perCm, double perCmFilled) {
    private static final double HEIGHT_STEP = 0.05;
    private static final double DBH_STEP = 0.025;

    /** Smaller differences, relative to the value, are rounding: basal area by a gauge does not move with the dbh. */
    private static final double ROUNDING = 1e-12;

    static TreeEffect of(
            StandMean mean,
            SampledPlot plot,
            double weight,
            HeightedTree t,
            Function<HeightedTree, Stem> woods,
            CurveTable curves) {
        double d = t.tree().dbhCm();
        double h = t.heightM();
        double value = mean.value(plot, woods.apply(t));
        double perMetre = Double.isNaN(h)
                ? 0
                : slope(x -> mean.value(plot, woods.apply(with(t, t.tree(), x))), h, value, HEIGHT_STEP * h);
        DoubleUnaryOperator held = x -> mean.value(plot, woods.apply(with(t, resized(t.tree(), x), h)));
        DoubleUnaryOperator along =
                x -> mean.value(plot, woods.apply(with(t, resized(t.tree(), x), h + moved(t.tree(), x, curves))));
        double perCm = slope(held, d, value, DBH_STEP * d);
        boolean isFilled = t.tree().height() == null && !Double.isNaN(h);
        return new TreeEffect(
                t,
                weight * value,
                weight * mean.trees(plot, woods.apply(t)),
                weight * perMetre,
                weight * perCm,
                weight * (isFilled ? slope(along, d, value, DBH_STEP * d) : perCm));
    }

    /** One-sided where a side has no value, as at the edge of a volume table; 0 where neither has. */
    private static double slope(DoubleUnaryOperator f, double x, double middle, double step) {
        double above = f.applyAsDouble(x + step);
        double below = f.applyAsDouble(x - step);
        if (Double.isNaN(above) && Double.isNaN(below)) {
            return 0;
        }
        if (Double.isNaN(above)) {
            return (middle - below) / step;
        }
        if (Double.isNaN(below)) {
            return (above - middle) / step;
        }
        double difference = above - below;
        return Math.abs(difference) <= ROUNDING * Math.abs(middle) ? 0 : difference / (2 * step);
    }

    private static double moved(Tree tree, double dbhCm, CurveTable curves) {
        return curves.fill(resized(tree, dbhCm)).heightM() - curves.fill(tree).heightM();
    }

    private static Tree resized(Tree t, double dbhCm) {
        return new Tree(t.file(), t.row(), t.plot(), t.number(), t.species(), dbhCm, t.height(), t.detail());
    }

    private static HeightedTree with(HeightedTree t, Tree tree, double heightM) {
        return new HeightedTree(tree, heightM, t.source(), t.curveSeM(), t.scatterSdM(), t.reach());
    }

    /** Number of trees that the row stands for on its plot; their errors are their own. */
    int count() {
        return tree.tree().detail().count();
    }
}
