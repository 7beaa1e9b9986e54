package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quadmean.design.Design;
import quadmean.layout.SheetPlace;
import quadmean.layout.SheetPlot;
import quadmean.layout.SheetRoute;
import quadmean.layout.SheetSet;

/** The plots, in the order in which they are walked, with the way to each. */
final class SheetPlots {
    private SheetPlots() {}

    static String markup(Design design, SheetSet set) {
        SheetLengths lengths = new SheetLengths(design.units());
        Html html =
                new Html().raw("<section class=\"sheet\" id=\"plots\">\n").element("h2", "Plots and the way to them");
        html.element(
                "p",
                "Distances are horizontal. Along a slope tape the longer length of the slope table, or of the column"
                        + " \"along the ground\" where it is given. A plot stands where bearing and distance put it, not"
                        + " where the tallying is easy; one that cannot be reached in safety is noted as such. \"Line at\":"
                        + " a line of the tract is so near that the boundary sheet holds.");
        if (set.route().legs().stream().anyMatch(l -> l.way() != SheetRoute.Way.OPEN)) {
            html.element(
                    "p",
                    "\"On the way\": \"" + SheetRoute.Way.AROUND.words()
                            + "\" where the straight line crosses water or excluded land, \""
                            + SheetRoute.Way.OUTSIDE.words()
                            + "\" where it leaves the tract: go around, or cross only with leave. Such ways are longer than the"
                            + " distance given; take up bearing and distance again from a plot or a place that you know.");
        }
        set.remarks().forEach(r -> html.element("p", "small", r));
        if (set.route().legs().isEmpty()) {
            html.raw(list(set, lengths));
        }
        for (SheetRoute.Day day : set.route().days()) {
            html.raw(day(set, day, lengths));
        }
        return html.raw("</section>\n").toString();
    }

    private static String day(SheetSet set, SheetRoute.Day day, SheetLengths lengths) {
        List<SheetRoute.Leg> legs =
                set.route().legs().stream().filter(l -> l.day() == day.day()).toList();
        boolean compass = legs.stream().anyMatch(l -> Double.isFinite(l.compassBearing()));
        boolean ground = legs.stream().anyMatch(l -> Double.isFinite(l.slopeM()));
        List<String> head =
                new ArrayList<>(List.of("*from", "*to", "*stratum", set.isOnGlobe() ? "true bearing" : "map bearing"));
        if (compass) {
            head.add("compass");
        }
        head.add("distance (" + lengths.unit() + ")");
        if (ground) {
            head.add("along the ground (" + lengths.unit() + ")");
        }
        boolean ways = legs.stream().anyMatch(l -> l.way() != SheetRoute.Way.OPEN);
        if (ways) {
            head.add("*on the way");
        }
        head.addAll(placeHead(set));
        head.addAll(List.of("*line at", "*done, by, time"));
        String caption = String.format(
                Locale.ROOT,
                "Day %d: %d plots, %s to walk, about %.1f hours",
                day.day(),
                day.plots(),
                lengths.withUnit(day.walkM(), 0),
                day.hours());
        SheetTable table = SheetTable.of(caption, head);
        for (SheetRoute.Leg leg : legs) {
            Optional<SheetPlot> plot = set.plot(leg.to());
            List<String> row = new ArrayList<>(
                    List.of(leg.from(), leg.to(), plot.map(SheetPlot::stratum).orElse(""), bearing(leg.trueBearing())));
            if (compass) {
                row.add(bearing(leg.compassBearing()));
            }
            row.add(lengths.length(leg.horizontalM(), 0));
            if (ground) {
                row.add(lengths.length(leg.slopeM(), 0));
            }
            if (ways) {
                row.add(leg.way().words());
            }
            row.addAll(place(set, leg, plot));
            row.addAll(List.of(plot.map(p -> edge(p, lengths)).orElse(""), ""));
            table.row(row);
        }
        return table.markup();
    }

    private static List<String> placeHead(SheetSet set) {
        return set.isOnGlobe() ? List.of("latitude", "longitude") : List.of("map east (m)", "map north (m)");
    }

    private static List<String> place(SheetSet set, SheetRoute.Leg leg, Optional<SheetPlot> plot) {
        if (plot.isPresent()) {
            return place(set, plot.get().place());
        }
        return leg.to().equals(set.route().startName()) ? place(set, set.route().start()) : List.of("", "");
    }

    private static List<String> place(SheetSet set, SheetPlace at) {
        return set.isOnGlobe()
                ? List.of(degrees(at.latitude()), degrees(at.longitude()))
                : List.of(
                        Rounding.decimals(0).text(at.eastM()),
                        Rounding.decimals(0).text(at.northM()));
    }

    /** The plots alone, where nobody laid out a walk. */
    private static String list(SheetSet set, SheetLengths lengths) {
        List<String> head = new ArrayList<>(List.of("*plot", "*stratum"));
        head.addAll(placeHead(set));
        head.addAll(List.of("*line at", "*done, by, time"));
        SheetTable table = SheetTable.of(set.plots().size() + " plots", head);
        for (SheetPlot plot : set.plots()) {
            List<String> row = new ArrayList<>(List.of(plot.number(), plot.stratum()));
            row.addAll(place(set, plot.place()));
            row.addAll(List.of(edge(plot, lengths), ""));
            table.row(row);
        }
        return table.markup();
    }

    private static String edge(SheetPlot plot, SheetLengths lengths) {
        if (!plot.isNearEdge()) {
            return "";
        }
        return Double.isFinite(plot.edgeDistanceM()) ? lengths.withUnit(plot.edgeDistanceM(), 0) : "near";
    }

    /** A bearing as three digits; 360 is written 000. */
    static String bearing(double degrees) {
        return Double.isFinite(degrees)
                ? String.format(Locale.ROOT, "%03d°", Math.floorMod(Math.round(degrees), 360L))
                : Rounding.UNKNOWN;
    }

    /** A millionth of a degree is about 0.1 m. */
    private static String degrees(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }
}
