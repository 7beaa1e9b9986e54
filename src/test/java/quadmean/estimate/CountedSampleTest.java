package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.PlotFacts;
import quadmean.model.ProductRule;
import quadmean.model.Stratum;
import quadmean.model.Sweep;
import quadmean.stats.MeanEstimate;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;

/** Few points, worked by hand: basal area factor 2 m²/ha, trees of one basal area and so many m³ to each m² of it. */
class CountedSampleTest {
    private static final double DBH = 30;
    private static final List<Stratum> STAND = List.of(new Stratum("stand", "", 10));
    private static final PlotDesign.Point SOME =
            new PlotDesign.Point(2, Sweep.FULL, new Measuring.SomePoints(Set.of("1", "2")));
    private static final PlotDesign.Point TWO = new PlotDesign.Point(2, Sweep.FULL, new Measuring.LargerFactor(8));

    /** Basal area by count 6, 10, 8, 4, 12 m²/ha; volume 60 and 120 m³/ha on the two measured points. */
    private static final List<SampledPlot> SOME_POINTS = List.of(
            point("1", 0, stems("X", 3, 10)),
            point("2", 0, join(stems("X", 2, 12), stems("Y", 3, 12))),
            point("3", 4, List.of()),
            point("4", 2, List.of()),
            point("5", 6, List.of()));

    /** Basal area by count 8, 12, 4 m²/ha, of the measured trees 8, 0, 8; volume 80, 0 and 96 m³/ha. */
    private static final List<SampledPlot> TWO_FACTORS =
            List.of(point("1", 3, stems("X", 1, 10)), point("2", 6, List.of()), point("3", 1, stems("X", 1, 12)));

    private static SampledPlot point(String id, int counted, List<Stem> stems) {
        Set<Attribute> counts = Set.of(Attribute.TREES, Attribute.BASAL_AREA);
        return new SampledPlot(
                id,
                "stand",
                stems,
                1,
                PlotFacts.NONE,
                counted == 0 ? List.of() : List.of(new CountedStem("X", counted, counts, 0)));
    }

    private static List<Stem> stems(String species, int n, double volumePerBasalArea) {
        return Collections.nCopies(n, new Stem(species, DBH, volumePerBasalArea * BasalArea.ofTree(DBH)));
    }

    private static List<Stem> join(List<Stem> a, List<Stem> b) {
        return java.util.stream.Stream.concat(a.stream(), b.stream()).toList();
    }

    private static MeanEstimate mean(
            List<SampledPlot> points,
            PlotDesign.Point design,
            ProductRule rule,
            Attribute attribute,
            Predicate<Stem> filter) {
        StratifiedSample plain = StratifiedSample.of(STAND, points, Stands.settings(design));
        return new CountedSample(plain, design, rule).mean(PlotValue.of(design, attribute, filter));
    }

    /**
     * Basal area 8 ± √2 m²/ha; ratio 180/16 = 11.25 with variance 112.5/(2·8²). Bruce: 11.25²·2 + 8²·0.87890625. Goodman: less
     * 2·0.87890625. Double sampling: 112.5/2 + (1800 - 112.5)/5.
     */
    @ParameterizedTest
    @CsvSource({"BRUCE, 309.375", "GOODMAN, 307.6171875", "DOUBLE_SAMPLING, 393.75"})
    void volumeFromTwoMeasuredPointsOfFive(ProductRule rule, double variance) {
        MeanEstimate volume = mean(SOME_POINTS, SOME, rule, Attribute.VOLUME, s -> true);
        Tolerance.ROUNDING.check(90, volume.mean(), "mean");
        Tolerance.ROUNDING.check(variance, volume.variance(), "variance");
    }

    /**
     * Basal area 8 m²/ha, variance 16/3; ratio 176/16 = 11 with variance 64/(3·(16/3)²) = 0.75. Bruce: 11²·16/3 + 8²·0.75. With what they
     * have in common: of 76, 132 and 56, which are x·11 + 1.5·(y - 11·z), the variance 1552 over 3.
     */
    @ParameterizedTest
    @CsvSource({"BRUCE, 693.333333333333", "GOODMAN, 689.333333333333", "DOUBLE_SAMPLING, 517.333333333333"})
    void volumeByASecondFactor(ProductRule rule, double variance) {
        MeanEstimate volume = mean(TWO_FACTORS, TWO, rule, Attribute.VOLUME, s -> true);
        Tolerance.ROUNDING.check(88, volume.mean(), "mean");
        Tolerance.ROUNDING.check(variance, volume.variance(), "variance");
    }

    /** Measured trees are counted too: 5 points of variance 10 whatever is measured. */
    @ParameterizedTest
    @CsvSource({"BRUCE", "GOODMAN", "DOUBLE_SAMPLING"})
    void basalAreaIsThatOfAllCounts(ProductRule rule) {
        MeanEstimate area = mean(SOME_POINTS, SOME, rule, Attribute.BASAL_AREA, s -> true);
        Tolerance.ROUNDING.check(8, area.mean(), "mean");
        Tolerance.ROUNDING.check(2, area.variance(), "variance");
        assertEquals(4, area.df(), "degrees of freedom");
    }

    /** Of 16 m²/ha measured 10 are X and 6 are Y: 8 m²/ha are shared as 5 and 3. */
    @ParameterizedTest
    @CsvSource({"X, 5", "Y, 3"})
    void speciesShareTheCountsAsTheyDoTheMeasuredTrees(String species, double expected) {
        MeanEstimate area = mean(
                SOME_POINTS,
                SOME,
                ProductRule.BRUCE,
                Attribute.BASAL_AREA,
                s -> s.species().equals(species));
        Tolerance.ROUNDING.check(expected, area.mean(), species);
        assertTrue(area.se() > Math.sqrt(2) * expected / 8, "a share has an error of its own");
    }

    @Test
    void whatWasNotMeasuredAnywhereIsAZero() {
        MeanEstimate none = mean(SOME_POINTS, SOME, ProductRule.BRUCE, Attribute.VOLUME, s -> false);
        assertEquals(0, none.mean());
        assertEquals(0, none.se());
    }

    @Test
    void withoutAMeasuredPointThereIsNoEstimate() {
        List<SampledPlot> counts = SOME_POINTS.subList(2, 5);
        assertTrue(Double.isNaN(mean(counts, SOME, ProductRule.BRUCE, Attribute.VOLUME, s -> true)
                .mean()));
        EstimateRow row = StandEstimator.estimate(STAND, counts, Stands.settings(SOME)).rows().stream()
                .filter(r -> r.attribute() == Attribute.VOLUME)
                .findFirst()
                .orElseThrow();
        assertTrue(Double.isNaN(row.mean()), row::toString);
    }

    /** Plots needed are left open: the error goes by the number of counts and of measured points. */
    @Test
    void plotsNeededAreNotKnown() {
        PlotsNeeded needed = StandEstimator.estimate(STAND, SOME_POINTS, Stands.settings(SOME))
                .needed()
                .get(0);
        assertTrue(needed.needed().isEmpty());
        assertEquals("the error does not go by the number of plots alone", needed.remark());
    }
}
