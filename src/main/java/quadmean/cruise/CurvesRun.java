package quadmean.cruise;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.height.CurveTable;
import quadmean.height.MoreHeights;
import quadmean.model.Tally;
import quadmean.model.Tree;

/**
 * The height curves of a cruise.
 *
 * @param tally the tally with every problem found on the way
 * @param result the curves; null if a problem refused the tally
 */
public record CurvesRun(Tally tally, @Nullable Result result) {

    /**
     * Curves and what they were fitted to.
     *
     * @param design the design
     * @param trees trees as the curves see them: heights set aside and those of broken trees are gone
     * @param curves the curves
     * @param more for each species with a curve of its own, the heights to take next
     * @param plan for each of them, the heights to take if none had been taken: for the plan of a stand like this
     */
    public record Result(
            Design design, List<Tree> trees, CurveTable curves, List<MoreHeights> more, List<MoreHeights> plan) {
        public Result {
            trees = List.copyOf(trees);
            more = List.copyOf(more);
            plan = List.copyOf(plan);
        }
    }
}
