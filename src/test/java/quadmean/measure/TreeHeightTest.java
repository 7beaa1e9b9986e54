package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static quadmean.support.ReferenceFiles.example;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;
import quadmean.units.Unit;

class TreeHeightTest {

    /** Computed from H = D·(tan t - tan b), which is a definition; printed to the millimetre or tenth of a foot. */
    @ParameterizedTest
    @CsvSource({
        "PERCENT, METRE, 30, 72, -6, 23.40, 2",
        "TOPOGRAPHIC, FOOT, 66, 95, -8, 103.0, 1",
        "DEGREES, METRE, 25, 41, -3.5, 23.261, 3",
        "PERCENT, FOOT, 80, 110, 12, 78.4, 1",
    })
    void readingsGiveTheHeightInAnyUnit(
            AngleScale scale, Unit unit, double distance, double top, double base, double expected, int decimals) {
        double metres = TreeHeight.fromReadings(scale, top, base, unit.convert(distance, Unit.METRE));
        Tolerance.printed(decimals).check(expected, Unit.METRE.convert(metres, unit), "height");
    }

    /** DeYoung, Forest Measurements: An Applied Approach, 2.3 example 1: the parts above and below the eye are printed. */
    @Test
    void percentScaleAtFiftyFeet() {
        JsonNode e = example("height-percent-50ft");
        JsonNode in = e.get("inputs");
        double metres = Unit.FOOT.convert(number(in.get("run_ft")), Unit.METRE);
        double height = TreeHeight.fromReadings(
                AngleScale.PERCENT, number(in.get("top_percent")), number(in.get("stump_percent")), metres);
        double printed = number(e.get("published").get("above_eye_ft"))
                + number(e.get("published").get("below_eye_ft"));
        Tolerance.ROUNDING.check(printed, Unit.METRE.convert(height, Unit.FOOT), "height");
    }

    /** DeYoung, Forest Measurements: An Applied Approach, 2.4, figure 2.8. */
    @Test
    void topographicScaleAtOneChainReadsFeet() {
        JsonNode e = example("height-topo-66ft");
        JsonNode in = e.get("inputs");
        double height = TreeHeight.fromReadings(
                AngleScale.TOPOGRAPHIC,
                number(in.get("top")),
                number(in.get("base")),
                Unit.CHAIN.convert(1, Unit.METRE));
        Tolerance.ROUNDING.check(
                number(e.get("published").get("height_ft")), Unit.METRE.convert(height, Unit.FOOT), "height");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -20, Double.NaN, Double.POSITIVE_INFINITY})
    void aDistanceIsAboveZero(double distance) {
        assertThrows(
                IllegalArgumentException.class, () -> TreeHeight.fromReadings(AngleScale.PERCENT, 80, -5, distance));
    }

    @Test
    void aReadingInDegreesStaysBelowTheZenith() {
        assertThrows(IllegalArgumentException.class, () -> TreeHeight.fromReadings(AngleScale.DEGREES, 90, -5, 20));
    }
}
