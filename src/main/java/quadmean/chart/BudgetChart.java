package quadmean.chart;

import java.util.List;
import java.util.Locale;
import quadmean.cruise.ErrorBudget;
import quadmean.cruise.ErrorPart;
import quadmean.cruise.ErrorPart.Kind;

/** The known parts of an error budget as bars, each as long as its share of the total variance. */
public final class BudgetChart {
    private static final int WIDTH = 600;
    private static final int ROW = 46;
    private static final int TOP = 8;
    private static final int LEFT = 10;
    private static final int LONGEST = 490;

    private BudgetChart() {}

    /** The chart; what lies inside the variation between plots is drawn pale, for it is no part of the sum. */
    public static Picture picture(ErrorBudget budget) {
        List<ErrorPart> parts = budget.parts().stream()
                .filter(p -> p.kind() != Kind.UNKNOWN && Double.isFinite(p.variance()))
                .toList();
        int height = TOP + ROW * parts.size() + 6;
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" aria-hidden=\"true\" focusable=\"false\""
                        + " font-family=\"sans-serif\" fill=\"#222B26\">",
                WIDTH,
                height));
        double widest = parts.stream()
                .mapToDouble(p -> Math.max(0, budget.share(p)))
                .max()
                .orElse(1);
        for (int i = 0; i < parts.size(); i++) {
            bar(svg, budget, parts.get(i), TOP + ROW * i, LONGEST / Math.max(1, widest));
        }
        String what = "Shares of the variance of " + budget.attribute().label();
        return new Picture(
                "error-budget-" + budget.attribute().id().replace('_', '-'),
                what + ". Dark: counted in the total; pale: already inside the variation between " + budget.units()
                        + ".",
                what + " as bars. The table of the error budget has the numbers.",
                svg.append("</svg>").toString());
    }

    private static void bar(StringBuilder svg, ErrorBudget budget, ErrorPart part, int y, double perShare) {
        double share = budget.share(part);
        double length = Math.max(1, perShare * Math.max(0, share));
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%d\" y=\"%d\" font-size=\"17\">%s</text>"
                        + "<rect x=\"%d\" y=\"%d\" width=\"%.1f\" height=\"14\" fill=\"%s\"/>"
                        + "<text x=\"%.1f\" y=\"%d\" font-size=\"17\">%s</text>",
                LEFT,
                y + 16,
                Wording.capital(budget.label(part)),
                LEFT,
                y + 23,
                length,
                colour(part.kind()),
                LEFT + length + 8,
                y + 36,
                percent(share)));
    }

    private static String colour(Kind kind) {
        return switch (kind) {
            case SAMPLING -> "#14532D";
            case ADDED -> "#A23B00";
            case INSIDE, UNKNOWN -> "#B9CDBF";
        };
    }

    /** A share in percent, with one decimal below ten; a negative one in words. */
    static String percent(double share) {
        if (share < 0) {
            return "takes off " + percent(-share);
        }
        double percent = 100 * share;
        if (percent > 0 && percent < 0.05) {
            return "under 0.1 %";
        }
        return String.format(Locale.ROOT, percent < 9.95 ? "%.1f %%" : "%.0f %%", percent);
    }
}
