package quadmean.layout;

import java.util.SplittableRandom;
import quadmean.design.Design;

/**
 * Which trees get a height: a fixed step through the trees of each species, from a start that nobody chose.
 *
 * @param every k: every k-th tree of a species
 * @param first the first tree of each species that is measured, 1 to k
 * @param minHeights heights that a species needs for a curve of its own
 * @param seed the seed that the start was drawn with
 */
public record HeightSubsample(int every, int first, int minHeights, long seed) {
    static HeightSubsample of(Design design) {
        int every = design.sheets().heightEvery();
        int first = 1 + new SplittableRandom(design.seed()).nextInt(every);
        return new HeightSubsample(every, first, design.height().minHeights(), design.seed());
    }
}
