package quadmean.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class AngleScaleTest {
    private static final Tolerance TWO_DECIMALS = Tolerance.printed(2);

    /** Slopes in percent and in degrees: computed from percent = 100·tan(degrees), printed to 0.01 degree. */
    @ParameterizedTest
    @CsvSource({"5,2.86", "10,5.71", "20,11.31", "30,16.70", "40,21.80", "50,26.57", "60,30.96", "80,38.66", "100,45.00"
    })
    void percentAndDegreesOfTheSameSlopeAgree(double percent, double degrees) {
        double angle = Math.toDegrees(Math.atan(AngleScale.PERCENT.tangent(percent)));
        TWO_DECIMALS.check(degrees, angle, percent + " %");
        double slope = 100 * AngleScale.DEGREES.tangent(degrees);
        // 0.005 degree of rounding is worth at most 0.0175 percent points, at 45 degrees
        Tolerance.absolute("degrees printed with 2 decimals", 0.0175).check(percent, slope, degrees + " deg");
    }

    /** FAO Training Series, Topography, chapter 4: worked-examples.json slope-percent-degrees. */
    @Test
    void publishedDegreesGiveTheirPercent() {
        JsonNode e = ReferenceFiles.example("slope-percent-degrees");
        double[] degrees = ReferenceFiles.numbers(e.get("inputs").get("degrees"));
        JsonNode printed = e.get("published").get("percent_of");
        double[] percent = {
            ReferenceFiles.number(printed.get("9 deg")),
            ReferenceFiles.number(printed.get("30 min")),
            ReferenceFiles.number(printed.get("15 min"))
        };
        for (int i = 0; i < degrees.length; i++) {
            TWO_DECIMALS.check(percent[i], 100 * AngleScale.DEGREES.tangent(degrees[i]), degrees[i] + " deg");
        }
    }

    /** At one chain (66 ft) the topographic scale reads feet: +95 and -8 make 103 ft (by definition of the scale). */
    @Test
    void topographicScaleReadsFeetAtOneChain() {
        double height = 66 * (AngleScale.TOPOGRAPHIC.tangent(95) - AngleScale.TOPOGRAPHIC.tangent(-8));
        Tolerance.ROUNDING.check(103, height, "height (ft)");
    }

    /** DeYoung, Forest Measurements, section 2.4: worked-examples.json height-topo-66ft. */
    @Test
    void publishedTopographicReadingsGiveTheirHeight() {
        JsonNode e = ReferenceFiles.example("height-topo-66ft");
        JsonNode in = e.get("inputs");
        double rise = AngleScale.TOPOGRAPHIC.tangent(ReferenceFiles.number(in.get("top")))
                - AngleScale.TOPOGRAPHIC.tangent(ReferenceFiles.number(in.get("base")));
        double published = ReferenceFiles.number(e.get("published").get("height_ft"));
        Tolerance.ROUNDING.check(published, rise * ReferenceFiles.number(in.get("run_ft")), "height (ft)");
    }

    /** By definition: at the distance it was made for, such a scale reads metres of height. */
    @ParameterizedTest
    @CsvSource({"METRES_AT_15, 15", "METRES_AT_20, 20"})
    void scalesMadeForADistanceReadMetresThere(AngleScale scale, double distance) {
        Tolerance.ROUNDING.check(14.5, distance * (scale.tangent(12) - scale.tangent(-2.5)), "height (m)");
    }

    @ParameterizedTest
    @EnumSource(AngleScale.class)
    void aTangentGivesItsReadingBack(AngleScale scale) {
        for (double reading : new double[] {-60, -8, 0, 0.5, 37.5, 89}) {
            Tolerance.absolute("there and back", 1e-10)
                    .check(reading, scale.reading(scale.tangent(reading)), scale.id());
        }
    }

    /** Against a difference quotient of the tangent itself. */
    @ParameterizedTest
    @EnumSource(AngleScale.class)
    void theTangentPerUnitIsItsDerivative(AngleScale scale) {
        Tolerance quotient = Tolerance.relative("central difference over 2e-4 of a unit", 1e-7);
        for (double reading : new double[] {-60, -8, 0, 37.5, 70}) {
            double difference = (scale.tangent(reading + 1e-4) - scale.tangent(reading - 1e-4)) / 2e-4;
            quotient.check(difference, scale.tangentPerUnit(reading), scale.id() + " at " + reading);
        }
    }

    @ParameterizedTest
    @EnumSource(AngleScale.class)
    void readingsBelowTheEyeMirrorThoseAbove(AngleScale scale) {
        assertEquals(0, scale.tangent(0));
        assertEquals(-scale.tangent(37.5), scale.tangent(-37.5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {90, -90, 123})
    void ninetyDegreesAndMoreAreRefused(double reading) {
        assertThrows(IllegalArgumentException.class, () -> AngleScale.DEGREES.tangent(reading));
    }

    @ParameterizedTest
    @EnumSource(AngleScale.class)
    void readingsThatAreNoNumberAreRefused(AngleScale scale) {
        assertThrows(IllegalArgumentException.class, () -> scale.tangent(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> scale.tangent(Double.NEGATIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> scale.reading(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> scale.tangentPerUnit(Double.POSITIVE_INFINITY));
    }
}
