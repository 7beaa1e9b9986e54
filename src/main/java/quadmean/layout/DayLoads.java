package quadmean.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
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
        for (int plot : plots) {
            today.add(plot);
            if (today.size() > 1 && hours(today) > walking.dayHours() + ROUNDING) {
                today.remove(today.size() - 1);
                days.add(today);
                today = new ArrayList<>(List.of(plot));
            }
        }
        days.add(today);
        return new Split(
                days,
                days.stream().mapToDouble(this::length).sum(),
                days.stream()
                        .map(this::hours)
                        .filter(h -> h > walking.dayHours() + ROUNDING)
                        .toList());
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
        return length(day) / walking.metresPerHour() + day.size() * walking.plotHours();
    }
}
