package quadmean.chart;

import java.util.List;
import java.util.Locale;
import quadmean.simulate.AttributeOutcome;
import quadmean.simulate.Histogram;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** How the estimates of many cruises were spread about the truth, as columns with a line at the truth and one at their mean. */
public final class SpreadChart {
    private static final int WIDTH = 600;
    private static final int HEIGHT = 300;
    private static final int FLOOR = 240;
    private static final int LEFT = 20;
    private static final int BROAD = 560;
    private static final int TALLEST = 210;
    private static final int TICKS = 4;

    private SpreadChart() {}

    /** The chart of one attribute in a unit system. */
    public static Picture picture(AttributeOutcome outcome, UnitSystem units) {
        Histogram h = outcome.histogram();
        List<Long> counts = h.counts();
        double most = counts.stream().mapToLong(Long::longValue).max().orElse(1);
        double step = (double) BROAD / counts.size();
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" aria-hidden=\"true\" focusable=\"false\""
                        + " font-family=\"sans-serif\" font-size=\"17\" fill=\"#222B26\">",
                WIDTH,
                HEIGHT));
        for (int i = 0; i < counts.size(); i++) {
            double tall = TALLEST * counts.get(i) / Math.max(1, most);
            svg.append(String.format(
                    Locale.ROOT,
                    "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"#B9CDBF\"/>",
                    LEFT + i * step,
                    FLOOR - tall,
                    step * 0.92,
                    tall));
        }
        line(svg, h, outcome.truth(), "#14532D", "");
        line(svg, h, outcome.mean(), "#A23B00", " stroke-dasharray=\"6 5\"");
        axis(svg, outcome, units);
        String unit = unit(outcome, units).label();
        String title = Wording.capital(outcome.attribute().label()) + " (" + unit + "): estimates of "
                + String.format(Locale.ROOT, "%,d", outcome.estimates())
                + " cruises. Green: the truth; dashed: their mean. The outermost columns hold all beyond.";
        String id = "spread-" + outcome.attribute().id().replace('_', '-');
        return new Picture(
                id,
                title,
                "Columns of the spread of estimates. " + title,
                svg.append("</svg>").toString());
    }

    private static Unit unit(AttributeOutcome outcome, UnitSystem units) {
        return outcome.attribute().unit(outcome.basis(), units);
    }

    private static double x(Histogram h, double value) {
        double share = (value - h.low()) / (h.width() * h.counts().size());
        return LEFT + BROAD * Math.max(0, Math.min(1, share));
    }

    private static void line(StringBuilder svg, Histogram h, double value, String colour, String dash) {
        svg.append(String.format(
                Locale.ROOT,
                "<line x1=\"%1$.2f\" x2=\"%1$.2f\" y1=\"16\" y2=\"%2$d\" stroke=\"%3$s\" stroke-width=\"3\"%4$s/>",
                x(h, value),
                FLOOR,
                colour,
                dash));
    }

    private static void axis(StringBuilder svg, AttributeOutcome outcome, UnitSystem units) {
        Histogram h = outcome.histogram();
        svg.append(String.format(
                Locale.ROOT,
                "<line x1=\"%d\" x2=\"%d\" y1=\"%3$d\" y2=\"%3$d\" stroke=\"#222B26\"/>",
                LEFT,
                LEFT + BROAD,
                FLOOR));
        Unit metric = unit(outcome, UnitSystem.METRIC);
        for (int i = 0; i <= TICKS; i++) {
            double value = h.low() + h.width() * h.counts().size() * i / TICKS;
            String anchor = i == 0 ? "start" : i == TICKS ? "end" : "middle";
            svg.append(String.format(
                    Locale.ROOT,
                    "<text x=\"%.2f\" y=\"%d\" text-anchor=\"%s\">%s</text>",
                    x(h, value),
                    FLOOR + 26,
                    anchor,
                    Drawing.tick(metric.convert(value, unit(outcome, units)))));
        }
    }
}
