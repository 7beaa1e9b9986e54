package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.estimate.PlotsNeeded.Verdict;
import quadmean.model.PlotDesign;
import quadmean.model.Stratum;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

class StandEstimatorTest {
    private static final EstimateSettings POINTS = Stands.settings(new PlotDesign.Point(4));
    private static final List<Stratum> ONE = List.of(new Stratum("stand", "whole stand", 20));

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theOrderOfPlotsChangesNoEstimate(long seed) {
        List<SampledPlot> plots = Stands.random(seed);
        List<SampledPlot> shuffled = new ArrayList<>(plots);
        Collections.shuffle(shuffled, new Random(seed));
        List<EstimateRow> before = estimate(plots).rows();
        List<EstimateRow> after = estimate(shuffled).rows();
        for (int i = 0; i < before.size(); i++) {
            same(before.get(i), after.get(i), 1, "seed " + seed);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {6, 7, 8})
    void scalingVolumesScalesTotalsAndErrors(long seed) {
        List<SampledPlot> plots = Stands.random(seed);
        List<SampledPlot> threefold = plots.stream()
                .map(p -> new SampledPlot(
                        p.id(),
                        p.stratum(),
                        p.stems().stream()
                                .map(s -> new Stem(
                                        s.species(), s.dbhCm(), 3 * s.wood().volumeM3()))
                                .toList()))
                .toList();
        for (Basis basis : List.of(Basis.PER_AREA, Basis.TOTAL)) {
            EstimateRow before = row(estimate(plots), "*", "*", Attribute.VOLUME, basis);
            EstimateRow after = row(estimate(threefold), "*", "*", Attribute.VOLUME, basis);
            same(before, after, 3, "seed " + seed);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {9, 10, 11})
    void strataAndSpeciesAddUp(long seed) {
        StandEstimate e = estimate(Stands.random(seed));
        for (Attribute attribute : List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME)) {
            double all = row(e, "*", "*", attribute, Basis.TOTAL).mean();
            double strata = row(e, "A", "*", attribute, Basis.TOTAL).mean()
                    + row(e, "B", "*", attribute, Basis.TOTAL).mean();
            double species = List.of("X", "Y", "Z").stream()
                    .mapToDouble(s -> row(e, "*", s, attribute, Basis.TOTAL).mean())
                    .sum();
            Tolerance.ROUNDING.check(all, strata, "sum of strata");
            Tolerance.ROUNDING.check(all, species, "sum of species");
        }
    }

    @Test
    void onPointsEachTreeCarriesTheFactorInBasalArea() {
        StandEstimate e = StandEstimator.estimate(
                ONE, List.of(Stands.plot("1", "stand", 20, 35, 50), Stands.plot("2", "stand", 8)), POINTS);
        // (3·4 + 1·4)/2 = 8 m²/ha, by definition of the factor
        Tolerance.ROUNDING.check(
                8, row(e, "*", "*", Attribute.BASAL_AREA, Basis.PER_AREA).mean(), "basal area");
        Tolerance.ROUNDING.check(
                160, row(e, "*", "*", Attribute.BASAL_AREA, Basis.TOTAL).mean(), "on 20 ha");
    }

    /** Trees of 10, 20 and 30 cm on a fixed plot have a quadratic mean diameter of 21.6025 cm (by definition). */
    @Test
    void quadraticMeanDiameterIsARatio() {
        StandEstimate e = StandEstimator.estimate(
                ONE,
                List.of(Stands.plot("1", "stand", 10, 20, 30), Stands.plot("2", "stand", 10, 20, 30)),
                Stands.settings(new PlotDesign.Fixed(0.1)));
        EstimateRow qmd = row(e, "*", "*", Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO);
        Tolerance.printed(4).check(21.6025, qmd.mean(), "quadratic mean diameter");
        assertEquals(0, qmd.se(), 1e-9, "two plots alike leave no error");
    }

    /** One tree has a diameter and no error: a ratio of one plot to itself has no residual (by algebra). */
    @Test
    void aSpeciesOnFewPlotsHasADiameterWithoutAnError() {
        List<SampledPlot> plots = new ArrayList<>();
        for (int i = 1; i <= 5; i++) {
            plots.add(Stands.plot(String.valueOf(i), "stand", 20 + i));
        }
        plots.add(new SampledPlot("6", "stand", List.of(new Stem("RARE", 40, 1))));
        StandEstimate e = StandEstimator.estimate(ONE, plots, POINTS);
        EstimateRow rare = row(e, "*", "RARE", Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO);
        Tolerance.ROUNDING.check(40, rare.mean(), "diameter");
        assertTrue(Double.isNaN(rare.se()) && Double.isNaN(rare.lower()));
        assertEquals("no standard error: trees on fewer than 3 plots", rare.reason());
        assertFalse(Double.isNaN(
                row(e, "*", "X", Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO).se()));
    }

    @Test
    void aStratumWithOnePlotHasNoErrorAndSaysSo() {
        List<SampledPlot> plots =
                List.of(Stands.plot("1", "A", 20), Stands.plot("2", "A", 30, 30), Stands.plot("3", "B", 25));
        StandEstimate e = StandEstimator.estimate(Stands.TWO_STRATA, plots, POINTS);
        EstimateRow whole = row(e, "*", "*", Attribute.BASAL_AREA, Basis.PER_AREA);
        assertTrue(Double.isNaN(whole.se()) && Double.isNaN(whole.df()) && Double.isNaN(whole.lower()));
        assertTrue(whole.reason().contains("one plot in B"), whole.reason());
        assertTrue(e.notes().get(0).contains("One plot only in B"), e.notes().toString());
        assertEquals("", row(e, "A", "*", Attribute.BASAL_AREA, Basis.PER_AREA).reason());
        assertEquals(Verdict.UNKNOWN, e.needed().get(0).verdict());
        assertEquals(OptionalInt.empty(), e.needed().get(0).needed());
        assertEquals(OptionalInt.empty(), e.needed().get(0).more());
    }

    @Test
    void aStratumWithoutPlotsCannotBeEstimated() {
        List<SampledPlot> plots = List.of(Stands.plot("1", "A", 20), Stands.plot("2", "A", 30));
        assertThrows(IllegalArgumentException.class, () -> StandEstimator.estimate(Stands.TWO_STRATA, plots, POINTS));
    }

    @Test
    void emptyPlotsCountAsZero() {
        StandEstimate e = StandEstimator.estimate(
                ONE, List.of(Stands.plot("1", "stand", 20, 20), Stands.plot("2", "stand")), POINTS);
        assertEquals(4, row(e, "*", "*", Attribute.BASAL_AREA, Basis.PER_AREA).mean(), 1e-12);
    }

    @Test
    void aStandWithoutTreesIsReportedNotRefused() {
        StandEstimate e =
                StandEstimator.estimate(ONE, List.of(Stands.plot("1", "stand"), Stands.plot("2", "stand")), POINTS);
        EstimateRow trees = row(e, "*", "*", Attribute.TREES, Basis.PER_AREA);
        assertEquals(0, trees.mean());
        assertEquals("no trees tallied here", trees.reason());
        EstimateRow qmd = row(e, "*", "*", Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO);
        assertTrue(Double.isNaN(qmd.mean()));
        assertEquals("no trees tallied here", qmd.reason());
        assertTrue(e.structure().classes().isEmpty());
    }

    @Test
    void unknownVolumesStayUnknownWithTheirReason() {
        EstimateSettings noVolume = new EstimateSettings(
                POINTS.plot(),
                POINTS.finitePopulation(),
                POINTS.degreesRule(),
                0.95,
                10,
                Attribute.BASAL_AREA,
                5,
                "no height");
        SampledPlot unknown = new SampledPlot("1", "stand", List.of(new Stem("X", 30, Double.NaN)));
        StandEstimate e = StandEstimator.estimate(ONE, List.of(unknown, Stands.plot("2", "stand", 20)), noVolume);
        EstimateRow volume = row(e, "*", "*", Attribute.VOLUME, Basis.PER_AREA);
        assertTrue(Double.isNaN(volume.mean()));
        assertEquals("no height", volume.reason());
        assertFalse(
                Double.isNaN(row(e, "*", "*", Attribute.TREES, Basis.PER_AREA).mean()));
    }

    @Test
    void theTargetIsMetOrMissed() {
        List<SampledPlot> even = List.of(
                Stands.plot("1", "stand", 20, 20),
                Stands.plot("2", "stand", 20, 20.1),
                Stands.plot("3", "stand", 20, 20.2));
        PlotsNeeded met = StandEstimator.estimate(ONE, even, POINTS).needed().get(0);
        assertEquals(Verdict.MET, met.verdict());
        assertEquals(OptionalInt.of(0), met.more());
        PlotsNeeded missed = StandEstimator.estimate(Stands.TWO_STRATA, Stands.random(12), POINTS)
                .needed()
                .get(0);
        assertEquals(Verdict.MISSED, missed.verdict());
        assertEquals(missed.needed().getAsInt() - 19, missed.more().getAsInt());
    }

    @Test
    void theRunningMeanEndsAtTheEstimateAndWaitsForEveryStratum() {
        List<SampledPlot> plots = Stands.random(13);
        StandEstimate e = estimate(plots);
        RunningMean last = e.running().get(e.running().size() - 1);
        EstimateRow whole = row(e, "*", "*", Attribute.VOLUME, Basis.PER_AREA);
        assertEquals(whole.mean(), last.mean());
        assertEquals(whole.lower(), last.lower());
        assertTrue(Double.isNaN(e.running().get(11).mean()), "no plot of B yet");
        assertTrue(Double.isNaN(e.running().get(12).lower()), "one plot of B");
    }

    @Test
    void thousandsOfPlotsGiveARunningMeanOfAFewHundredSteps() {
        List<SampledPlot> many = new ArrayList<>();
        for (int i = 0; i < 1203; i++) {
            many.add(Stands.plot(String.valueOf(i), "stand", 20 + i % 7));
        }
        List<RunningMean> running = StandEstimator.estimate(ONE, many, POINTS).running();
        assertTrue(running.size() < 500, running.size() + " steps");
        assertEquals(1203, running.get(running.size() - 1).plots());
    }

    /** A tree on a class limit goes to the class that starts there (common practice, no source), in inches as well. */
    @Test
    void aTreeOnALimitGoesUp() {
        EstimateSettings inches = new EstimateSettings(
                POINTS.plot(), POINTS.finitePopulation(), POINTS.degreesRule(), 0.95, 10, Attribute.TREES, 5.08, "");
        for (int inch = 2; inch <= 60; inch += 2) {
            StandEstimate e = StandEstimator.estimate(ONE, List.of(Stands.plot("1", "stand", inch * 2.54)), inches);
            assertEquals(inch, Math.round(e.structure().sizes().get(0).lowerCm() / 2.54), inch + " in");
        }
    }

    private static StandEstimate estimate(List<SampledPlot> plots) {
        return StandEstimator.estimate(Stands.TWO_STRATA, plots, POINTS);
    }

    private static EstimateRow row(StandEstimate e, String stratum, String species, Attribute a, Basis basis) {
        return e.row(stratum, species, a, basis).orElseThrow();
    }

    private static void same(EstimateRow before, EstimateRow after, double k, String seed) {
        assertEquals(before.species(), after.species());
        double[] expected = {before.mean(), before.se(), before.lower(), before.upper()};
        double[] actual = {after.mean(), after.se(), after.lower(), after.upper()};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(k * expected[i], actual[i], 1e-9 * (1 + Math.abs(k * expected[i])), seed + " " + before);
        }
    }
}
