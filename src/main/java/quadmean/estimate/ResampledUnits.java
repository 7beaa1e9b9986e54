package quadmean.estimate;

import java.util.List;
import quadmean.stats.ResampledStratum;

/**
 * The units that a bootstrap draws. The mean of a number over the stand is Σ weight·value.
 *
 * @param strata strata with their weights and numbers of units
 * @param units plots, stratum by stratum, within each in the order of their numbers, so that the order in which plots came in
 *     does not show
 */
public record ResampledUnits(List<ResampledStratum> strata, List<SampledPlot> units) {
    public ResampledUnits {
        strata = List.copyOf(strata);
        units = List.copyOf(units);
        int sum = strata.stream().mapToInt(ResampledStratum::units).sum();
        if (sum != units.size()) {
            throw new IllegalArgumentException("strata of " + sum + " units, but " + units.size() + " units");
        }
    }
}
