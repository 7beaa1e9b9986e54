package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.example;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;
import quadmean.units.Unit;

class SightingTest {
    private static final Tolerance ANY_ORDER = Tolerance.relative("the same sum in another order", 1e-12);

    /** Computed from the definitions of the scales (formulary 6.1), printed to the millimetre or a tenth of a foot. */
    @ParameterizedTest
    @CsvSource({
        "PERCENT, METRE, 30, 72, -6, 23.40, 2",
        "TOPOGRAPHIC, FOOT, 66, 95, -8, 103.0, 1",
        "DEGREES, METRE, 25, 41, -3.5, 23.261, 3",
        "PERCENT, FOOT, 80, 110, 12, 78.4, 1",
    })
    void atAHorizontalDistance(
            AngleScale scale, Unit unit, double distance, double top, double base, double expected, int decimals) {
        Sighting s = new HorizontalSighting(new Readings(scale, top, base), unit.convert(distance, Unit.METRE));
        Tolerance.printed(decimals).check(expected, Unit.METRE.convert(s.height(), unit), "height");
    }

    /** Formulary 6.1: tape of 32 m on a 20 % slope. */
    @Test
    void alongTheGround() {
        Sighting s = new GroundSlopeSighting(new Readings(AngleScale.PERCENT, 65, -22), 32, new Slope(0.20));
        Tolerance.printed(3).check(31.379, s.distance(), "horizontal distance (m)");
        Tolerance.printed(3).check(27.299, s.height(), "height (m)");
    }

    /** Formulary 6.1: tape of 28 m from the eye to the base at -12 degrees. */
    @Test
    void straightFromEyeToBase() {
        Sighting s = new EyeToBaseSighting(new Readings(AngleScale.DEGREES, 35, -12), 28);
        Tolerance.printed(3).check(27.388, s.distance(), "horizontal distance (m)");
        Tolerance.printed(3).check(24.999, s.height(), "height (m)");
    }

    /** Leverett, Height measurement basics (Native Tree Society, 2006): height above the eye from one shot to the tip. */
    @Test
    void threeShotsBySine() {
        JsonNode e = example("height-sine-47deg");
        double angle = number(e.get("inputs").get("angle_deg"));
        double tip = Unit.FOOT.convert(number(e.get("inputs").get("distance_to_tip_ft")), Unit.METRE);
        Sighting s = new LaserSighting(new Readings(AngleScale.DEGREES, angle, 0), tip, 20);
        double printed = number(e.get("published").get("height_above_eye_ft"));
        Tolerance.printed(1).check(printed, Unit.METRE.convert(s.height(), Unit.FOOT), "height above the eye (ft)");
    }

    /** General how-to article on clinometers: 50 ft, 17 degrees, eye at 5.5 ft on level ground. */
    @Test
    void degreesWithTheEyeHeightAdded() {
        JsonNode e = example("height-degrees-17deg-50ft");
        double distance = number(e.get("inputs").get("distance_ft"));
        double eye = number(e.get("inputs").get("eye_height_ft"));
        double base = AngleScale.DEGREES.reading(-eye / distance);
        Readings r = new Readings(AngleScale.DEGREES, number(e.get("inputs").get("angle_deg")), base);
        Sighting s = new HorizontalSighting(r, Unit.FOOT.convert(distance, Unit.METRE));
        JsonNode printed = e.get("published");
        Tolerance.printed(2).check(number(printed.get("tan")), r.topTangent(), "tangent");
        double aboveEye = Unit.METRE.convert(s.height() - s.eyeAboveBase(), Unit.FOOT);
        Tolerance.printed(1).check(number(printed.get("above_eye")), aboveEye, "above the eye (ft)");
        double height = Unit.METRE.convert(s.height(), Unit.FOOT);
        Tolerance.printed(1).check(number(printed.get("height")), height, "height (ft)");
    }

    /** Property: all ways of sighting see the same tree, wherever the eye stands; also with the base above the eye. */
    @ParameterizedTest
    @ValueSource(doubles = {-6, -1.5, 0, 1.5, 12, 40})
    void allWaysOfSightingAgree(double eye) {
        double height = 27.5;
        double distance = 31;
        Readings r = readings(AngleScale.PERCENT, height, eye, distance);
        double groundRatio = 0.23;
        double toBase = Math.hypot(distance, eye);
        double toTop = Math.hypot(distance, height - eye);
        ANY_ORDER.check(height, new HorizontalSighting(r, distance).height(), "horizontal");
        Slope ground = new Slope(groundRatio);
        ANY_ORDER.check(
                height, new GroundSlopeSighting(r, distance * Math.hypot(1, groundRatio), ground).height(), "ground");
        ANY_ORDER.check(height, new EyeToBaseSighting(r, toBase).height(), "eye to base");
        ANY_ORDER.check(height, new LaserSighting(r, toTop, toBase).height(), "three-shot");
        Tolerance.absolute("rounding", 1e-12).check(eye, new LaserSighting(r, toTop, toBase).eyeAboveBase(), "eye");
    }

