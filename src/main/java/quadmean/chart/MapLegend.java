package quadmean.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quadmean.chart.TractMap.Mark;
import quadmean.units.Unit;

/** North arrow, scale bar and the meaning of shapes, below the map. */
final class MapLegend {
    private static final double LETTERS = 15;
    private static final double ROW = 26;
    private static final double BAR_SHARE = 0.28;
    private static final double WIDE_LETTER = 8.2;
    private static final double SYMBOL = 34;

    private final TractMap map;
    private final MapFrame frame;

    MapLegend(TractMap map, MapFrame frame) {
        this.map = map;
        this.frame = frame;
    }

    /** An entry: a symbol at the origin, and words. */
    private record Entry(String symbol, String words) {}

    /** The mark of a plot. */
    static String plot(double x, double y, boolean nearEdge) {
        return nearEdge
                ? String.format(
                        Locale.ROOT,
                        "<path class=\"near\" d=\"M%.2f %.2f l6 6 l-6 6 l-6 -6 Z\" fill=\"#ffffff\" stroke=\"#222b26\""
                                + " stroke-width=\"2\"/>\n",
                        x,
                        y - 6)
                : String.format(
                        Locale.ROOT,
                        "<circle class=\"plot\" cx=\"%.2f\" cy=\"%.2f\" r=\"4.5\" stroke=\"#ffffff\"/>\n",
                        x,
                        y);
    }

    /** The mark of the start. */
    static String start(double x, double y) {
        return String.format(
                Locale.ROOT,
                "<path class=\"start\" d=\"M%.2f %.2f l8 14 l-16 0 Z\" fill=\"#a23b00\" stroke=\"#ffffff\"/>\n",
                x,
                y - 9);
    }

    /** Draws the legend; returns the height of the whole drawing. */
    double draw(StringBuilder out) {
        double y = compass(out, "map");
        double x = MapFrame.MARGIN;
        for (Entry entry : entries()) {
            double wide = SYMBOL + WIDE_LETTER * entry.words().length() + 20;
            if (x > MapFrame.MARGIN && x + wide > MapFrame.WIDTH) {
                x = MapFrame.MARGIN;
                y += ROW;
            }
            out.append(String.format(Locale.ROOT, "<g transform=\"translate(%.0f %.0f)\">", x, y))
                    .append(entry.symbol())
                    .append(text(SYMBOL, 5, "start", entry.words()))
                    .append("</g>\n");
            x += wide;
        }
        return y + ROW;
    }

    /** Draws north arrow and scale bar below the map, their ids after a prefix; returns where what follows has room. */
    double compass(StringBuilder out, String prefix) {
        double y = frame.height() + 14;
        north(out, prefix, MapFrame.MARGIN, y);
        bar(out, prefix, MapFrame.MARGIN + 44, y + 14);
        return y + 58;
    }

    private List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < map.areas().size(); i++) {
            String box = "<rect x=\"0\" y=\"-9\" width=\"26\" height=\"18\" ";
            entries.add(new Entry(
                    box + "fill=\"" + MapHatch.tint(i) + "\"/>" + box + "fill=\"" + MapHatch.fill(i)
                            + "\" stroke=\"#222b26\"/>",
                    map.areas().get(i).name()));
        }
        entries.add(new Entry(plot(13, 0, false), "plot"));
        if (map.plots().stream().anyMatch(p -> p.marks().contains(Mark.NEAR_EDGE))) {
            entries.add(new Entry(plot(13, 0, true), "plot near an edge"));
        }
        entries.add(new Entry(start(13, 0), "start"));
        map.walks().forEach(w -> entries.add(new Entry(MapChart.sample(w), "walk, day " + w.day())));
        map.seed().ifPresent(s -> entries.add(new Entry("", "seed " + s)));
        return entries;
    }

    private static void north(StringBuilder out, String prefix, double x, double y) {
        out.append(String.format(
                Locale.ROOT,
                "<g id=\"%s-north\" transform=\"translate(%.0f %.0f)\"><path d=\"M8 0 L16 26 L8 20 L0 26 Z\"/>",
                prefix,
                x,
                y));
        out.append(text(8, 42, "middle", "N")).append("</g>\n");
    }

    private void bar(StringBuilder out, String prefix, double x, double y) {
        Unit unit = map.units().length();
        double most = BAR_SHARE * MapFrame.WIDTH / frame.scale();
        double length = round(Unit.METRE.convert(most, unit));
        double wide = unit.convert(length, Unit.METRE) * frame.scale();
        out.append(String.format(
                Locale.ROOT,
                "<g id=\"%s-scale\" transform=\"translate(%.0f %.0f)\"><rect x=\"0\" y=\"0\" width=\"%.2f\""
                        + " height=\"7\" fill=\"#ffffff\" stroke=\"#222b26\"/><rect x=\"0\" y=\"0\" width=\"%.2f\""
                        + " height=\"7\"/>",
                prefix,
                x,
                y,
                wide,
                wide / 2));
        out.append(text(0, 24, "middle", "0")).append(text(wide / 2, 24, "middle", Wording.plain(length / 2)));
        out.append(text(wide, 24, "middle", Drawing.tick(length) + " " + unit.label()))
                .append("</g>\n");
    }

    /** The largest of 1, 2 and 5 times a power of ten that is not larger. */
    static double round(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double digit = most / power;
        return power * (digit >= 5 ? 5 : digit >= 2 ? 2 : 1);
    }

    private static String text(double x, double y, String anchor, String words) {
        return String.format(
                Locale.ROOT,
                "<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"%s\" font-size=\"%.0f\">%s</text>",
                x,
                y,
                anchor,
                LETTERS,
                Svg.escape(words));
    }
}
