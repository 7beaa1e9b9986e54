package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;

class LeanTest {
    private static final Tolerance INVERSE = Tolerance.absolute("solved for the true height", 1e-9);

    /** Formulary 6.3: percent toward and away at distances of 0.75, 1, 1.5 and 2 times the rise. */
    @ParameterizedTest
    @CsvSource({
        "2, 4.9, -4.4, 3.6, -3.4, 2.4, -2.3, 1.8, -1.7",
        "5, 13.2, -10.4, 9.6, -8.0, 6.2, -5.5, 4.6, -4.2",
        "10, 30.7, -19.0, 21.4, -15.0, 13.3, -10.5, 9.7, -8.1",
    })
    void theTableOfLean(
            double degrees,
            double toward1,
            double away1,
            double toward2,
            double away2,
            double toward3,
            double away3,
            double toward4,
            double away4) {
        double[] distances = {0.75, 1, 1.5, 2};
        double[] toward = {toward1, toward2, toward3, toward4};
        double[] away = {away1, away2, away3, away4};
        for (int i = 0; i < distances.length; i++) {
            Tolerance.printed(1).check(toward[i], percent(LeanDirection.TOWARD, degrees, distances[i]), "toward");
            Tolerance.printed(1).check(away[i], percent(LeanDirection.AWAY, degrees, distances[i]), "away");
        }
    }

    /**
     * Formulary 6.3, across the view at D = rise. What it prints is the share of the height read (secant - 1), though it
     * speaks of the cosine; as a share of the true height (1 - cosine) 8 and 10 degrees would print 0.97 and 1.52.
     */
    @ParameterizedTest
    @CsvSource({"2, 0.06", "5, 0.38", "8, 0.98", "10, 1.54"})
    void acrossTheViewItReadsLow(double degrees, double printed) {
        double lost = -percent(LeanDirection.ACROSS, degrees, 1);
        Tolerance.relative("rounding after a subtraction from 1", 1e-10)
                .check(100 * (1 - Math.cos(Math.toRadians(degrees))), lost, "share of the true height (%)");
        Tolerance.printed(2).check(printed, lost / (1 - lost / 100), "share of the height read (%)");
    }

    /** Formulary 6.3: the mean of two opposite sides at D = rise, 5 degrees, is still 0.77 % high. */
    @Test
    void twoSidesLeaveALittle() {
        double left = (percent(LeanDirection.TOWARD, 5, 1) + percent(LeanDirection.AWAY, 5, 1)) / 2;
        Tolerance.printed(2).check(0.77, left, "error left (%)");
        OppositeSides sides =
                new OppositeSides(leaning(LeanDirection.TOWARD, 0, 20), leaning(LeanDirection.AWAY, 0, 20));
        Tolerance.printed(2).check(0.77, 100 * sides.errorLeft() / 20, "error left (%)");
    }

    /** A tree of 20 m, 5 degrees, is sighted: what is misread is what the tree was made to seem. */
    @ParameterizedTest
    @EnumSource(LeanDirection.class)
    void theMisreadingIsFoundFromTheReadings(LeanDirection direction) {
        Lean lean = new Lean(Math.toRadians(5));
        for (double eye : new double[] {-3, 0, 1.5, 8, 26}) {
            Sighting s = leaning(direction, eye, 24);
            INVERSE.check(s.height() - 20, lean.misreading(direction, s), direction + ", eye at " + eye + " m");
        }
    }

    /** Two equations give back the height and the offset of the tip, also at unequal distances and on a slope. */
    @ParameterizedTest
    @CsvSource({"24, 24, 1.5, 1.5", "18, 30, 1.5, 1.5", "24, 20, -2, 5"})
    void oppositeSidesFreeTheHeightOfTheLean(double near, double far, double eye, double otherEye) {
        OppositeSides sides =
                new OppositeSides(leaning(LeanDirection.TOWARD, eye, near), leaning(LeanDirection.AWAY, otherEye, far));
        INVERSE.check(20, sides.height(), "height (m)");
        INVERSE.check(20 * Math.tan(Math.toRadians(5)), sides.tipOffset(), "tip offset (m)");
        INVERSE.check(sides.meanHeight() - 20, sides.errorLeft(), "error left (m)");
    }

    @Test
    void threeShotsAreRightWhateverTheLean() {
        Sighting laser = new LaserSighting(new Readings(AngleScale.DEGREES, 45, -4), 35, 25);
        assertEquals(0, new Lean(0.2).misreading(LeanDirection.TOWARD, laser));
        Sighting tape = leaning(LeanDirection.AWAY, 1.5, 24);
        assertThrows(IllegalArgumentException.class, () -> new OppositeSides(laser, tape));
        assertThrows(
                IllegalArgumentException.class, () -> new OppositeSides(tape, leaning(LeanDirection.AWAY, 26, 24)));
    }

    @Test
    void aTreeOverheadIsRefused() {
        Sighting steep = new HorizontalSighting(new Readings(AngleScale.DEGREES, 80, -4), 5);
        assertThrows(
                IllegalArgumentException.class,
                () -> new Lean(Math.toRadians(12)).misreading(LeanDirection.AWAY, steep));
        assertThrows(IllegalArgumentException.class, () -> Lean.apparentRise(LeanDirection.TOWARD, 20, 10, 10));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 0.8, Double.NaN})
    void aLeanIsBelowFortyFiveDegrees(double angle) {
        assertThrows(IllegalArgumentException.class, () -> new Lean(angle));
    }

    private static double percent(LeanDirection direction, double degrees, double distance) {
        double offset = new Lean(Math.toRadians(degrees)).tipOffset(1);
        return 100 * (Lean.apparentRise(direction, 1, offset, distance) - 1);
    }

    /** A tree of 20 m that leans 5 degrees, as it is read. */
    private static Sighting leaning(LeanDirection direction, double eye, double distance) {
        double offset = new Lean(Math.toRadians(5)).tipOffset(20);
        double rise = Lean.apparentRise(direction, 20 - eye, offset, distance);
        AngleScale scale = AngleScale.DEGREES;
        return new HorizontalSighting(
                new Readings(scale, scale.reading(rise / distance), scale.reading(-eye / distance)), distance);
    }
}
