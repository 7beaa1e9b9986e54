package quadmean.height;

import quadmean.model.HeightSource;
import quadmean.model.Tree;

/**
 * A tree with its height, where that came from and how far it may be off.
 *
 * @param tree the tree
 * @param heightM total height (m); NaN if there is none
 * @param source where the height came from
 * @param curveSeM the part of the standard error of prediction that trees of one curve share (m); 0 for heights from the
 *     field, whose own errors of measurement are not in here; NaN without a height
 * @param scatterSdM the part that is the tree's own (m); 0 for heights from the field and for drawn ones, NaN without a
 *     height
 * @param reach whether the curve was fitted to trees of this size
 */
public record HeightedTree(
        Tree tree, double heightM, HeightSource source, double curveSeM, double scatterSdM, Reach reach) {

    /** Whether the dbh lies among those that the curve was fitted to. */
    public enum Reach {
        /** Among them, or no curve was used. */
        WITHIN,
        /** Below the smallest or above the largest. */
        EXTRAPOLATED
    }

    /** A tree whose height has no error from a curve. */
    public HeightedTree(Tree tree, double heightM, HeightSource source) {
        this(tree, heightM, source, 0 * heightM, 0 * heightM, Reach.WITHIN);
    }

    static HeightedTree filled(Tree tree, HeightPrediction p, HeightSource source, boolean isExtrapolated) {
        Reach reach = isExtrapolated ? Reach.EXTRAPOLATED : Reach.WITHIN;
        return new HeightedTree(tree, p.metres(), source, p.curveSe(), p.scatterSd(), reach);
    }

    /** Standard error of prediction (m): both parts together. */
    public double standardErrorM() {
        return Math.hypot(curveSeM, scatterSdM);
    }
}
