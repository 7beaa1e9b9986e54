package quadmean.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.geom.util.PolygonExtracter;
import quadmean.design.LayoutSettings.Walking;
import quadmean.measure.Slope;

/** Makes what the sheets show of a layout and its walk. */
final class SheetMaker {
    private static final String START = "start";

    private final Tract tract;
    private final Layout layout;
    private final Walking walking;
    private final Coordinate start;
    private final WayFinder ways;

    SheetMaker(Tract tract, Layout layout, Walking walking, Coordinate start) {
        this.tract = tract;
        this.layout = layout;
        this.walking = walking;
        this.start = start;
        this.ways = new WayFinder(tract.outline());
    }

    /** Plots are numbered from 1 as they are walked. */
    SheetSet set(Route route, OptionalInt asked) {
        List<SheetPlot> plots = new ArrayList<>();
        for (int i : route.order()) {
            plots.add(plot(Integer.toString(plots.size() + 1), layout.plots().get(i)));
        }
        List<SheetRoute.Leg> legs = new ArrayList<>();
        List<SheetRoute.Day> days = new ArrayList<>();
        int number = 0;
        for (List<Integer> today : route.days()) {
            int day = days.size() + 1;
            int first = legs.size();
            Coordinate at = start;
            String name = START;
            List<String> ground = List.of();
            for (int i : today) {
                LaidPlot plot = layout.plots().get(i);
                Coordinate next = plot.at();
                String to = Integer.toString(++number);
                List<String> ends = new ArrayList<>(ground);
                ends.add(plot.stratum());
                legs.add(leg(day, name, to, at, next, ends));
                ground = List.of(plot.stratum());
                at = next;
                name = to;
            }
            legs.add(leg(day, name, START, at, start, ground));
            double walk = legs.subList(first, legs.size()).stream()
                    .mapToDouble(SheetRoute.Leg::horizontalM)
                    .sum();
            days.add(new SheetRoute.Day(
                    day, today.size(), walk, walk / walking.metresPerHour() + today.size() * walking.plotHours()));
        }
        return new SheetSet(asked, plots, new SheetRoute(place(start), START, legs, days), List.of());
    }

    private SheetPlot plot(String number, LaidPlot plot) {
        return new SheetPlot(
                number,
                plot.stratum(),
                place(plot.at()),
                plot.row(),
                plot.column(),
                plot.cluster().isPresent() ? Integer.toString(plot.cluster().getAsInt()) : "",
                plot.edge(),
                plot.lineM(),
                plot.subset() > 0 ? Integer.toString(plot.subset()) : "");
    }

    private SheetRoute.Leg leg(int day, String from, String to, Coordinate a, Coordinate b, List<String> strata) {
        Course course = tract.grid().course(a, b);
        double magnetic = walking.declinationDegrees().isPresent()
                ? compass(course.bearingDegrees(), walking.declinationDegrees().getAsDouble())
                : Double.NaN;
        return new SheetRoute.Leg(
                day,
                from,
                to,
                course.bearingDegrees(),
                magnetic,
                course.distanceMetres(),
                ground(course.distanceMetres(), strata),
                ways.way(a, b));
    }

    /** Length along the ground, half of it on the slope of the stratum at either end; the start has that of the plot. */
    private double ground(double horizontalM, List<String> strata) {
        return strata.stream()
                .mapToDouble(stratum -> {
                    OptionalDouble slope = walking.slopes().in(stratum);
                    return slope.isEmpty()
                            ? Double.NaN
                            : new Slope(slope.getAsDouble() / 100).along(horizontalM / strata.size());
                })
                .sum();
    }

    /** Bearing from magnetic north: the true one less the declination, which is positive to the east. */
    static double compass(double trueDegrees, double declination) {
        double turned = (trueDegrees - declination) % 360;
        return turned < 0 ? turned + 360 : turned;
    }

    private SheetPlace place(Coordinate at) {
        Coordinate globe = tract.grid().lonLat(at).orElse(new Coordinate(Double.NaN, Double.NaN));
        return new SheetPlace(globe.x, globe.y, at.x, at.y);
    }

    /** The outlines of polygons and of their holes. */
    static List<List<SheetArea.Corner>> rings(Geometry shape) {
        List<List<SheetArea.Corner>> rings = new ArrayList<>();
        for (Object polygon : PolygonExtracter.getPolygons(shape)) {
            for (Object line : LinearComponentExtracter.getLines((Polygon) polygon)) {
                rings.add(Arrays.stream(((Geometry) line).getCoordinates())
                        .map(c -> new SheetArea.Corner(c.x, c.y))
                        .toList());
            }
        }
        return rings;
    }
}
