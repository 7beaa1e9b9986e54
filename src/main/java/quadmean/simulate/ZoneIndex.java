package quadmean.simulate;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import quadmean.model.MappedTree;

/**
 * Which trees a place may be within reach of: the ground is cut into square cells, and each cell knows the trees whose circles of reach
 * touch it. A look-up costs one cell, whatever the number of trees.
 */
final class ZoneIndex {
    private static final double MOST_CELLS = 250_000;

    private final double minX;
    private final double minY;
    private final double cell;
    private final int columns;
    private final int rows;
    private final int[] start;
    private final int[] trees;

    /**
     * An index.
     *
     * @param reach reach of each tree (m); 0 for one that no plot reaches
     * @param box the ground
     */
    ZoneIndex(List<MappedTree> forest, double[] reach, Envelope box) {
        this.minX = box.getMinX();
        this.minY = box.getMinY();
        double middle = Arrays.stream(reach).filter(r -> r > 0).average().orElse(box.getWidth());
        this.cell = Math.max(middle / 2, Math.sqrt(box.getArea() / MOST_CELLS));
        this.columns = 1 + (int) (box.getWidth() / cell);
        this.rows = 1 + (int) (box.getHeight() / cell);
        this.start = new int[columns * rows + 1];
        int[] fill = new int[columns * rows];
        each(forest, reach, (c, tree) -> start[c + 1]++);
        for (int c = 0; c < fill.length; c++) {
            start[c + 1] += start[c];
            fill[c] = start[c];
        }
        this.trees = new int[start[fill.length]];
        each(forest, reach, (c, tree) -> trees[fill[c]++] = tree);
    }

    private interface Entry {
        void put(int cell, int tree);
    }

    private void each(List<MappedTree> forest, double[] reach, Entry entry) {
        for (int i = 0; i < reach.length; i++) {
            MappedTree t = forest.get(i);
            double r = reach[i];
            if (r <= 0) {
                continue;
            }
            for (int row = row(t.y() - r); row <= row(t.y() + r); row++) {
                for (int column = column(t.x() - r); column <= column(t.x() + r); column++) {
                    entry.put(row * columns + column, i);
                }
            }
        }
    }

    private int column(double x) {
        return Math.max(0, Math.min(columns - 1, (int) ((x - minX) / cell)));
    }

    private int row(double y) {
        return Math.max(0, Math.min(rows - 1, (int) ((y - minY) / cell)));
    }

    /** The cell of a place on the ground. */
    int cellAt(double x, double y) {
        return row(y) * columns + column(x);
    }

    /** Where the trees of a cell begin in {@link #tree}. */
    int from(int cell) {
        return start[cell];
    }

    /** Where they end. */
    int to(int cell) {
        return start[cell + 1];
    }

    /** The tree at a place of the list, in the order of the forest within each cell. */
    int tree(int at) {
        return trees[at];
    }
}
