package quadmean.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;

/** Orders in which places are walked from a start and back to it. Place 0 is the start, and stays first. */
final class WalkOrder {
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

    /** A walk of some of the places, the start first, in an order that is not longer. */
    int[] improved(int[] from) {
        List<Coordinate> some = Arrays.stream(from).mapToObj(places::get).toList();
        int[] kept = IntStream.range(0, from.length).toArray();
        int[] order = Arrays.stream(new WalkImprover(some).improved(kept))
                .map(i -> from[i])
                .toArray();
        return length(order) <= length(from) ? order : from.clone();
    }

    double distance(int a, int b) {
        return places.get(a).distance(places.get(b));
    }
}
