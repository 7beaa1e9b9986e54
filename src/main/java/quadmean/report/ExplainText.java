package quadmean.report;

import java.util.List;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.Explanation;

/** The arithmetic of one number as plain text, from the tally or the plots to the number itself. */
public final class ExplainText {
    private ExplainText() {}

    /** One line after the other; the last ends in the number that was asked for. */
    public static List<String> of(CruiseResult result, Explanation explanation) {
        Steps steps = new Steps();
        if (explanation instanceof Explanation.OfPlot plot) {
            new PlotSteps(result, plot, steps).write();
        } else if (explanation instanceof Explanation.OfTotal total) {
            new TotalSteps(result, total.request(), steps).total(total);
        } else if (explanation instanceof Explanation.OfDiameter diameter) {
            new TotalSteps(result, diameter.request(), steps).diameter(diameter);
        }
        return steps.lines();
    }
}
