package quadmean.estimate;

import java.util.List;

/**
 * What is estimated of an estate as a whole and of its strata, in metric units.
 *
 * @param confidence confidence level of all limits, in (0, 1)
 * @param rows estimates by stratum of stands, species, attribute and basis
 * @param stands what the stands are
 * @param strata the strata and what their stands are, by code; none if the estate has only one
 * @param notes what a reader should know, in sentences
 */
public record EstateEstimate(
        double confidence, List<EstimateRow> rows, Extent stands, List<StratumExtent> strata, List<String> notes) {
    public EstateEstimate {
        rows = List.copyOf(rows);
        strata = List.copyOf(strata);
        notes = List.copyOf(notes);
    }

    /**
     * How much ground is behind an estimate.
     *
     * @param stands stands with plots
     * @param areaHa their area (ha), which totals are of
     * @param plots their plots
     * @param onePlot how many of them have a single plot
     * @param withoutPlots stands without plots, which are left out
     * @param areaWithoutHa their area (ha)
     */
    public record Extent(int stands, double areaHa, long plots, int onePlot, int withoutPlots, double areaWithoutHa) {}

    /**
     * A stratum.
     *
     * @param code its code
     * @param extent its stands
     */
    public record StratumExtent(String code, Extent extent) {}
}
