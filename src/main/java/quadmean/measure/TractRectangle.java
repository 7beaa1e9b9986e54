package quadmean.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * A rectangular tract from (0, 0) on, and how often a tree counts on a plot that reaches over its edge.
 *
 * @param width extent along x (m), above 0
 * @param height extent along y (m), above 0
 */
public record TractRectangle(double width, double height) {

    /** @throws IllegalArgumentException if an extent is not above zero */
    public TractRectangle {
        Checks.positive(width, "the width of the tract");
        Checks.positive(height, "the height of the tract");
    }

    /** Which reflected centres are run. */
    public enum Images {
        /** Those beyond the four edges. */
        EDGES,
        /** Those beyond the four corners as well: needed for exactness (by algebra). */
        EDGES_AND_CORNERS
    }

    /** Whether a place lies on the tract, its line included. */
    public boolean holds(double x, double y) {
        return x >= 0 && x <= width && y >= 0 && y <= height;
    }

    /**
     * Mirage (Schmid 1969; Beers 1977; from memory): the number of centres, the point itself and its images, from which a tree is
     * within its limit. The plot must be smaller than the tract.
     *
     * @param x place of the point (m), inside
     * @param y the same
     * @param treeX place of the tree (m), inside
     * @param treeY the same
     * @param limit distance up to which the tree is in (m), less than both extents
     * @return times that the tree counts, 0 if it is out
     */
    public int mirage(double x, double y, double treeX, double treeY, double limit, Images images) {
        if (!(limit < Math.min(width, height))) {
            throw new IllegalArgumentException(
                    "the limiting distance must be less than the tract is wide, got " + limit);
        }
        if (Math.hypot(treeX - x, treeY - y) > limit) {
            return 0;
        }
        List<double[]> centres = new ArrayList<>();
        for (double imageX : new double[] {x, -x, 2 * width - x}) {
            for (double imageY : new double[] {y, -y, 2 * height - y}) {
                boolean corner = imageX != x && imageY != y;
                if (!corner || images == Images.EDGES_AND_CORNERS) {
                    centres.add(new double[] {imageX, imageY});
                }
            }
        }
        return (int) centres.stream()
                .filter(c -> Math.hypot(treeX - c[0], treeY - c[1]) <= limit)
                .count();
    }

    /**
     * Walkthrough (Ducey, Gove and Valentine 2004, from memory): as far beyond the tree as it stands from the point, on the same line;
     * the tree counts twice if that place lies outside.
     *
     * @return times that the tree counts, 0 if it is out
     */
    public int walkthrough(double x, double y, double treeX, double treeY, double limit) {
        if (Math.hypot(treeX - x, treeY - y) > limit) {
            return 0;
        }
        return holds(2 * treeX - x, 2 * treeY - y) ? 1 : 2;
    }
}
