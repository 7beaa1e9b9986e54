package quadmean.design;

import java.util.List;
import java.util.OptionalDouble;
import quadmean.model.Stratum;

/**
 * A stratum of the design.
 *
 * @param stratum code, name and area
 * @param plots plot numbers laid out in it; empty if the design does not list them
 * @param expectedMean mean of the target attribute expected before the cruise, in any unit that all strata share
 * @param expectedCvPercent coefficient of variation expected before the cruise (percent)
 */
public record StratumEntry(
        Stratum stratum, List<String> plots, OptionalDouble expectedMean, OptionalDouble expectedCvPercent) {
    public StratumEntry {
        plots = List.copyOf(plots);
    }

    /** Whether it stands for a stand that the design does not divide. */
    public boolean isUndivided() {
        return stratum.code().equals(StrataParser.WHOLE);
    }
}
