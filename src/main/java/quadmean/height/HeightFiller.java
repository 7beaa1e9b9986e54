package quadmean.height;

import quadmean.model.Tree;

/** Gives trees a height. */
@FunctionalInterface
public interface HeightFiller {
    /** The tree with its field height, or one filled from a curve. */
    HeightedTree fill(Tree tree);
}
