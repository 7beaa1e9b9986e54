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
 * @param plotCost cost of a plot where it is not that of the whole cruise
 * @param fewestPlots plots that a plan gives it at least, 2 or more
 */
public record StratumEntry(
        Stratum stratum,
        List<String> plots,
        OptionalDouble expectedMean,
        OptionalDouble expectedCvPercent,
        OptionalDouble plotCost,
        int fewestPlots) {
    /** A standard error takes two plots. */
    static final int FEWEST = 2;

    public StratumEntry {
        plots = List.copyOf(plots);
    }

    /** A stratum of which nothing is expected. */
    public static StratumEntry of(Stratum stratum, List<String> plots) {
        return new StratumEntry(
                stratum, plots, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), FEWEST);
    }

    /** Whether it stands for a stand that the design does not divide. */
    public boolean isUndivided() {
        return stratum.code().equals(StrataParser.WHOLE);
    }
}
