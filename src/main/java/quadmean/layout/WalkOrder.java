package quadmean.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;

/** Orders in which places are walked from a start and back to it. Place 0 is the start, and stays first. */
final class WalkOrder {
    /** Rounds of improvement after which a walk of very many places is left as it is. */
    private static final int ROUNDS = 200;

    private static final int LONGEST_PIECE = 3;
    private static final double GAIN = 1e-9;

    private final List<Coordinate> places;

    /** @param places the start, then the plots */
    WalkOrder(List<Coordinate> places) {
        this.places = places;
    }

    /** Length of the closed walk. */
    double length(int[] order) {
        double length = 0;
        for (int i = 0; i < order.length; i++) {
            length += distance(order[i], order[(i + 1) % order.length]);
        }
        return length;
    }

    /** The shortest serpentine: strip by strip, up one and down the next, from any of the four corners. */
    int[] serpentine(double widthM, double degrees) {
        double sin = Math.sin(Math.toRadians(degrees));
        double cos = Math.cos(Math.toRadians(degrees));
        TreeMap<Long, List<Integer>> strips = new TreeMap<>();
        double first = Double.POSITIVE_INFINITY;
        for (int i = 1; i < places.size(); i++) {
            first = Math.min(first, places.get(i).x * cos - places.get(i).y * sin);
        }
        for (int i = 1; i < places.size(); i++) {
            double across = places.get(i).x * cos - places.get(i).y * sin - first;
            strips.computeIfAbsent((long) Math.floor(across / widthM + 0.5), k -> new ArrayList<>())
                    .add(i);
        }
        strips.values()
                .forEach(s -> s.sort(Comparator.comparingDouble(i -> places.get(i).x * sin + places.get(i).y * cos)));
        int[] up = joined(strips.values(), 0);
        int[] down = joined(strips.values(), 1);
        return length(up) <= length(down) ? up : down;
    }

    private int[] joined(Iterable<List<Integer>> strips, int turned) {
        List<Integer> order = new ArrayList<>(List.of(0));
        int strip = turned;
        for (List<Integer> s : strips) {
            List<Integer> piece = new ArrayList<>(s);
            if (strip++ % 2 == 1) {
                Collections.reverse(piece);
            }
            order.addAll(piece);
        }
        return order.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Always on to the nearest place not yet seen. */
    int[] nearestFirst() {
        int[] order = new int[places.size()];
        boolean[] seen = new boolean[places.size()];
        seen[0] = true;
        for (int i = 1; i < order.length; i++) {
            int best = -1;
            for (int j = 1; j < order.length; j++) {
                if (!seen[j] && (best < 0 || distance(order[i - 1], j) < distance(order[i - 1], best))) {
                    best = j;
                }
            }
            order[i] = best;
            seen[best] = true;
        }
        return order;
    }

    /** Turns pieces around (2-opt) and moves pieces of up to three places (or-opt) as long as the walk gets shorter. */
    int[] improved(int[] from) {
        int[] order = from.clone();
        for (int round = 0; round < ROUNDS; round++) {
            boolean turned = turnPieces(order);
            boolean moved = movePieces(order);
            if (!turned && !moved) {
                break;
            }
        }
        return length(order) <= length(from) ? order : from.clone();
    }

    private boolean turnPieces(int[] order) {
        boolean better = false;
        int n = order.length;
        for (int i = 1; i < n - 1; i++) {
            for (int j = i + 1; j < n; j++) {
                int after = order[(j + 1) % n];
                double gain = distance(order[i - 1], order[i])
                        + distance(order[j], after)
                        - distance(order[i - 1], order[j])
                        - distance(order[i], after);
                if (gain > GAIN) {
                    reverse(order, i, j);
                    better = true;
                }
            }
        }
        return better;
    }

    private boolean movePieces(int[] order) {
        boolean better = false;
        for (int size = 1; size <= LONGEST_PIECE; size++) {
            for (int i = 1; i + size <= order.length; i++) {
                better |= movePiece(order, i, size);
            }
        }
        return better;
    }

    /** Puts the piece between two other places, either way round, where that gains most. */
    private boolean movePiece(int[] order, int i, int size) {
        int n = order.length;
        int head = order[i];
        int tail = order[i + size - 1];
        int after = order[(i + size) % n];
        double freed = distance(order[i - 1], head) + distance(tail, after) - distance(order[i - 1], after);
        double best = GAIN;
        int place = -1;
        boolean turn = false;
        for (int k = 0; k < n; k++) {
            if (k >= i - 1 && k < i + size) {
                continue;
            }
            int a = order[k];
            int b = order[(k + 1) % n];
            double straight = freed + distance(a, b) - distance(a, head) - distance(tail, b);
            double turned = freed + distance(a, b) - distance(a, tail) - distance(head, b);
            if (Math.max(straight, turned) > best) {
                best = Math.max(straight, turned);
                place = k;
                turn = turned > straight;
            }
        }
        if (place < 0) {
            return false;
        }
        if (turn) {
            reverse(order, i, i + size - 1);
        }
        // a move is a rotation of what lies between the old place and the new
        if (place < i) {
            rotate(order, place + 1, i + size, i - place - 1);
        } else {
            rotate(order, i, place + 1, size);
        }
        return true;
    }

    private static void rotate(int[] order, int from, int to, int by) {
        reverse(order, from, from + by - 1);
        reverse(order, from + by, to - 1);
        reverse(order, from, to - 1);
    }

    private static void reverse(int[] order, int i, int j) {
        int a = i;
        int b = j;
        while (a < b) {
            int kept = order[a];
            order[a++] = order[b];
            order[b--] = kept;
        }
    }

    double distance(int a, int b) {
        return places.get(a).distance(places.get(b));
    }
}
