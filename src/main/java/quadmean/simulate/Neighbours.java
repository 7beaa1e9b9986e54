package quadmean.simulate;

import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;

/** Places so far, in cells so small that each holds one at the most, where no two are nearer than a distance. */
final class Neighbours {
    private static final double MOST_CELLS = 40_000_000;
    private final double minX;
    private final double minY;
    private final double distance;
    private final double cell;
    private final int columns;
    private final int rows;
    private final double[] @Nullable [] places;

    Neighbours(Envelope box, double distance) {
        this.minX = box.getMinX();
        this.minY = box.getMinY();
        this.distance = distance;
        this.cell = Math.max(distance / Math.sqrt(2), Math.sqrt(box.getArea() / MOST_CELLS));
        this.columns = 1 + (int) (box.getWidth() / cell);
        this.rows = 1 + (int) (box.getHeight() / cell);
        this.places = new double[columns * rows][];
    }

    boolean isNear(double[] at) {
        int column = (int) ((at[0] - minX) / cell);
        int row = (int) ((at[1] - minY) / cell);
        for (int r = Math.max(0, row - 2); r <= Math.min(rows - 1, row + 2); r++) {
            for (int c = Math.max(0, column - 2); c <= Math.min(columns - 1, column + 2); c++) {
                double[] other = places[r * columns + c];
                if (other != null && Math.hypot(at[0] - other[0], at[1] - other[1]) < distance) {
                    return true;
                }
            }
        }
        return false;
    }

    void add(double[] at) {
        int column = (int) ((at[0] - minX) / cell);
        int row = (int) ((at[1] - minY) / cell);
        places[row * columns + column] = at;
    }
}
