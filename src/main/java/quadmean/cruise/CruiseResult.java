package quadmean.cruise;

import java.util.List;
import java.util.Map;
import quadmean.design.Design;
import quadmean.estimate.StandEstimate;
import quadmean.height.CurveTable;
import quadmean.height.HeightedTree;
import quadmean.model.Tally;
import quadmean.model.VolumeSpec;
import quadmean.volume.TreeWood;

/**
 * A cruise worked through: from the tally to the estimate.
 *
 * @param design the design
 * @param tally plots, the account of rows and the problems found, those of the height curves among them
 * @param curves height curves
 * @param trees trees with their heights, in tally order
 * @param wood what is in one tree of each row, in the order of {@code trees}
 * @param used what the wood was worked out with; no volume equations where heights are unknown
 * @param estimate the estimates
 * @param remeasure trees worth measuring again, most harmful first
 * @param budgets error budgets of the whole stand, the target attribute first; none where no error is known or asked for
 */
public record CruiseResult(
        Design design,
        Tally tally,
        CurveTable curves,
        List<HeightedTree> trees,
        List<TreeWood> wood,
        WoodUsed used,
        StandEstimate estimate,
        List<Remeasure> remeasure,
        List<ErrorBudget> budgets) {
    public CruiseResult {
        trees = List.copyOf(trees);
        wood = List.copyOf(wood);
        remeasure = List.copyOf(remeasure);
        budgets = List.copyOf(budgets);
    }

    /** A cruise without error budgets. */
    public CruiseResult(
            Design design,
            Tally tally,
            CurveTable curves,
            List<HeightedTree> trees,
            List<TreeWood> wood,
            WoodUsed used,
            StandEstimate estimate,
            List<Remeasure> remeasure) {
        this(design, tally, curves, trees, wood, used, estimate, remeasure, List.of());
    }

    /** The volume equation used for each species that occurs. */
    public Map<String, VolumeSpec> equations() {
        return used.volumes();
    }
}
