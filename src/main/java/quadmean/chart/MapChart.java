package quadmean.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import quadmean.chart.TractMap.Area;
import quadmean.chart.TractMap.Mark;
import quadmean.chart.TractMap.Point;
import quadmean.chart.TractMap.Site;
import quadmean.chart.TractMap.Walk;
import quadmean.units.Unit;

/**
 * A map of plots and of the walk between them, drawn without fonts of the platform. Strata differ by tint and by
 * hatching, plots near an edge by their shape, days by the dashes of their lines: it can be read in grey.
 */
public final class MapChart {
    private static final String INK = "#222b26";
    private static final String LINE = "#1d4ed8";
    private static final int MANY_PLOTS = 80;
    private static final String[] DASHES = {"none", "9 4", "2 4", "12 4 2 4"};

    private final TractMap map;
    private final MapFrame frame;
    private final double letters;
    private final StringBuilder out = new StringBuilder();

    private MapChart(TractMap map) {
        this.map = map;
        this.frame = MapFrame.around(map);
        this.letters = map.plots().size() > MANY_PLOTS ? 11 : 14;
    }

    /** Draws a map. */
    public static Picture picture(TractMap map) {
        long near = near(map);
        String title = "Plots" + (map.walks().isEmpty() ? "" : " and the walk between them")
                + ", north of the grid up, one scale in both directions."
                + (near == 0 ? "" : " Open diamonds: plots near an edge, for which the boundary treatment holds.");
        return new Picture("map", title, alt(map, near), new MapChart(map).svg());
    }

    private static long near(TractMap map) {
        return map.plots().stream()
                .filter(p -> p.marks().contains(Mark.NEAR_EDGE))
                .count();
    }

    private static String alt(TractMap map, long near) {
        String areas = map.areas().stream().map(Area::name).collect(Collectors.joining(", "));
        Unit unit = map.units().length();
        String walk = map.walks().isEmpty()
                ? ""
                : String.format(
                        Locale.ROOT,
                        " The walk takes %d %s and is %,.0f %s long; it starts at %s.",
                        map.walks().size(),
                        map.walks().size() == 1 ? "day" : "days",
                        Unit.METRE.convert(map.walkM(), unit),
                        unit.label(),
                        map.start().name());
        return String.format(
                Locale.ROOT,
                "Map of the tract, north of the grid up: %s; %d plots, %d of them near an edge.%s The list of plots gives bearings"
                        + " and distances.",
                areas,
                map.plots().size(),
                near,
                walk);
    }

    private String svg() {
        areas();
        map.walks().forEach(this::walk);
        sites();
        double bottom = new MapLegend(map, frame).draw(out);
        return String.format(
                                Locale.ROOT,
                                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" aria-hidden=\"true\""
                                        + " focusable=\"false\" font-family=\"sans-serif\" fill=\"%s\">%n",
                                MapFrame.WIDTH,
                                bottom,
                                INK)
                        .replace(System.lineSeparator(), "\n")
                + MapHatch.patterns(map.areas().size()) + out + "</svg>";
    }

    private void areas() {
        for (int i = 0; i < map.areas().size(); i++) {
            String path = map.areas().get(i).rings().stream().map(this::ring).collect(Collectors.joining(" "));
            String shape = "<path d=\"" + path + "\" fill-rule=\"evenodd\" ";
            out.append(shape).append("fill=\"").append(MapHatch.tint(i)).append("\"/>\n");
            out.append(shape)
                    .append("fill=\"")
                    .append(MapHatch.fill(i))
                    .append("\" stroke=\"" + INK + "\" stroke-width=\"1.8\"/>\n");
        }
    }

    private String ring(List<Point> ring) {
        return ring.stream().map(this::at).collect(Collectors.joining(" L", "M", " Z"));
    }

    /** The line of a day, for the legend. */
    static String sample(Walk walk) {
        return "<path d=\"M0 0 L28 0\" fill=\"none\" stroke=\"" + LINE + "\" stroke-width=\"1.8\" stroke-dasharray=\""
                + dash(walk) + "\"/>";
    }

    private static String dash(Walk walk) {
        return DASHES[(walk.day() - 1) % DASHES.length];
    }

    private void walk(Walk walk) {
        out.append("<polyline points=\"")
                .append(walk.points().stream().map(this::at).collect(Collectors.joining(" ")))
                .append("\" fill=\"none\" stroke=\"" + LINE + "\" stroke-width=\"1.8\" stroke-dasharray=\"")
                .append(dash(walk))
                .append("\"/>\n");
        for (int i = 1; i < walk.points().size(); i++) {
            arrow(walk.points().get(i - 1), walk.points().get(i));
        }
    }

    /** The way a leg is walked, in its middle; not on legs too short to hold it. */
    private void arrow(Point from, Point to) {
        double dx = frame.x(to) - frame.x(from);
        double dy = frame.y(to) - frame.y(from);
        double length = Math.hypot(dx, dy);
        if (length > 26) {
            out.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M-5 -4.5 L5 0 L-5 4.5 Z\" fill=\"%s\" transform=\"translate(%.2f %.2f) rotate(%.1f)\"/>\n",
                    LINE,
                    frame.x(from) + dx / 2,
                    frame.y(from) + dy / 2,
                    Math.toDegrees(Math.atan2(dy, dx))));
        }
    }

    private void sites() {
        List<double[]> marks = new ArrayList<>();
        map.plots().forEach(p -> marks.add(new double[] {frame.x(p.at()), frame.y(p.at())}));
        marks.add(new double[] {frame.x(map.start().at()), frame.y(map.start().at())});
        MapLabels labels = new MapLabels(letters, frame.height(), marks, lines());
        out.append(
                MapLegend.start(frame.x(map.start().at()), frame.y(map.start().at())));
        label(labels, map.start());
        for (Site plot : map.plots()) {
            out.append(MapLegend.plot(
                    frame.x(plot.at()), frame.y(plot.at()), plot.marks().contains(Mark.NEAR_EDGE)));
        }
        map.plots().forEach(p -> label(labels, p));
    }

    private List<double[]> lines() {
        List<double[]> lines = new ArrayList<>();
        for (Walk walk : map.walks()) {
            for (int i = 1; i < walk.points().size(); i++) {
                Point a = walk.points().get(i - 1);
                Point b = walk.points().get(i);
                lines.add(new double[] {frame.x(a), frame.y(a), frame.x(b), frame.y(b)});
            }
        }
        return lines;
    }

    private void label(MapLabels labels, Site site) {
        MapLabels.Box box = labels.place(site.name(), frame.x(site.at()), frame.y(site.at()));
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"middle\" font-size=\"%.0f\" font-weight=\"600\""
                        + " stroke=\"#ffffff\" stroke-width=\"3\" paint-order=\"stroke\">%s</text>\n",
                (box.left() + box.right()) / 2,
                box.bottom() - letters * 0.07,
                letters,
                Svg.escape(site.name())));
    }

    private String at(Point p) {
        return String.format(Locale.ROOT, "%.2f,%.2f", frame.x(p), frame.y(p));
    }
}
