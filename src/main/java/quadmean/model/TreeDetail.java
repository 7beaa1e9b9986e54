package quadmean.model;

import java.util.OptionalDouble;

/**
 * What a tally may say of a tree besides species, dbh and height.
 *
 * @param count number of trees that the row stands for, 1 or more
 * @param status whether it lives and is sound
 * @param top whether its height goes to the tip or to a break
 * @param logs number of 16-ft logs, if counted
 * @param merchantableM height to the merchantable top (m), if taken
 * @param grade grade as written, empty if none was given
 * @param defect share of the wood that is no good, in [0, 1]
 * @param edge number of times that it counts, for what its plot misses beyond the boundary; 1 or more
 * @param prediction what 3P sampling foretold of it, in whatever unit; 0 if nothing
 * @param distanceM horizontal distance from the plot centre or point (m), if measured
 * @param reach its distance from the centre over the farthest at which it is in; NaN if the distance was not taken
 */
public record TreeDetail(
        int count,
        TreeStatus status,
        Top top,
        OptionalDouble logs,
        OptionalDouble merchantableM,
        String grade,
        double defect,
        int edge,
        double prediction,
        OptionalDouble distanceM,
        double reach) {
    /** One living tree with its top on, and nothing more known. */
    public static final TreeDetail PLAIN = new TreeDetail(
            1,
            TreeStatus.LIVE,
            Top.WHOLE,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "",
            0,
            1,
            0,
            OptionalDouble.empty(),
            Double.NaN);

    public TreeDetail {
        if (count < 1) {
            throw new IllegalArgumentException("a row stands for one tree or more, got " + count);
        }
        if (edge < 1) {
            throw new IllegalArgumentException("a tree counts once or more, got " + edge);
        }
        if (!(defect >= 0 && defect <= 1)) {
            throw new IllegalArgumentException("the share of defect must lie in [0, 1], got " + defect);
        }
    }

    /** The same at a distance from the centre, as a share of the farthest at which it is in. */
    public TreeDetail withReach(double share) {
        return new TreeDetail(
                count, status, top, logs, merchantableM, grade, defect, edge, prediction, distanceM, share);
    }

    /** Number of times that the row counts: its trees, each as often as the boundary has it. */
    public int times() {
        return count * edge;
    }

    /** The top of a tree. */
    public enum Top {
        WHOLE,
        /** The height goes to the break: it stays with the tree and out of the height curve. */
        BROKEN
    }
}
