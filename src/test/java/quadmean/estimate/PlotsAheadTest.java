package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.estimate.PlotsNeeded.Verdict;
import quadmean.model.DegreesRule;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.Stratum;
import quadmean.stats.Allocation;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;

class PlotsAheadTest {
    private static final List<Stratum> ONE = List.of(new Stratum("stand", "whole stand", 20));

    /**
     * R 4.2.2: n searched upward from 12, shares of n rounded by largest remainders and none below the plots run;
     * 100·qt(.975, n-2)·sqrt(sum(W^2·s^2/n_h))/mean, and pchisq(df·(15/error)^2, df) with Satterthwaite's df.
     */
    @ParameterizedTest
    @CsvSource({"PROPORTIONAL,50,17,14.7629508744,0.5854871693,78,83", "NEYMAN,33,24,14.9858063921,0.5293127930,65,70"})
    void twoStrataAsInR(Allocation allocation, int a, int b, double error, double assurance, int for80, int for90) {
        PlotsNeeded needed = needed(Stands.TWO_STRATA, freely(15), two());
        Tolerance.R_SCRIPT.check(36.9425905010, needed.achievedPercent(), "error now");
        PlotShares shares = needed.shares().stream()
                .filter(s -> s.allocation() == allocation)
                .findFirst()
                .orElseThrow();
        assertEquals(List.of(new StratumPlots("A", 8, a), new StratumPlots("B", 4, b)), shares.strata());
        Tolerance.R_SCRIPT.check(error, shares.expectedErrorPercent(), "expected error");
        Tolerance.R_SCRIPT.check(assurance, shares.assurance(), "assurance");
        assertEquals(OptionalInt.of(for80), shares.plotsFor80());
        assertEquals(OptionalInt.of(for90), shares.plotsFor90());
        assertEquals(a + b - 12, shares.more());
    }

    /** What is needed in all is what strata need together, and the first way of sharing them gives the total. */
    @ParameterizedTest
    @ValueSource(longs = {12, 13, 14})
    void strataAddUpAndNoneLosesAPlot(long seed) {
        PlotsNeeded needed = needed(Stands.TWO_STRATA, freely(10), Stands.random(seed));
        assertEquals(Verdict.MISSED, needed.verdict());
        assertEquals(OptionalInt.of(needed.shares().get(0).needed()), needed.needed());
        for (PlotShares shares : needed.shares()) {
            assertTrue(shares.strata().stream().allMatch(s -> s.needed() >= s.run()));
            assertTrue(shares.expectedErrorPercent() <= 10);
            assertEquals(19, shares.gain().get(0).plots());
            assertTrue(shares.gain().get(shares.gain().size() - 1).plots() > shares.needed());
            Tolerance.ROUNDING.check(
                    needed.achievedPercent(), shares.gain().get(0).errorPercent(), "the curve starts at the error now");
        }
    }

    @Test
    void whenTheTargetIsMetNoneIsStillToRun() {
        PlotsNeeded needed = needed(Stands.TWO_STRATA, freely(90), two());
        assertEquals(Verdict.MET, needed.verdict());
        assertTrue(needed.shares().stream().allMatch(s -> s.more() == 0 && s.needed() == 12));
        assertTrue(needed.needed().getAsInt() <= 12, "fewer would have done");
    }

    @Test
    void aStratumWithOnePlotIsToBeGivenASecond() {
        List<SampledPlot> plots = new ArrayList<>(two().subList(0, 9));
        PlotsNeeded needed = needed(Stands.TWO_STRATA, freely(15), plots);
        assertTrue(needed.shares().isEmpty());
        assertTrue(needed.remark().contains("one plot in B shows no variation"), needed.remark());
    }

    @Test
    void plotsWithoutSpreadAreEnough() {
        List<SampledPlot> same = List.of(plot("1", "stand", 5), plot("2", "stand", 5));
        PlotsNeeded needed = needed(ONE, freely(15), same);
        assertEquals(Verdict.MET, needed.verdict());
        assertEquals(OptionalInt.of(2), needed.needed());
        assertEquals(0, needed.shares().get(0).more());
        assertEquals(1, needed.shares().get(0).assurance());
    }

    @Test
    void aTargetOutOfReachIsSaid() {
        PlotsNeeded needed = needed(ONE, freely(1e-4), of("stand", 1, 5, 9));
        assertEquals(OptionalInt.empty(), needed.needed());
        assertTrue(needed.remark().contains("out of reach"), needed.remark());
    }

    /** 20 ha hold 20 plots of 1 ha: with the correction a census has no error. */
    @Test
    void atMostACensus() {
        EstimateSettings corrected = settings(1e-4, FinitePopulation.CORRECT);
        PlotShares shares =
                needed(ONE, corrected, of("stand", 1, 5, 9)).shares().get(0);
        assertEquals(20, shares.needed());
        assertEquals(0, shares.expectedErrorPercent());
        assertEquals(OptionalInt.of(20), shares.plotsFor90());
    }

    @Test
    void nothingIsNeededOfNothing() {
        PlotsNeeded needed = needed(ONE, freely(15), of("stand", 0, 0));
        assertEquals(OptionalInt.empty(), needed.needed());
        assertTrue(needed.remark().contains("not above zero"), needed.remark());
    }

    private static PlotsNeeded needed(List<Stratum> strata, EstimateSettings settings, List<SampledPlot> plots) {
        return StandEstimator.estimate(strata, plots, settings).needed().get(0);
    }

    private static List<SampledPlot> two() {
        List<SampledPlot> plots = new ArrayList<>(of("A", 3, 5, 8, 4, 9, 6, 7, 2));
        plots.addAll(of("B", 1, 2, 9, 12));
        return plots;
    }

    private static List<SampledPlot> of(String stratum, double... values) {
        List<SampledPlot> plots = new ArrayList<>();
        for (double v : values) {
            plots.add(plot(stratum + plots.size(), stratum, v));
        }
        return plots;
    }

    /** A plot of so many cubic metres per hectare. */
    private static SampledPlot plot(String id, String stratum, double value) {
        return new SampledPlot(id, stratum, List.of(new Stem("X", 20, value)));
    }

    private static EstimateSettings freely(double targetErrorPercent) {
        return settings(targetErrorPercent, FinitePopulation.IGNORE);
    }

    private static EstimateSettings settings(double targetErrorPercent, FinitePopulation finite) {
        return new EstimateSettings(
                new PlotDesign.Fixed(1),
                finite,
                DegreesRule.PLOTS_MINUS_STRATA,
                0.95,
                targetErrorPercent,
                Attribute.VOLUME,
                5,
                "");
    }
}
