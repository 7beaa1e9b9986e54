package quadmean.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import quadmean.design.LayoutSettings.Walking;

/** Parts a walk into days: each takes plots as long as they, the walk and the way back fit into its hours. */
final class DayLoads {
    private static final double ROUNDING = 1e-9;

    private final WalkOrder places;
    private final Walking walking;

    DayLoads(WalkOrder places, Walking walking) {
        this.places = places;
        this.walking = walking;
    }

    /**
     * Days of a walk.
     *
     * @param days plots of each day
     * @param lengthM length of all days (m)
     * @param tooLong hours of the days that cannot hold their one plot
     */
    record Split(List<List<Integer>> days, double lengthM, List<Double> tooLong) {}

    /** The days of an order, or of its reverse where they are shorter together. */
    Split shorter(int[] order) {
        List<Integer> plots = new ArrayList<>(Route.plots(order));
        Split forward = split(plots);
        Collections.reverse(plots);
        Split backward = split(plots);
        return forward.lengthM() <= backward.lengthM() ? forward : backward;
    }

    private Split split(List<Integer> plots) {
        List<List<Integer>> days = new ArrayList<>();
        List<Integer> today = new ArrayList<>();
        double there = 0;
        for (int plot : plots) {
            int before = today.isEmpty() ? 0 : today.get(today.size() - 1) + 1;
            double on = there + places.distance(before, plot + 1);
            if (!today.isEmpty() && hours(on + places.distance(plot + 1, 0), today.size() + 1) > longest()) {
                days.add(today);
                today = new ArrayList<>();
                on = places.distance(0, plot + 1);
            }
            today.add(plot);
            there = on;
        }
        days.add(today);
        return of(days);
    }

    /** The same plots each day, in an order that is not longer. */
    Split improved(Split split) {
        return of(split.days().stream().map(this::improved).toList());
    }

    private Split of(List<List<Integer>> days) {
        return new Split(
                days,
                days.stream().mapToDouble(this::length).sum(),
                days.stream().map(this::hours).filter(h -> h > longest()).toList());
    }

    private List<Integer> improved(List<Integer> day) {
        int[] walk = IntStream.concat(IntStream.of(0), day.stream().mapToInt(p -> p + 1))
                .toArray();
        return Route.plots(places.improved(walk));
    }

    private double length(List<Integer> day) {
        double length = 0;
        int at = 0;
        for (int plot : day) {
            length += places.distance(at, plot + 1);
            at = plot + 1;
        }
        return length + places.distance(at, 0);
    }

    private double hours(List<Integer> day) {
        return hours(length(day), day.size());
    }

    private double hours(double walkM, int plots) {
        return walkM / walking.metresPerHour() + plots * walking.plotHours();
    }

    private double longest() {
        return walking.dayHours() + ROUNDING;
    }
}
