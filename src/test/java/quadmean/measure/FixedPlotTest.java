package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;
import quadmean.units.PlotOnSlope;
import quadmean.units.Unit;

class FixedPlotTest {
    private static final double FOOT = Unit.FOOT.convert(1, Unit.METRE);

    /** Formulary 4.1, from r = √(A/π). */
    @ParameterizedTest
    @CsvSource({"1000, 3.72", "300, 6.80", "100, 11.78", "50, 16.65", "20, 26.33", "10, 37.24", "5, 52.66"})
    void radiiOfPartsOfAnAcre(double part, double feet) {
        Tolerance.printed(2).check(feet, acres(1 / part).radius() / FOOT, "radius (ft)");
    }

    /** Formulary 4.1, from r = √(A/π). */
    @ParameterizedTest
    @CsvSource({
        "0.005, 3.989",
        "0.01, 5.642",
        "0.02, 7.979",
        "0.025, 8.921",
        "0.04, 11.284",
        "0.05, 12.616",
        "0.1, 17.841"
    })
    void radiiOfPartsOfAHectare(double hectares, double metres) {
        Tolerance.printed(3).check(metres, FixedPlot.ofArea(hectares).radius(), "radius (m)");
    }

    /** Formulary 4.1: 24.0 ft are 0.0415417 acre. */
    @Test
    void areaOfARadius() {
        double acres = Unit.HECTARE.convert(new FixedPlot(24 * FOOT).area(), Unit.ACRE);
        Tolerance.printed(7).check(0.0415417, acres, "area (ac)");
    }

    /** 'Point sampling or variable plot cruising' lecture (Kentucky), slides 13-14. */
    @Test
    void publishedRadiusOfAFifthAcre() {
        JsonNode e = ReferenceFiles.example("prf-constant-fifth-acre");
        double acres = ReferenceFiles.number(e.get("inputs").get("plot_acres"));
        double printed = ReferenceFiles.number(e.get("published").get("radius_ft"));
        Tolerance.printed(1).check(printed, acres(acres).radius() / FOOT, "radius (ft)");
    }

    /**
     * USDA Forest Service, Common Stand Exam field guide, fixed-radius appendix, table 1 (formulary 4.2): one cell holds
     * for a class of slopes; the middle of the class is checked, and for the flattest class level ground.
     */
    @ParameterizedTest
    @CsvSource({"10, 0, 37.2", "10, 24.5, 37.8", "10, 41, 38.7", "10, 50.5, 39.4", "300, 50, 7.2"})
    void largerRadiiOfTheAgencyTable(double part, double percent, double feet) {
        double radius = acres(1 / part).radiusOnSlope(new Slope(percent / 100));
        Tolerance.printed(1).check(feet, radius / FOOT, "radius on the slope (ft)");
    }

    /** Formulary 4.2: the length along the fall line used all round makes the plot larger by 4.4 and 11.8 %. */
    @ParameterizedTest
    @CsvSource({"30, 4.4", "50, 11.8"})
    void theSecantHoldsAlongTheFallLineOnly(double percent, double excess) {
        FixedPlot plot = FixedPlot.ofArea(0.04);
        Slope slope = new Slope(percent / 100);
        double larger = horizontalArea(plot.lengthAlongFallLine(slope), slope) / 0.04;
        Tolerance.printed(1).check(excess, 100 * (larger - 1), "excess (%)");
        Tolerance.ROUNDING.check(larger - 1, slope.errorOfIgnoring(), "secant - 1");
    }

    /** Property: a circle of the larger radius on a plane slope covers the horizontal area, an ellipse on the map. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 15, 45, 100})
    void theLargerRadiusKeepsTheArea(double percent) {
        Slope slope = new Slope(percent / 100);
        double radius = FixedPlot.ofArea(0.05).radiusOnSlope(slope);
        Tolerance.ROUNDING.check(0.05, horizontalArea(radius, slope), "area (ha)");
    }

    @Test
    void eachMethodHasItsOwnLimit() {
        FixedPlot plot = new FixedPlot(10);
        Slope fall = new Slope(0.75);
        Slope line = new Slope(0.5);
        Tolerance.ROUNDING.check(
                10 * Math.sqrt(1.25), plot.limit(PlotOnSlope.HORIZONTAL_DISTANCES, fall, line), "line to the tree");
        // √(1 + 0.75²) = 1.25
        Tolerance.ROUNDING.check(
                10 * Math.sqrt(1.25), plot.limit(PlotOnSlope.LARGER_RADIUS, fall, line), "larger radius");
        assertEquals(10, plot.limit(PlotOnSlope.HORIZONTAL_DISTANCES, fall, Slope.LEVEL));
    }

    @Test
    void sizesAreAboveZero() {
        assertThrows(IllegalArgumentException.class, () -> new FixedPlot(0));
        assertThrows(IllegalArgumentException.class, () -> FixedPlot.ofArea(-0.1));
    }

    private static double horizontalArea(double groundRadius, Slope slope) {
        return Math.PI * groundRadius * groundRadius * Math.cos(slope.angle()) / 10_000;
    }

    private static FixedPlot acres(double acres) {
        return FixedPlot.ofArea(Unit.ACRE.convert(acres, Unit.HECTARE));
    }
}
