package quadmean.report;

import java.util.List;
import quadmean.chart.SpeciesColours;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.EstateResult;
import quadmean.cruise.WoodUsed;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;

/**
 * Estimates with all that their tables need: the same for a stand and for an estate.
 *
 * @param design the design, for units, currency and names
 * @param used what stands behind the wood
 * @param confidence confidence level of the limits, in (0, 1)
 * @param rows the estimates
 * @param colours colours of the species
 */
record ShownRows(Design design, WoodUsed used, double confidence, List<EstimateRow> rows, SpeciesColours colours) {
    static ShownRows of(CruiseResult result) {
        return new ShownRows(
                result.design(),
                result.used(),
                result.estimate().confidence(),
                result.estimate().rows(),
                SpeciesColours.of(result));
    }

    static ShownRows of(EstateResult result) {
        return new ShownRows(
                result.design(),
                result.used(),
                result.estimate().confidence(),
                result.estimate().rows(),
                SpeciesColours.of(result.estimate().species()));
    }

    /** How far what stands behind a row can be trusted; empty where nothing does or all of it is verified. */
    String standing(EstimateRow row) {
        return Wording.standing(used, row.attribute(), row.species());
    }
}
