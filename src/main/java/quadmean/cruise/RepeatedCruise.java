package quadmean.cruise;

import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.StandEstimator;
import quadmean.height.CurveTable;
import quadmean.height.HeightSettings;
import quadmean.model.IntervalRule;
import quadmean.model.Problem;
import quadmean.model.Tally;
import quadmean.model.Tree;

/**
 * The line of {@link Cruise} from the tally to the rows of the whole stand, to be run again and again: curves, heights, wood and
 * estimates are those of a real cruise. Left out are the checks for mistakes, which a tally without mistakes does not need, and what is
 * made of the estimates afterwards. Safe to use from several threads.
 */
public final class RepeatedCruise {
    private final Design design;
    private final WoodBooks books;
    private final HeightSettings heights;

    private RepeatedCruise(Design design, WoodBooks books) {
        this.design = design;
        this.books = books;
        this.heights = Cruise.heightSettings(design);
    }

    /** Cruises by a design. */
    public static RepeatedCruise of(Design design) {
        return new RepeatedCruise(design, WoodBooks.of(design));
    }

    /** What is against working such trees through: a species without a volume equation. */
    public List<Problem> problems(Tally tally) {
        return Equations.check(design, books, tally).problems();
    }

    /**
     * The rows of the whole stand.
     *
     * @param tally the tally, without mistakes
     * @param rules ways to make confidence limits
     * @param seed seed of the resamples of a bootstrap
     * @return rows of all species together, by way of the limits
     */
    public Map<IntervalRule, List<EstimateRow>> rows(Tally tally, Set<IntervalRule> rules, long seed) {
        WorkedTally worked = WorkedTally.of(design, books, tally, curves(tally));
        return StandEstimator.wholeStand(design.stratumList(), worked.plots(), worked.settings(), seed, rules);
    }

    /** Curves that nobody asks, because every height is known or none goes into the wood, are not fitted. */
    private CurveTable curves(Tally tally) {
        List<Tree> trees = TreeChecks.wholeTrees(tally);
        boolean isAsked = !books.volumes().isEmpty() && trees.stream().anyMatch(t -> t.height() == null);
        return CurveTable.fit(isAsked ? trees : List.of(), heights);
    }
}
