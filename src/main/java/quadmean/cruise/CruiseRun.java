package quadmean.cruise;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.estimate.PlotResult;
import quadmean.estimate.PlotResults;
import quadmean.estimate.Worksheet;
import quadmean.model.Tally;

/**
 * What came of working through a cruise.
 *
 * @param tally the tally with every problem found on the way
 * @param result the result; null if a problem refused it
 * @param worksheet the plots that it was estimated from, to show the arithmetic of single numbers; null without a result
 */
public record CruiseRun(
        Tally tally,
        @Nullable CruiseResult result,
        @Nullable Worksheet worksheet) {
    /** What each plot says by itself; none without a result. */
    public List<PlotResult> plots() {
        return worksheet == null ? List.of() : PlotResults.of(worksheet);
    }
}
