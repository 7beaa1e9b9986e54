package quadmean.layout;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Shortens a closed walk: turns pieces around (2-opt) and moves pieces of up to three places (or-opt) as long as that gains.
 * Only ways to the nearest places are tried, and a place is looked at again only after something about it changed. Place 0
 * stays first.
 */
final class WalkImprover {
    private static final int NEAREST = 40;
    private static final int LONGEST_PIECE = 3;
    private static final double GAIN = 1e-9;

    private final List<Coordinate> places;
    private final int[][] near;
    private int[] order = {};
    private int[] position = {};

    WalkImprover(List<Coordinate> places) {
        this.places = places;
        this.near = new int[places.size()][];
    }

    /**
     * A walk that is not longer, but for rounding.
     *
     * @param from all places in the order they are walked, 0 first
     */
    int[] improved(int[] from) {
        order = from.clone();
        position = new int[places.size()];
        settle(0, order.length - 1);
        Deque<Integer> todo = new ArrayDeque<>();
        boolean[] waits = new boolean[places.size()];
        for (int place : order) {
            todo.add(place);
            waits[place] = true;
        }
        while (!todo.isEmpty()) {
            int place = todo.remove();
            waits[place] = false;
            int[] touched = turn(place);
            if (touched.length == 0) {
                touched = move(place);
            }
            for (int t : touched) {
                if (!waits[t]) {
                    todo.add(t);
                    waits[t] = true;
                }
            }
        }
        return order;
    }

    /** Turns around the piece between a place and one of the nearest; gives the places whose ways changed. */
    private int[] turn(int a) {
        for (int step : new int[] {1, -1}) {
            int b = beside(a, step);
            double ab = distance(a, b);
            for (int c : near(a)) {
                double ac = distance(a, c);
                if (ac >= ab) {
                    break;
                }
                int d = beside(c, step);
                if (ab + distance(c, d) - ac - distance(b, d) > GAIN) {
                    int low = Math.min(position[a], position[c]);
                    int high = Math.max(position[a], position[c]);
                    turnBetween(low, high, step);
                    return new int[] {a, b, c, d};
                }
            }
        }
        return new int[0];
    }

    private void turnBetween(int low, int high, int step) {
        if (step > 0) {
            reverse(low + 1, high);
        } else if (low > 0) {
            reverse(low, high - 1);
        } else {
            reverse(high, order.length - 1);
        }
    }

    /** Moves a piece that ends in a place next to one of the nearest; gives the places whose ways changed. */
    private int[] move(int a) {
        for (int size = 1; size <= LONGEST_PIECE; size++) {
            for (int first : size == 1 ? new int[] {position[a]} : new int[] {position[a], position[a] - size + 1}) {
                if (first >= 1 && first + size <= order.length) {
                    int[] touched = move(a, first, size);
                    if (touched.length > 0) {
                        return touched;
                    }
                }
            }
        }
        return new int[0];
    }

    private int[] move(int a, int first, int size) {
        int last = first + size - 1;
        int other = order[first] == a ? order[last] : order[first];
        int before = order[first - 1];
        int after = order[(last + 1) % order.length];
        double freed = distance(before, order[first]) + distance(order[last], after) - distance(before, after);
        for (int c : near(a)) {
            double ac = distance(a, c);
            if (ac >= freed) {
                break;
            }
            if (position[c] >= first && position[c] <= last) {
                continue;
            }
            for (int step : new int[] {1, -1}) {
                int d = beside(c, step);
                boolean isPiece = position[d] >= first && position[d] <= last;
                if (!isPiece && freed + distance(c, d) - ac - distance(other, d) > GAIN) {
                    // after c the piece starts with a, before c it ends with a
                    boolean turned = (order[first] == a) != (step > 0) && size > 1;
                    shift(first, size, position[step > 0 ? c : d], turned);
                    return new int[] {a, other, before, after, c, d};
                }
            }
        }
        return new int[0];
    }

    /** Puts the piece behind the place at {@code to}, which is a rotation of what lies between. */
    private void shift(int first, int size, int to, boolean turned) {
        if (turned) {
            reverse(first, first + size - 1);
        }
        int from = to < first ? to + 1 : first;
        int end = to < first ? first + size - 1 : to;
        int split = to < first ? first - 1 : first + size - 1;
        reverse(from, split);
        reverse(split + 1, end);
        reverse(from, end);
        // three turns put the two pieces in each other's place, each the way round it was
    }

    private void reverse(int i, int j) {
        int a = i;
        int b = j;
        while (a < b) {
            int kept = order[a];
            order[a++] = order[b];
            order[b--] = kept;
        }
        settle(i, j);
    }

    private void settle(int i, int j) {
        for (int k = i; k <= j; k++) {
            position[order[k]] = k;
        }
    }

    private int beside(int place, int step) {
        return order[Math.floorMod(position[place] + step, order.length)];
    }

    /** The nearest places, the nearest first. */
    private int[] near(int place) {
        if (near[place] == null) {
            near[place] = nearest(place);
        }
        return near[place];
    }

    private int[] nearest(int place) {
        int[] found = new int[Math.min(NEAREST, places.size() - 1)];
        double[] away = new double[found.length];
        int n = 0;
        for (int other = 0; other < places.size(); other++) {
            double east = places.get(other).x - places.get(place).x;
            double north = places.get(other).y - places.get(place).y;
            double square = east * east + north * north;
            if (other == place || (n == found.length && square >= away[n - 1])) {
                continue;
            }
            int at = n < found.length ? n++ : n - 1;
            for (; at > 0 && square < away[at - 1]; at--) {
                found[at] = found[at - 1];
                away[at] = away[at - 1];
            }
            found[at] = other;
            away[at] = square;
        }
        return found;
    }

    private double distance(int a, int b) {
        return places.get(a).distance(places.get(b));
    }
}
