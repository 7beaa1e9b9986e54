package quadmean.chart;

import java.util.List;
import java.util.Locale;
import quadmean.plan.KindComparison;
import quadmean.plan.KindName;
import quadmean.plan.KindOption;
import quadmean.units.UnitSystem;

/** Hours that the target takes by kind of plot, as bars of walking, setting up and trees. */
public final class KindsChart {
    private static final int WIDTH = 600;
    private static final int ROW = 46;
    private static final int TOP = 40;
    private static final int LEFT = 10;
    private static final int LONGEST = 490;
    private static final List<Part> PARTS = List.of(
            new Part("walking", "#14532D", 0),
            new Part("setting up", "#D9A441", 110),
            new Part("trees", "#7FA88B", 240));

    private KindsChart() {}

    /** A part of the time, its colour, and where it stands in the legend. */
    private record Part(String name, String colour, int legendX) {}

    /** The chart; a kind that reaches the target with no number of plots has no bar. */
    public static Picture picture(KindComparison kinds, UnitSystem units) {
        double most = kinds.options().stream()
                .mapToDouble(o -> o.work().hours())
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        int height = TOP + ROW * kinds.options().size() + 6;
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" aria-hidden=\"true\" focusable=\"false\""
                        + " font-family=\"sans-serif\" font-size=\"17\" fill=\"#222B26\">",
                WIDTH,
                height));
        PARTS.forEach(p -> legend(svg, p));
        for (int i = 0; i < kinds.options().size(); i++) {
            row(svg, kinds.options().get(i), units, TOP + ROW * i, LONGEST / Math.max(1e-9, most));
        }
        String best = kinds.quickest()
                .map(o -> " Fewest: " + KindName.of(o.plot(), units) + ", "
                        + hours(o.work().hours()) + " h.")
                .orElse("");
        return new Picture(
                "kinds-chart",
                "Hours of one crew until the target is reached, by kind of plot, with the times stated in the table."
                        + best,
                "Bars of hours by kind of plot, parted into walking, setting up and trees." + best,
                svg.append("</svg>").toString());
    }

    private static void legend(StringBuilder svg, Part part) {
        svg.append(String.format(
                Locale.ROOT,
                "<rect x=\"%d\" y=\"10\" width=\"14\" height=\"14\" fill=\"%s\"/><text x=\"%d\" y=\"23\" font-size=\"17\" text-anchor=\"start\">%s</text>",
                LEFT + part.legendX(),
                part.colour(),
                LEFT + part.legendX() + 20,
                part.name()));
    }

    private static void row(StringBuilder svg, KindOption option, UnitSystem units, int y, double perHour) {
        boolean reachable = option.plots().isPresent();
        String plots = reachable ? ", " + option.plots().getAsInt() + " plots" : ": out of reach";
        text(svg, LEFT, y + 16, Wording.capital(KindName.of(option.plot(), units)) + plots);
        if (!reachable) {
            return;
        }
        KindOption.Work work = option.work();
        double[] hours = {work.walkingHours(), work.setUpHours(), work.treeHours()};
        double x = LEFT;
        for (int i = 0; i < hours.length; i++) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"14\" fill=\"%s\"/>",
                    x,
                    y + 23,
                    perHour * hours[i],
                    PARTS.get(i).colour()));
            x += perHour * hours[i];
        }
        text(svg, x + 8, y + 36, hours(work.hours()) + " h");
    }

    private static void text(StringBuilder svg, double x, int y, String text) {
        svg.append(String.format(
                Locale.ROOT, "<text x=\"%.1f\" y=\"%d\" font-size=\"17\" text-anchor=\"start\">%s</text>", x, y, text));
    }

    private static String hours(double value) {
        return String.format(Locale.ROOT, value < 9.95 ? "%.1f" : "%.0f", value);
    }
}
