package quadmean.estimate;

import java.util.List;
import java.util.OptionalInt;
import quadmean.stats.Allocation;

/**
 * Plots needed, shared among strata in one way. Plots already run stay where they are.
 *
 * @param allocation how they are shared
 * @param strata plots of each stratum
 * @param expectedErrorPercent sampling error to expect of them (percent)
 * @param assurance probability that the sampling error then comes out at or below the target
 * @param plotsFor80 plots in all that reach the target with 80 % assurance; empty if out of reach
 * @param plotsFor90 the same with 90 %
 * @param gain expected sampling error against plots in all, from those run to beyond those needed
 */
public record PlotShares(
        Allocation allocation,
        List<StratumPlots> strata,
        double expectedErrorPercent,
        double assurance,
        OptionalInt plotsFor80,
        OptionalInt plotsFor90,
        List<GainPoint> gain) {
    public PlotShares {
        strata = List.copyOf(strata);
        gain = List.copyOf(gain);
    }

    /** Plots run in all strata. */
    public int run() {
        return strata.stream().mapToInt(StratumPlots::run).sum();
    }

    /** Plots needed in all strata. */
    public int needed() {
        return strata.stream().mapToInt(StratumPlots::needed).sum();
    }

    /** Plots still to run in all strata. */
    public int more() {
        return needed() - run();
    }
}
