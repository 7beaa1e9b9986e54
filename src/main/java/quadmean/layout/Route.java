package quadmean.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import quadmean.design.LayoutSettings.Walking;

/**
 * How plots are walked, day by day, each day from the start and back to it.
 *
 * @param days plots of each day, as places in the list of plots, in the order they are walked
 * @param lengthM horizontal length of all days (m)
 * @param serpentineM the same for the serpentine, never shorter (m)
 * @param notes what a reader should know, in sentences
 */
public record Route(List<List<Integer>> days, double lengthM, double serpentineM, List<String> notes) {
    public Route {
        days = days.stream().map(List::copyOf).toList();
        notes = List.copyOf(notes);
    }

    /**
     * A short walk: the serpentine and the walk to the nearest, both improved, parted into days and each day improved again;
     * of all these the one that is shortest with its ways to and from each day's work.
     *
     * @param plots the plots (m)
     * @param start where each day starts and ends (m)
     * @param walking pace and times
     * @param stripM width of the strips of the serpentine (m)
     * @param degrees their direction, clockwise from the grid's north
     */
    public static Route of(List<Coordinate> plots, Coordinate start, Walking walking, double stripM, double degrees) {
        if (plots.isEmpty()) {
            return new Route(List.of(), 0, 0, List.of());
        }
        List<Coordinate> places = new ArrayList<>(List.of(start));
        places.addAll(plots);
        WalkOrder orders = new WalkOrder(places);
        DayLoads loads = new DayLoads(orders, walking);
        int[] serpentine = orders.serpentine(stripM, degrees);
        double plain = loads.shorter(serpentine).lengthM();
        DayLoads.Split best = Stream.of(serpentine, orders.improved(serpentine), orders.improved(orders.nearestFirst()))
                .map(loads::shorter)
                .map(loads::improved)
                .min(Comparator.comparingDouble(DayLoads.Split::lengthM))
                .orElseThrow();
        List<String> notes = new ArrayList<>();
        best.tooLong()
                .forEach(hours -> notes.add(String.format(
                        Locale.ROOT,
                        "A day of %.1f h cannot hold the way to one plot, the work there and the way back, %.1f h; it has a day of its"
                                + " own. Start nearer, or make the day longer.",
                        walking.dayHours(),
                        hours)));
        return new Route(best.days(), best.lengthM(), plain, notes);
    }

    /**
     * Walks one after the other: places of each are those of its own list, as the lists name them among all plots.
     *
     * @param walks the walks, one or more
     * @param places for each walk the plots that its places stand for
     */
    static Route joined(List<Route> walks, List<List<Integer>> places) {
        List<List<Integer>> days = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (int k = 0; k < walks.size(); k++) {
            List<Integer> own = places.get(k);
            walks.get(k).days().forEach(d -> days.add(d.stream().map(own::get).toList()));
            notes.addAll(walks.get(k).notes());
        }
        return new Route(
                days,
                walks.stream().mapToDouble(Route::lengthM).sum(),
                walks.stream().mapToDouble(Route::serpentineM).sum(),
                notes);
    }

    /** The plots in the order they are walked. */
    public List<Integer> order() {
        return days.stream().flatMap(List::stream).toList();
    }

    static List<Integer> plots(int[] order) {
        return Arrays.stream(order).skip(1).mapToObj(i -> i - 1).toList();
    }
}