    /** Property, over fixed random trees: a height does not depend on the scale it was read on. */
    @ParameterizedTest
    @EnumSource(AngleScale.class)
    void aHeightDoesNotDependOnTheScale(AngleScale scale) {
        SplittableRandom random = new SplittableRandom(20260101);
        for (int i = 0; i < 200; i++) {
            double height = random.nextDouble(2, 60);
            double eye = random.nextDouble(-15, 15);
            double distance = random.nextDouble(5, 80);
            Sighting s = new HorizontalSighting(readings(scale, height, eye, distance), distance);
            Tolerance.relative("scale there and back", 1e-10).check(height, s.height(), scale.id());
        }
    }

    /** Formulary 6.2: 25 m, 1 degree, top at 45 and base at -4 degrees: 0.434 m; the top alone 0.873 m. */
    @Test
    void anIndexErrorCancelsInPart() {
        double oneDegree = Math.toRadians(1);
        Sighting s = new HorizontalSighting(new Readings(AngleScale.DEGREES, 45, -4), 25);
        Tolerance.printed(3).check(0.434, s.shiftByIndexError(oneDegree), "shift (m)");
        Tolerance.printed(3).check(0.873, s.sensitivity().topAngle() * oneDegree, "top alone (m)");
    }

    /** Formulary 6.2: a constant offset in percent points cancels fully. */
    @Test
    void anOffsetInPercentPointsCancels() {
        double right = TreeHeight.fromReadings(AngleScale.PERCENT, 72, -6, 30);
        ANY_ORDER.check(right, TreeHeight.fromReadings(AngleScale.PERCENT, 73, -5, 30), "height (m)");
    }

    /** Formulary 6.2: one degree shifts the top by 1.745 % of D·sec²α. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 45, 60})
    void oneDegreeShiftsTheTop(double top) {
        double distance = 25;
        Sighting s = new HorizontalSighting(new Readings(AngleScale.DEGREES, top, -4), distance);
        double secant = 1 / Math.cos(Math.toRadians(top));
        double percent = 100 * s.sensitivity().topAngle() * Math.toRadians(1) / (distance * secant * secant);
        Tolerance.printed(3).check(1.745, percent, "percent");
    }

    @Test
    void readingsTheWrongWayRoundAreRefused() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> new Readings(AngleScale.PERCENT, 6, 72));
        assertTrue(e.getMessage().contains("minus"), e.getMessage());
        assertThrows(IllegalArgumentException.class, () -> new Readings(AngleScale.PERCENT, 6, 6));
        assertThrows(IllegalArgumentException.class, () -> new Readings(AngleScale.DEGREES, 95, 6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -20, Double.NaN, Double.POSITIVE_INFINITY})
    void aDistanceIsAboveZero(double distance) {
        Readings r = new Readings(AngleScale.PERCENT, 80, -5);
        assertThrows(IllegalArgumentException.class, () -> new HorizontalSighting(r, distance));
        assertThrows(IllegalArgumentException.class, () -> new GroundSlopeSighting(r, distance, Slope.LEVEL));
        assertThrows(IllegalArgumentException.class, () -> new EyeToBaseSighting(r, distance));
        assertThrows(IllegalArgumentException.class, () -> new LaserSighting(r, distance, 20));
        assertThrows(IllegalArgumentException.class, () -> new LaserSighting(r, 20, distance));
    }

    @Test
    void laserDistancesThatPutTheTopBelowTheBaseAreRefused() {
        Readings bothAbove = new Readings(AngleScale.DEGREES, 30, 20);
        assertThrows(IllegalArgumentException.class, () -> new LaserSighting(bothAbove, 10, 60));
        assertEquals(
                30 * 0.5 - 20 * Math.sin(Math.toRadians(20)), new LaserSighting(bothAbove, 30, 20).height(), 1e-12);
    }

    private static Readings readings(AngleScale scale, double height, double eye, double distance) {
        return new Readings(scale, scale.reading((height - eye) / distance), scale.reading(-eye / distance));
    }
}
