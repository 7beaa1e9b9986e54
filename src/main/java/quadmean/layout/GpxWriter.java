package quadmean.layout;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Metadata;
import io.jenetics.jpx.Route;
import io.jenetics.jpx.WayPoint;
import java.io.IOException;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Writes plots as GPX 1.1 waypoints, and the walk of each day as a route. No time is written: bytes follow from the plots alone. */
public final class GpxWriter {
    /** A ten-millionth of a degree is about a centimetre. */
    private static final int DIGITS = 7;

    private static final GPX.Writer WRITER = GPX.Writer.of(new GPX.Writer.Indent("  "), DIGITS);

    private GpxWriter() {}

    /**
     * Writes a file.
     *
     * @param name what the file is called inside
     * @param description what it is, with the seed
     * @param plots the plots
     * @param route how they are walked
     * @param out where to; left open
     * @throws IOException if it cannot be written
     * @throws IllegalArgumentException if longitude or latitude of a place is not known, or a leg ends at no plot
     */
    public static void write(String name, String description, List<SheetPlot> plots, SheetRoute route, OutputStream out)
            throws IOException {
        if (!route.start().isOnGlobe()
                || !plots.stream().allMatch(p -> p.place().isOnGlobe())) {
            throw new IllegalArgumentException("GPX takes longitude and latitude, which are not known of all places");
        }
        GPX.Builder gpx = GPX.builder(GPX.Version.V11, "Quadmean")
                .metadata(Metadata.builder()
                        .name(printable(name))
                        .desc(printable(description))
                        .build())
                .addWayPoint(start(route));
        Map<String, WayPoint> places = new HashMap<>();
        places.put(route.startName(), start(route));
        for (SheetPlot plot : plots) {
            places.put(plot.number(), waypoint(plot));
            gpx.addWayPoint(waypoint(plot));
        }
        routes(route, places).forEach(gpx::addRoute);
        WRITER.write(gpx.build(), out);
    }

    private static WayPoint start(SheetRoute route) {
        return WayPoint.builder()
                .name(printable(route.startName()))
                .type("start")
                .build(route.start().latitude(), route.start().longitude());
    }

    private static WayPoint waypoint(SheetPlot plot) {
        String edge = plot.isNearEdge() ? ", near the edge" : "";
        return WayPoint.builder()
                .name(printable(plot.number()))
                .desc(printable("Plot " + plot.number() + ", stratum " + plot.stratum() + edge))
                .type("plot")
                .build(plot.place().latitude(), plot.place().longitude());
    }

    /** One route for each day, through the ends of its legs. */
    private static List<Route> routes(SheetRoute route, Map<String, WayPoint> places) {
        Map<Integer, Route.Builder> days = new TreeMap<>();
        for (SheetRoute.Leg leg : route.legs()) {
            Route.Builder day = days.get(leg.day());
            if (day == null) {
                day = Route.builder().name(String.format(Locale.ROOT, "Day %d", leg.day()));
                day.addPoint(place(places, leg.from()));
                days.put(leg.day(), day);
            }
            day.addPoint(place(places, leg.to()));
        }
        return days.values().stream().map(Route.Builder::build).toList();
    }

    private static WayPoint place(Map<String, WayPoint> places, String name) {
        WayPoint found = places.get(name);
        if (found == null) {
            throw new IllegalArgumentException("a leg goes to \"" + name + "\", which is neither a plot nor the start");
        }
        return found;
    }

    /** Control characters have no place in XML, not even as references. */
    private static String printable(String text) {
        return text.replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F]", "\uFFFD");
    }
}
