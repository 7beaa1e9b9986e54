package quadmean.report;

import java.util.Locale;
import quadmean.chart.Wording;
import quadmean.estimate.EstimateRow;

/** A strip that lays the confidence limits over the band that the target allows; colours come from the style sheet. */
final class RangeStrip {
    private static final double WIDTH = 300;
    private static final double MIDDLE = WIDTH / 2;
    private static final double REACH = 130;

    private RangeStrip() {}

    /** The strip; empty where there are no limits. */
    static String markup(EstimateRow row, double targetPercent) {
        double error = row.samplingErrorPercent();
        if (!Double.isFinite(error)) {
            return "";
        }
        double below = 100 * (row.mean() - row.lower()) / Math.abs(row.mean());
        double above = 100 * (row.upper() - row.mean()) / Math.abs(row.mean());
        double scale = REACH / Math.max(Math.max(below, above), targetPercent);
        double target = scale * targetPercent;
        String alt =
                "The limits lie " + sides(below, above) + "; the target allows " + Wording.percent(targetPercent) + ".";
        return String.format(
                        Locale.ROOT,
                        "<svg class=\"strip\" viewBox=\"0 0 300 44\" role=\"img\" aria-label=\"%s\">"
                                + "<rect class=\"allowed\" x=\"%.1f\" y=\"4\" width=\"%.1f\" height=\"22\" rx=\"3\"/>"
                                + "<path class=\"limits\" d=\"M%.1f 15H%.1fM%.1f 8v14M%.1f 8v14\"/>"
                                + "<circle class=\"estimate\" cx=\"150\" cy=\"15\" r=\"5\"/>"
                                + "<text x=\"150\" y=\"41\" text-anchor=\"middle\">line: limits; shaded: target ±%s %%</text>"
                                + "</svg>%n",
                        Html.escape(alt),
                        MIDDLE - target,
                        2 * target,
                        MIDDLE - scale * below,
                        MIDDLE + scale * above,
                        MIDDLE - scale * below,
                        MIDDLE + scale * above,
                        Wording.plain(targetPercent))
                .replace("\r\n", "\n");
    }

    private static String sides(double below, double above) {
        String under = Rounding.percent(below);
        String over = Rounding.percent(above);
        return under.equals(over)
                ? under + " either side of the estimate"
                : under + " below and " + over + " above the estimate";
    }
}
