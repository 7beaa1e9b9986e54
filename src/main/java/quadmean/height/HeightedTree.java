package quadmean.height;

import quadmean.model.HeightSource;
import quadmean.model.Tree;

/**
 * A tree with its height and where that came from.
 *
 * @param tree the tree
 * @param heightM total height (m); NaN if there is none
 * @param source where the height came from
 */
public record HeightedTree(Tree tree, double heightM, HeightSource source) {}
