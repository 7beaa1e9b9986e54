package quadmean.cruise;

import java.util.List;
import java.util.Map;
import quadmean.design.Design;
import quadmean.estimate.EstateEstimate;
import quadmean.estimate.EstateEstimator;
import quadmean.estimate.EstateSpread;
import quadmean.height.FillingCurves;
import quadmean.model.Policy;
import quadmean.model.RowCount;
import quadmean.model.Rule;

/**
 * What came of an estate.
 *
 * @param design the design
 * @param files names of the tally files
 * @param rows the account of rows
 * @param problems number of problems by rule and policy
 * @param curves the height curves by region, in the order of the regions' names
 * @param fitted where they came from
 * @param stands estimates stand by stand, worked out when asked for
 * @param estimate the estate and its strata
 * @param notes what a reader should know of the trees, in sentences
 */
public record EstateResult(
        Design design,
        List<String> files,
        RowCount rows,
        Map<Rule, Map<Policy, Long>> problems,
        Map<String, FillingCurves> curves,
        CurveOrigin fitted,
        EstateEstimator stands,
        EstateEstimate estimate,
        List<String> notes) {
    public EstateResult {
        files = List.copyOf(files);
        notes = List.copyOf(notes);
    }

    /** What the wood of the species found is worked out with. */
    public WoodUsed used() {
        return EstateWood.of(design, estimate.species());
    }

    /** How the stands differ in the attribute of the target. */
    public EstateSpread spread() {
        return EstateSpread.of(
                stands, design.targetAttribute(), design.units(), design.targetErrorPercent(), estimate.confidence());
    }

    /** Where the height curves came from. */
    public enum CurveOrigin {
        /** Fitted to heights drawn from the tally. */
        FITTED,
        /** Read from a file. */
        GIVEN,
        /** There are no heights to fit any to. */
        NONE
    }
}
