package quadmean.height;

import java.util.Random;

/**
 * Adds to heights from curves a draw of the scatter about the curve, so that heights spread as they do in the stand.
 * Each tree has its own stream of random numbers, from the seed and its place in the tally: what is drawn for it does not
 * depend on other trees.
 *
 * @param seed seed of the draws
 */
public record ResidualDraw(long seed) {
    /** Odd 64-bit constants, which spread neighbouring seeds; any odd numbers would do. */
    private static final long SPREAD_ROW = 0x9E3779B97F4A7C15L;

    private static final long SPREAD_FILE = 0xC2B2AE3D27D4EB4FL;

    /** A drawn height falls no lower than this share of the curve's: common practice, no source. */
    private static final double LEAST_SHARE = 0.1;

    /** The tree with a drawn height, normal about its curve; heights from the field are left alone. */
    public HeightedTree apply(HeightedTree t) {
        if (!(t.scatterSdM() > 0)) {
            return t;
        }
        long place = seed
                + SPREAD_ROW * t.tree().row()
                + SPREAD_FILE * t.tree().file().hashCode();
        Random random = new Random(place);
        random.nextDouble(); // the first number of near seeds is alike
        double drawn = t.heightM() + t.scatterSdM() * random.nextGaussian();
        double height = Math.max(drawn, LEAST_SHARE * t.heightM());
        return new HeightedTree(t.tree(), height, t.source(), t.curveSeM(), 0, t.reach());
    }
}
