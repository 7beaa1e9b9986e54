package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static quadmean.support.ReferenceFiles.example;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Sweep;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Unit;

class ExpansionTest {

    /**
     * Southern Regional Extension Forestry, table of trees per acre at factor 10: printed from basal areas rounded to
     * 0.001 ft², so the check is against the exact column of the reference file and that column is near the printed one.
     */
    @Test
    void treesPerAcreAtFactorTen() {
        JsonNode rows = example("baf10-table-basal-area-tpa").get("recomputed");
        PlotDesign point = point(10);
        for (int inches = 4; inches <= 40; inches++) {
            JsonNode row = rows.get(String.valueOf(inches));
            if (row != null) {
                Tolerance.ROUNDING.check(number(row.get("TPA_exact")), perAcre(point, inches), inches + " in");
            }
        }
    }

    /** Tree factors of a 14-inch tree and of a 30-cm tree, computed from the definition and printed to these digits. */
    @ParameterizedTest
    @CsvSource({"10, 9.354", "20, 18.709", "40, 37.418"})
    void fourteenInchTree(double factor, double expected) {
        Tolerance.printed(3).check(expected, perAcre(point(factor), 14), "trees per acre");
    }

    @ParameterizedTest
    @CsvSource({"1, 14.15", "2, 28.29", "4, 56.59"})
    void thirtyCentimetreTree(double factor, double expected) {
        Tolerance.printed(2).check(expected, Expansion.treesPerHa(new PlotDesign.Point(factor), 30), "trees per ha");
    }

    /** By definition: 10 000 m² over the strip's 10 m × 50 m; a half or quarter sweep stands for the whole circle. */
    @Test
    void stripsAndPartsOfASweep() {
        assertEquals(20, Expansion.treesPerHa(new PlotDesign.Strip(10, 50), 12), 1e-12);
        double full = Expansion.treesPerHa(new PlotDesign.Point(4), 30);
        assertEquals(2 * full, Expansion.treesPerHa(swept(Sweep.HALF), 30), 1e-12);
        assertEquals(4 * full, Expansion.treesPerHa(swept(Sweep.QUARTER), 30), 1e-12);
        PlotDesign two = new PlotDesign.Point(4, Sweep.FULL, new Measuring.LargerFactor(12));
        assertEquals(3 * full, Expansion.treesPerHa(two, 30), 1e-12, "a tree that the larger factor chose");
    }

    private static PlotDesign swept(Sweep sweep) {
        return new PlotDesign.Point(4, sweep, new Measuring.All());
    }

    /** A row counts as many trees as the boundary has it: two on one plot of 0.1 ha are 20 to the hectare. */
    @Test
    void aTreeReachedTwiceCountsTwice() {
        PlotDesign tenth = new PlotDesign.Fixed(0.1);
        Stem once = new Stem("X", 30, 1);
        Stem twice = new Stem("X", 30, Double.NaN, once.wood(), 2, once.counts());
        for (Attribute attribute : List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME)) {
            var value = PlotValue.of(tenth, attribute, s -> true);
            assertEquals(
                    2 * value.applyAsDouble(new SampledPlot("1", "stand", List.of(once))),
                    value.applyAsDouble(new SampledPlot("1", "stand", List.of(twice))),
                    1e-12);
        }
    }

    @Test
    void aFixedPlotGivesEachTreeTheSameFactor() {
        PlotDesign tenth = new PlotDesign.Fixed(Unit.ACRE.convert(0.1, Unit.HECTARE));
        Tolerance.ROUNDING.check(10, perAcre(tenth, 5), "1/10 acre");
        Tolerance.ROUNDING.check(10, perAcre(tenth, 35), "1/10 acre");
    }

    /** A tree on a class limit belongs to the class that starts there (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"4.9, 0", "5, 200", "9.9, 200", "10, 100", "29.99, 100", "30, 25", "80, 25"})
    void aNestedTreeCountsOnOneRingOnly(double dbhCm, double treesPerHa) {
        PlotDesign nested = new PlotDesign.Nested(
                List.of(new PlotDesign.Ring(5, 0.005), new PlotDesign.Ring(10, 0.01), new PlotDesign.Ring(30, 0.04)));
        assertEquals(treesPerHa, Expansion.treesPerHa(nested, dbhCm), 1e-9);
    }

    @Test
    void sizesAreAboveZeroAndRingsAscend() {
        assertThrows(IllegalArgumentException.class, () -> new PlotDesign.Fixed(0));
        assertThrows(IllegalArgumentException.class, () -> new PlotDesign.Point(Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> new PlotDesign.Nested(List.of(new PlotDesign.Ring(10, 1), new PlotDesign.Ring(10, 2))));
    }

    private static PlotDesign point(double squareFeetPerAcre) {
        return new PlotDesign.Point(
                Unit.SQUARE_FEET_PER_ACRE.convert(squareFeetPerAcre, Unit.SQUARE_METRES_PER_HECTARE));
    }

    private static double perAcre(PlotDesign plot, double inches) {
        double perHa = Expansion.treesPerHa(plot, Unit.INCH.convert(inches, Unit.CENTIMETRE));
        return Unit.TREES_PER_HECTARE.convert(perHa, Unit.TREES_PER_ACRE);
    }
}
