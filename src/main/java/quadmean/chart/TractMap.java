package quadmean.chart;

import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import quadmean.units.UnitSystem;

/**
 * What is drawn on the map of a tract. Coordinates are metres on a plane, x toward east and y toward north.
 *
 * @param areas strata, or the tract alone
 * @param plots plots
 * @param walks how they are walked, one for each day
 * @param start where the walks start; its name is written beside it
 * @param units what the scale bar counts in
 * @param seed what laid the plots out; empty if nothing did
 */
public record TractMap(
        List<Area> areas, List<Site> plots, List<Walk> walks, Site start, UnitSystem units, OptionalLong seed) {
    /** A map of plots that are there already. */
    TractMap(List<Area> areas, List<Site> plots, List<Walk> walks, Site start, UnitSystem units) {
        this(areas, plots, walks, start, units, OptionalLong.empty());
    }

    public TractMap {
        areas = List.copyOf(areas);
        plots = List.copyOf(plots);
        walks = List.copyOf(walks);
    }

    /**
     * A place.
     *
     * @param x metres toward east
     * @param y metres toward north
     */
    public record Point(double x, double y) {}

    /**
     * A stratum.
     *
     * @param name name for people
     * @param rings outlines of its parts and of the holes in them, in any order and direction
     */
    public record Area(String name, List<List<Point>> rings) {
        public Area {
            rings = rings.stream().map(List::copyOf).toList();
        }
    }

    /**
     * A plot, or the start.
     *
     * @param name what is written beside it
     * @param at where it is
     * @param marks what is special about it
     */
    public record Site(String name, Point at, Set<Mark> marks) {
        public Site {
            marks = Set.copyOf(marks);
        }
    }

    /** What can be special about a plot. */
    public enum Mark {
        /** It reaches over the line of the tract or lies so near that it may. */
        NEAR_EDGE
    }

    /**
     * The walk of a day.
     *
     * @param day day, from 1
     * @param points places that it passes, in their order
     */
    public record Walk(int day, List<Point> points) {
        public Walk {
            points = List.copyOf(points);
        }
    }

    /** Every place on the map. */
    Stream<Point> points() {
        return Stream.of(
                        areas.stream().flatMap(a -> a.rings().stream()).flatMap(List::stream),
                        plots.stream().map(Site::at),
                        walks.stream().flatMap(w -> w.points().stream()),
                        Stream.of(start.at()))
                .flatMap(s -> s);
    }

    /** Length of all walks (m). */
    double walkM() {
        double length = 0;
        for (Walk walk : walks) {
            for (int i = 1; i < walk.points().size(); i++) {
                Point a = walk.points().get(i - 1);
                Point b = walk.points().get(i);
                length += Math.hypot(b.x() - a.x(), b.y() - a.y());
            }
        }
        return length;
    }
}
