package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;

class SlopeTest {
    /** Formulary 6.1: percent, degrees and secant of the same slope. */
    @ParameterizedTest
    @CsvSource({
        "5, 2.86, 1.0012",
        "10, 5.71, 1.0050",
        "20, 11.31, 1.0198",
        "30, 16.70, 1.0440",
        "40, 21.80, 1.0770",
        "50, 26.57, 1.1180",
        "60, 30.96, 1.1662",
        "80, 38.66, 1.2806",
        "100, 45.00, 1.4142",
    })
    void percentDegreesAndSecant(double percent, double degrees, double secant) {
        Slope slope = Slope.of(AngleScale.PERCENT, percent);
        Tolerance.printed(2).check(degrees, slope.on(AngleScale.DEGREES), "degrees");
        Tolerance.printed(2).check(degrees, Math.toDegrees(slope.angle()), "degrees of the angle");
        Tolerance.printed(4).check(secant, slope.secant(), "secant");
        Tolerance.ROUNDING.check(percent, slope.on(AngleScale.PERCENT), "percent");
    }

    /** Formulary 6.1: height error in percent when a slope distance is used as horizontal. */
    @ParameterizedTest
    @CsvSource({"10, 0.5", "20, 2.0", "30, 4.4", "40, 7.7", "50, 11.8"})
    void aSlopeDistanceTakenAsHorizontal(double percent, double error) {
        Slope slope = Slope.of(AngleScale.PERCENT, percent);
        Tolerance.printed(1).check(error, 100 * slope.errorOfIgnoring(), "error (%)");
        Readings r = new Readings(AngleScale.PERCENT, 70, -20);
        double wrong = new HorizontalSighting(r, 30).height();
        double right = new GroundSlopeSighting(r, 30, slope).height();
        Tolerance.printed(1).check(error, 100 * (wrong / right - 1), "error of the height (%)");
    }

    /**
     * FAO Training Series, Topography, chapter 4: percent of 9 degrees, 30 and 15 minutes. Not checked: 17 percent, which
     * the page makes by adding angles, and its degrees of 10, 5 and 2 percent, printed with small errors.
     */
    @Test
    void publishedDegreesGiveTheirPercent() {
        JsonNode e = ReferenceFiles.example("slope-percent-degrees");
        double[] degrees = ReferenceFiles.numbers(e.get("inputs").get("degrees"));
        JsonNode printed = e.get("published").get("percent_of");
        String[] names = {"9 deg", "30 min", "15 min"};
        for (int i = 0; i < names.length; i++) {
            double percent = Slope.of(AngleScale.DEGREES, degrees[i]).on(AngleScale.PERCENT);
            Tolerance.printed(2).check(ReferenceFiles.number(printed.get(names[i])), percent, names[i]);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-80, -12, 0, 30, 100})
    void horizontalAndSlopeDistancesGoBack(double percent) {
        Slope slope = Slope.of(AngleScale.PERCENT, percent);
        Tolerance.ROUNDING.check(32, slope.along(slope.horizontal(32)), "slope distance");
        Tolerance.ROUNDING.check(32 * Math.cos(slope.angle()), slope.horizontal(32), "S·cos θ");
    }

    @Test
    void aSlopeIsFinite() {
        assertThrows(IllegalArgumentException.class, () -> new Slope(Double.NaN));
        assertEquals(1, Slope.LEVEL.secant());
    }

    /** Formulary 6.4: +18.5 and -17.5 percent are a slope of 18.0 percent and an index error of +0.5 point. */
    @Test
    void twoWayCheckWithOneInstrument() {
        TwoWaySlope check = new TwoWaySlope(AngleScale.PERCENT, 18.5, -17.5, InstrumentUse.SAME_INSTRUMENT);
        Tolerance.ROUNDING.check(18.0, check.slope().on(AngleScale.PERCENT), "slope (%)");
        Tolerance.ROUNDING.check(0.5, check.indexError(), "index error (points)");
        Tolerance.ROUNDING.check(Math.atan(0.005), check.indexAngle(), "index error (radians)");
        assertFalse(check.isBeyondHalfUnit(), "half a unit is not beyond half a unit");
    }

    /** From the definition: in degrees an instrument that reads 1 high on a slope of 0.4 sees it up from both ends. */
    @Test
    void signsAreKeptOnNearlyLevelGround() {
        TwoWaySlope check = new TwoWaySlope(AngleScale.DEGREES, 1.4, 0.6, InstrumentUse.SAME_INSTRUMENT);
        Tolerance.ROUNDING.check(0.4, check.slope().on(AngleScale.DEGREES), "slope");
        Tolerance.ROUNDING.check(1, check.indexError(), "index error");
        assertTrue(check.isBeyondHalfUnit());
    }

    /** From the definition: instruments that read 0.8 and 0.2 high show their mean, and a slope off by 0.3. */
    @Test
    void twoInstrumentsShowTheMeanOfTheirErrors() {
        double slope = 12;
        TwoWaySlope check =
                new TwoWaySlope(AngleScale.DEGREES, slope + 0.8, -slope + 0.2, InstrumentUse.TWO_INSTRUMENTS);
        Tolerance.ROUNDING.check((0.8 + 0.2) / 2, check.indexError(), "mean index error");
        Tolerance.ROUNDING.check(slope + (0.8 - 0.2) / 2, check.slope().on(AngleScale.DEGREES), "slope");
    }

    @Test
    void readingsStayOnTheirScale() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new TwoWaySlope(AngleScale.DEGREES, 18, -95, InstrumentUse.SAME_INSTRUMENT));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TwoWaySlope(AngleScale.DEGREES, 91, -5, InstrumentUse.SAME_INSTRUMENT));
    }
}
