package quadmean.cruise;

import java.util.List;
import java.util.Map;
import quadmean.design.Design;
import quadmean.estimate.StandEstimate;
import quadmean.height.CurveTable;
import quadmean.height.HeightedTree;
import quadmean.model.Tally;
import quadmean.model.VolumeSpec;

/**
 * A cruise worked through: from the tally to the estimate.
 *
 * @param design the design
 * @param tally plots, the account of rows and the problems found, those of the height curves among them
 * @param curves height curves
 * @param trees trees with their heights, in tally order
 * @param equations the volume equation used for each species that occurs; empty where heights are unknown
 * @param estimate the estimates
 * @param remeasure trees worth measuring again, most harmful first
 */
public record CruiseResult(
        Design design,
        Tally tally,
        CurveTable curves,
        List<HeightedTree> trees,
        Map<String, VolumeSpec> equations,
        StandEstimate estimate,
        List<Remeasure> remeasure) {
    public CruiseResult {
        trees = List.copyOf(trees);
        equations = Map.copyOf(equations);
        remeasure = List.copyOf(remeasure);
    }
}
