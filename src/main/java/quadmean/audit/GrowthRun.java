package quadmean.audit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.model.Problem;
import quadmean.model.Tally;

/**
 * What came of comparing two dates.
 *
 * @param before the tally of the earlier date
 * @param after the tally of the later date
 * @param problems what is wrong with both, and between them
 * @param growth the growth; null if a problem refuses it
 */
public record GrowthRun(
        Tally before,
        Tally after,
        List<Problem> problems,
        @Nullable Growth growth) {
    public GrowthRun {
        problems = List.copyOf(problems);
    }
}
