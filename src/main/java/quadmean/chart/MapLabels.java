package quadmean.chart;

import java.util.ArrayList;
import java.util.List;

/** Finds room for the numbers beside the plots: the side where a number covers least of what is drawn already. */
final class MapLabels {
    private static final double LETTER_WIDTH = 0.6;
    private static final double GAP = 8;
    private static final double[][] SIDES = {{1, -1}, {-1, -1}, {1, 1}, {-1, 1}, {1, 0}, {-1, 0}, {0, -1}, {0, 1}};
    private static final double MARK = 6;
    private static final double ON_A_LABEL = 10;
    private static final double ON_A_MARK = 8;
    private static final double ON_A_LINE = 1;
    private static final double OUTSIDE = 20;
    /** Steps along a line at which it is asked whether it runs under a label. */
    private static final int STEPS = 24;

    private final double size;
    private final double height;
    private final List<Box> taken = new ArrayList<>();
    private final List<double[]> marks;
    private final List<double[]> lines;

    /**
     * Labels of a drawing.
     *
     * @param size size of the letters
     * @param height height of the drawing
     * @param marks where plots stand
     * @param lines lines between them, each as x, y, x, y
     */
    MapLabels(double size, double height, List<double[]> marks, List<double[]> lines) {
        this.size = size;
        this.height = height;
        this.marks = List.copyOf(marks);
        this.lines = List.copyOf(lines);
    }

    /** A place for letters: left end of the base line, and the box that they fill. */
    record Box(double left, double top, double right, double bottom) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        boolean holds(double x, double y) {
            return x >= left && x <= right && y >= top && y <= bottom;
        }
    }

    /** What is drawn where a label could come to lie. */
    private record Near(List<Box> taken, List<Box> marks, List<double[]> lines) {}

    /** Takes the best place for a text beside a mark. */
    Box place(String text, double x, double y) {
        double wide = LETTER_WIDTH * size * text.codePointCount(0, text.length());
        Near near = near(x, y, GAP + wide + size);
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double[] side : SIDES) {
            Box box = box(side, x, y, wide);
            double cost = cost(box, near);
            if (best == null || cost < least) {
                least = cost;
                best = box;
            }
        }
        taken.add(java.util.Objects.requireNonNull(best));
        return best;
    }

    /** What meets the square around a mark; its own mark is left out. */
    private Near near(double x, double y, double far) {
        Box around = new Box(x - far, y - far, x + far, y + far);
        return new Near(
                taken.stream().filter(around::meets).toList(),
                marks.stream()
                        .filter(m -> m[0] != x || m[1] != y)
                        .map(m -> new Box(m[0] - MARK, m[1] - MARK, m[0] + MARK, m[1] + MARK))
                        .filter(around::meets)
                        .toList(),
                lines.stream().filter(l -> passes(around, l)).toList());
    }

    /** Whether a line could run through a box. */
    private static boolean passes(Box box, double[] line) {
        return Math.max(line[0], line[2]) >= box.left
                && Math.min(line[0], line[2]) <= box.right
                && Math.max(line[1], line[3]) >= box.top
                && Math.min(line[1], line[3]) <= box.bottom;
    }

    private Box box(double[] side, double x, double y, double wide) {
        double middle = x + side[0] * (GAP + wide / 2);
        // beside the mark the letters are centred on it; above and below they stay clear of it
        double centre = y + side[1] * (side[0] == 0 ? GAP + size / 2 : GAP * 1.2);
        return new Box(middle - wide / 2, centre - size * 0.42, middle + wide / 2, centre + size * 0.42);
    }

    private double cost(Box box, Near near) {
        double cost = ON_A_LABEL * near.taken.stream().filter(box::meets).count()
                + ON_A_MARK * near.marks.stream().filter(box::meets).count();
        for (double[] line : near.lines) {
            cost += ON_A_LINE * share(box, line);
        }
        boolean out = box.left < 0 || box.right > MapFrame.WIDTH || box.top < 0 || box.bottom > height;
        return cost + (out ? OUTSIDE : 0);
    }

    /** Whether a line runs under a box: 1 if it does. */
    private static int share(Box box, double[] line) {
        for (int i = 0; i <= STEPS; i++) {
            double t = (double) i / STEPS;
            if (box.holds(line[0] + t * (line[2] - line[0]), line[1] + t * (line[3] - line[1]))) {
                return 1;
            }
        }
        return 0;
    }
}
