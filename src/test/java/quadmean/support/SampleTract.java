package quadmean.support;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import quadmean.chart.TractMap;
import quadmean.chart.TractMap.Area;
import quadmean.chart.TractMap.Mark;
import quadmean.chart.TractMap.Point;
import quadmean.chart.TractMap.Site;
import quadmean.chart.TractMap.Walk;
import quadmean.layout.SheetPlace;
import quadmean.layout.SheetPlot;
import quadmean.layout.SheetRoute;
import quadmean.layout.SheetSet;
import quadmean.units.UnitSystem;

/** An invented tract of two strata with a lake in one of them, 24 plots on a grid of 100 m, and a walk of two days. */
public final class SampleTract {
    public static final String START = "gate";

    private static final double SPACING = 100;
    private static final int ROWS = 4;
    private static final int COLUMNS = 6;
    private static final int DAYS = 2;

    private SampleTract() {}

    /** Twenty-four plots, two of them near the edge. */
    public static List<SheetPlot> plots() {
        List<SheetPlot> plots = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                int number = row * COLUMNS + column + 1;
                boolean near = number == 1 || number == COLUMNS;
                plots.add(new SheetPlot(
                        Integer.toString(number),
                        column < COLUMNS / 2 ? "W" : "E",
                        place(60 + SPACING * column, 50 + SPACING * row),
                        OptionalInt.of(row + 1),
                        OptionalInt.of(column + 1),
                        "",
                        near ? SheetPlot.Edge.NEAR : SheetPlot.Edge.INSIDE,
                        near ? 8 : 50));
            }
        }
        return plots;
    }

    /** The sheets' material: serpentine rows, half of them on each day. */
    public static SheetSet set() {
        List<SheetPlot> plots = plots();
        List<SheetRoute.Leg> legs = new ArrayList<>();
        List<SheetRoute.Day> days = new ArrayList<>();
        for (int day = 1; day <= DAYS; day++) {
            double walk = 0;
            String from = START;
            SheetPlace at = start();
            for (SheetPlot plot : walked(plots, day)) {
                walk += leg(legs, day, from, at, plot.number(), plot.place());
                from = plot.number();
                at = plot.place();
            }
            walk += leg(legs, day, from, at, START, start());
            days.add(new SheetRoute.Day(day, plots.size() / DAYS, walk, 7.5));
        }
        return new SheetSet(
                OptionalInt.of(23),
                plots,
                new SheetRoute(start(), START, legs, days),
                List.of("One plot more than asked for: the grid falls so."));
    }

    /** The same on a plane that has no place on the globe. */
    public static SheetSet onPlane() {
        SheetSet set = set();
        List<SheetPlot> plots = set.plots().stream()
                .map(p -> new SheetPlot(
                        p.number(),
                        p.stratum(),
                        offGlobe(p.place()),
                        p.row(),
                        p.column(),
                        p.cluster(),
                        p.edge(),
                        p.edgeDistanceM()))
                .toList();
        SheetRoute route = new SheetRoute(
                offGlobe(start()), START, set.route().legs(), set.route().days());
        return new SheetSet(set.asked(), plots, route, set.remarks());
    }

    private static SheetPlace offGlobe(SheetPlace place) {
        return new SheetPlace(Double.NaN, Double.NaN, place.eastM(), place.northM());
    }

    private static List<SheetPlot> walked(List<SheetPlot> plots, int day) {
        List<SheetPlot> order = new ArrayList<>();
        int half = ROWS / DAYS;
        for (int row = (day - 1) * half; row < day * half; row++) {
            List<SheetPlot> line = new ArrayList<>(plots.subList(row * COLUMNS, (row + 1) * COLUMNS));
            if (row % 2 == 1) {
                java.util.Collections.reverse(line);
            }
            order.addAll(line);
        }
        return order;
    }

    private static double leg(List<SheetRoute.Leg> legs, int day, String from, SheetPlace a, String to, SheetPlace b) {
        double east = b.eastM() - a.eastM();
        double north = b.northM() - a.northM();
        double bearing = (Math.toDegrees(Math.atan2(east, north)) + 360) % 360;
        double metres = Math.hypot(east, north);
        legs.add(new SheetRoute.Leg(
                day, from, to, bearing, (bearing - 14 + 360) % 360, metres, Double.NaN, SheetRoute.Way.OPEN));
        return metres;
    }

    public static SheetPlace start() {
        return place(0, 0);
    }

    private static SheetPlace place(double east, double north) {
        return new SheetPlace(-115 + east / 78_000, 45 + north / 111_000, east, north);
    }

    /** The map of the same tract. */
    public static TractMap map(UnitSystem units) {
        SheetSet set = set();
        List<Site> sites = set.plots().stream()
                .map(p -> new Site(p.number(), at(p.place()), p.isNearEdge() ? Set.of(Mark.NEAR_EDGE) : Set.of()))
                .toList();
        List<Walk> walks = new ArrayList<>();
        for (SheetRoute.Day day : set.route().days()) {
            List<Point> points = new ArrayList<>(List.of(at(start())));
            set.route().legs().stream()
                    .filter(l -> l.day() == day.day())
                    .forEach(l ->
                            points.add(at(set.plot(l.to()).map(SheetPlot::place).orElse(start()))));
            walks.add(new Walk(day.day(), points));
        }
        return new TractMap(areas(), sites, walks, new Site(START, at(start()), Set.of()), units, OptionalLong.of(7));
    }

    private static List<Area> areas() {
        List<Point> lake = List.of(
                new Point(380, 180),
                new Point(430, 170),
                new Point(445, 215),
                new Point(415, 240),
                new Point(375, 225));
        List<Point> west = List.of(
                new Point(10, 20), new Point(310, 5), new Point(305, 400), new Point(120, 390), new Point(20, 370));
        List<Point> east = List.of(
                new Point(310, 5),
                new Point(600, 30),
                new Point(620, 200),
                new Point(590, 390),
                new Point(450, 430),
                new Point(305, 400));
        return List.of(new Area("west & north", List.of(west)), new Area("east bench", List.of(east, lake)));
    }

    private static Point at(SheetPlace place) {
        return new Point(place.eastM(), place.northM());
    }
}
