package quadmean.estimate;

import java.util.List;
import java.util.Optional;
import quadmean.units.Attribute;
import quadmean.units.Basis;

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

    /** The row of a stratum; {@link EstimateRow#ALL} for the estate as a whole. */
    public Optional<EstimateRow> row(String stratum, String species, Attribute attribute, Basis basis) {
        return rows.stream()
                .filter(r -> r.stratum().equals(stratum)
                        && r.species().equals(species)
                        && r.attribute() == attribute
                        && r.basis() == basis)
                .findFirst();
    }

    /** The species found, by code. */
    public List<String> species() {
        return rows.stream()
                .map(EstimateRow::species)
                .filter(s -> !s.equals(EstimateRow.ALL))
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Whether an estimate of the estate meets a target.
     *
     * @param targetPercent allowed sampling error (percent)
     */
    public PlotsNeeded.Verdict verdict(Attribute attribute, double targetPercent) {
        double error = row(EstimateRow.ALL, EstimateRow.ALL, attribute, Basis.TOTAL)
                .map(EstimateRow::samplingErrorPercent)
                .orElse(Double.NaN);
        return PlotsNeeded.Verdict.of(error, targetPercent);
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
