package quadmean.chart;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import quadmean.chart.TractMap.Point;
import quadmean.units.Attribute;
import quadmean.units.UnitSystem;

/**
 * A map of what each plot holds, drawn without fonts of the platform: the area of a circle is in proportion to the value, and the
 * number of the plot stands in its middle. It needs no colour to be read.
 */
public final class PlotValueMap {
    private static final String ID = "plot-map";
    private static final double LETTERS = 13;
    private static final double SMALLEST = 9;
    private static final double LARGEST = 34;
    /** Circles of neighbours that are full touch at 0.5. */
    private static final double OF_SPACING = 0.48;

    /** Plots asked for their neighbours; more would tell no more. */
    private static final int MOST_ASKED = 300;

    /** Plots drawn; a page with more of them would not open. */
    private static final int MOST_DRAWN = 3000;

    private static final double WIDE_LETTER = 8.2;

    private final List<Value> values;
    private final MapFrame frame;
    private final TractMap map;
    private final double most;
    private final double radius;
    private final StringBuilder out = new StringBuilder();

    /**
     * What a plot holds.
     *
     * @param plot plot number
     * @param at where it is
     * @param value 0 or more, in the unit of the map; NaN for unknown
     */
    public record Value(String plot, Point at, double value) {}

    private PlotValueMap(List<Value> values, UnitSystem units) {
        this.values = values.stream()
                .sorted(Comparator.comparingDouble(Value::value).reversed())
                .toList();
        TractMap.Site first = new TractMap.Site("", values.get(0).at(), Set.of());
        List<TractMap.Site> sites = values.stream()
                .map(v -> new TractMap.Site(v.plot(), v.at(), Set.<TractMap.Mark>of()))
                .toList();
        this.map = new TractMap(List.of(), sites, List.of(), first, units);
        this.frame = MapFrame.around(map);
        this.most = values.stream()
                .mapToDouble(Value::value)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        this.radius = Math.max(SMALLEST, Math.min(LARGEST, OF_SPACING * spacing() * frame.scale()));
    }

    /**
     * Draws the map.
     *
     * @param all plots with a place, at least one; the first of very many are drawn
     * @param unit unit of the values, for people
     */
    public static Picture picture(List<Value> all, Attribute attribute, String unit, UnitSystem units) {
        List<Value> values = all.stream().limit(MOST_DRAWN).toList();
        PlotValueMap map = new PlotValueMap(values, units);
        long unknown = values.stream().filter(v -> Double.isNaN(v.value())).count();
        long empty = values.stream().filter(v -> v.value() == 0).count();
        String what = Wording.perArea(attribute, units);
        String title = Wording.capital(what) + " on each plot (" + unit + "): the area of the circle is in proportion."
                + (empty == 0 ? "" : " Cross: nothing there.")
                + (unknown == 0 ? "" : " Square: not known of this plot alone.")
                + (values.size() < all.size() ? " The first " + values.size() + " of " + all.size() + " plots." : "")
                + " North of the grid up. One plot says little of the ground about it.";
        String alt =
                "Map of " + values.size() + " plots, north of the grid up, with circles for " + what + ", the largest "
                        + Drawing.tick(round(map.most)) + " " + unit + ", " + empty + " plots empty, " + unknown
                        + " unknown. plot-results.csv has the numbers.";
        return new Picture(ID, title, alt, map.svg(unit));
    }

    /** The middle distance from a plot to its nearest neighbour (m). */
    private double spacing() {
        double[] nearest = values.stream()
                .limit(MOST_ASKED)
                .mapToDouble(v -> values.stream()
                        .mapToDouble(o -> Math.hypot(o.at().x() - v.at().x(), o.at().y() - v.at().y()))
                        .filter(d -> d > 0)
                        .min()
                        .orElse(Double.POSITIVE_INFINITY))
                .sorted()
                .toArray();
        return nearest[nearest.length / 2];
    }

    private String svg(String unit) {
        values.forEach(this::mark);
        values.forEach(this::number);
        double bottom = new MapLegend(map, frame).compass(out, ID);
        double end = sizes(bottom + radius + 6, unit);
        return String.format(
                        Locale.ROOT,
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" aria-hidden=\"true\""
                                + " focusable=\"false\" font-family=\"sans-serif\" fill=\"#222b26\">\n",
                        MapFrame.WIDTH,
                        end)
                + out + "</svg>";
    }

    /** The number in its circle, or beside what is not a circle. */
    private void number(Value v) {
        double y = frame.y(v.at()) + LETTERS * 0.36;
        if (v.value() > 0) {
            text(frame.x(v.at()), y, "middle", v.plot());
        } else {
            text(frame.x(v.at()) + 12, y, "start", v.plot());
        }
    }

    private void mark(Value v) {
        double x = frame.x(v.at());
        double y = frame.y(v.at());
        if (Double.isNaN(v.value())) {
            out.append(String.format(
                    Locale.ROOT,
                    "<rect x=\"%.2f\" y=\"%.2f\" width=\"18\" height=\"18\" fill=\"#ffffff\" stroke=\"#222b26\""
                            + " stroke-dasharray=\"3 2\"/>\n",
                    x - 9,
                    y - 9));
        } else if (v.value() == 0) {
            out.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M%1$.2f %2$.2f L%3$.2f %4$.2f M%3$.2f %2$.2f L%1$.2f %4$.2f\" fill=\"none\" stroke=\"#a23b00\""
                            + " stroke-width=\"1.6\"/>\n",
                    x - 7,
                    y - 7,
                    x + 7,
                    y + 7));
        } else {
            circle(x, y, v.value());
        }
    }

    private void circle(double x, double y, double value) {
        out.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"#abd2bb\" stroke=\"#14532d\"/>\n",
                x,
                y,
                radius * Math.sqrt(value / most)));
    }

    /** Three circles with what they stand for; returns the height of the whole drawing. */
    private double sizes(double y, String unit) {
        if (most <= 0) {
            return y;
        }
        double x = MapFrame.MARGIN + radius;
        for (double share : new double[] {1, 0.5, 0.1}) {
            double value = MapLegend.round(share * most);
            String words = Drawing.tick(value) + " " + unit;
            circle(x, y, value);
            text(x + radius + 6, y + LETTERS * 0.36, "start", words);
            x += 3 * radius + WIDE_LETTER * words.length();
        }
        return y + radius + 10;
    }

    private void text(double x, double y, String anchor, String words) {
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"%s\" font-size=\"%.0f\" font-weight=\"600\""
                        + " stroke=\"#ffffff\" stroke-width=\"2.5\" paint-order=\"stroke\">%s</text>\n",
                x,
                y,
                anchor,
                LETTERS,
                Svg.escape(words)));
    }

    /** To three digits. */
    private static double round(double value) {
        return value == 0
                ? 0
                : new java.math.BigDecimal(value)
                        .round(new java.math.MathContext(3))
                        .doubleValue();
    }
}
