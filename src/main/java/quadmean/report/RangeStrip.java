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
        double scale = REACH / Math.max(error, targetPercent);
        double limit = scale * error;
        double target = scale * targetPercent;
        String alt = "The limits lie " + Rounding.percent(error) + " either side of the estimate; the target allows "
                + Wording.percent(targetPercent) + ".";
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
                        MIDDLE - limit,
                        MIDDLE + limit,
                        MIDDLE - limit,
                        MIDDLE + limit,
                        Wording.plain(targetPercent))
                .replace("\r\n", "\n");
    }
}
