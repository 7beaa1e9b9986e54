package quadmean.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A weighted sum of a few neighbouring units that the mean does not touch: its coefficients add up to 0, their squares to 1, so
 * that without any pattern on the ground its square is worth the variance between units.
 *
 * @param units positions in the sample
 * @param coefficients one for each
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
record Contrast(int[] units, double[] coefficients) {
    private static final double HALF = Math.sqrt(0.5);

    double of(double[] values) {
        double sum = 0;
        for (int k = 0; k < units.length; k++) {
            sum += coefficients[k] * values[units[k]];
        }
        return sum;
    }

    /** Half differences of each unit and the next in an order. */
    static List<Contrast> successive(int[] order) {
        return IntStream.range(1, order.length)
                .mapToObj(i -> difference(order[i - 1], order[i]))
                .toList();
    }

    /** Half differences of all pairs next to each other in a row or a column. */
    static List<Contrast> neighbours(List<GridPosition> grid) {
        Map<GridPosition, Integer> at = index(grid);
        List<Contrast> contrasts = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            for (GridPosition next : List.of(grid.get(i).right(), grid.get(i).above())) {
                Integer j = at.get(next);
                if (j != null) {
                    contrasts.add(difference(i, j));
                }
            }
        }
        return contrasts;
    }

    /** (a - b - c + d)/2 for every square of four units; overlapping, and left out where a unit is missing. */
    static List<Contrast> blocks(List<GridPosition> grid) {
        Map<GridPosition, Integer> at = index(grid);
        List<Contrast> contrasts = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            GridPosition own = grid.get(i);
            Integer right = at.get(own.right());
            Integer above = at.get(own.above());
            Integer across = at.get(own.right().above());
            if (right != null && above != null && across != null) {
                contrasts.add(new Contrast(new int[] {i, right, above, across}, new double[] {0.5, -0.5, -0.5, 0.5}));
            }
        }
        return contrasts;
    }

    /** Row by row, to and fro, so that the next unit is a neighbour. */
    static int[] serpentine(List<GridPosition> grid) {
        return IntStream.range(0, grid.size())
                .boxed()
                .sorted(Comparator.comparingInt((Integer i) -> grid.get(i).row())
                        .thenComparingInt(i -> Math.floorMod(grid.get(i).row(), 2) == 0
                                ? grid.get(i).column()
                                : -grid.get(i).column()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /**
     * Degrees of freedom of the mean of squared contrasts: K²/Σ(c·c')² over all pairs, which matches its first two moments for
     * independent normal values.
     */
    static double degreesOfFreedom(List<Contrast> contrasts) {
        Map<Long, Double> form = new HashMap<>();
        for (Contrast c : contrasts) {
            for (int a = 0; a < c.units.length; a++) {
                for (int b = 0; b < c.units.length; b++) {
                    form.merge(
                            (long) c.units[a] << 32 | c.units[b], c.coefficients[a] * c.coefficients[b], Double::sum);
                }
            }
        }
        double squares =
                Moments.sum(form.values().stream().mapToDouble(v -> v * v).toArray());
        return (double) contrasts.size() * contrasts.size() / squares;
    }

    private static Contrast difference(int i, int j) {
        return new Contrast(new int[] {i, j}, new double[] {HALF, -HALF});
    }

    private static Map<GridPosition, Integer> index(List<GridPosition> grid) {
        Map<GridPosition, Integer> at = new HashMap<>();
        for (int i = 0; i < grid.size(); i++) {
            if (at.put(grid.get(i), i) != null) {
                throw new IllegalArgumentException("two units stand at " + grid.get(i));
            }
        }
        return at;
    }
}
