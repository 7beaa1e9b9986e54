package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;

class BestDistanceTest {
    private static final HeightErrors ERRORS = HeightErrors.commonPractice();
    private static final double EYE = 1.5;
    /** The error is flat at its least: a search that compares errors cannot tell distances nearer than this. */
    private static final Tolerance FLAT = Tolerance.relative("flat optimum", 1e-5);

    /** Formulary 6.2: with 0.10 m the best distance of 15 to 40 m trees is 0.88 to 1.11 heights. */
    @Test
    void withADistanceErrorItIsAboutTheHeight() {
        Tolerance.printed(2).check(1.11, best(15, ERRORS).distance() / 15, "15 m tree");
        Tolerance.printed(2).check(0.88, best(40, ERRORS).distance() / 40, "40 m tree");
    }

    /** Formulary 6.2: with errors of the angles only, 0.76 to 0.81 heights. */
    @Test
    void withAnglesOnlyItIsNearer() {
        HeightErrors angles = ERRORS.withDistanceSd(0);
        Tolerance.printed(2).check(0.76, best(15, angles).distance() / 15, "15 m tree");
        Tolerance.printed(2).check(0.81, best(40, angles).distance() / 40, "40 m tree");
    }

    /**
     * Closed form, from setting the derivative of dH² to zero: with equal angular errors
     * D⁴ = ((H·σD)² + σα²·(a⁴ + b⁴)) / (2·σα²), where a and b are the marks above and below the eye.
     */
    @ParameterizedTest
    @CsvSource({"15, 1.5, 0.1", "40, 1.5, 0.1", "25, -4, 0.05", "30, 12, 0.5", "25, 1.5, 0"})
    void theSearchFindsTheClosedForm(double height, double eye, double distanceSd) {
        double a = Math.pow(height - eye, 4);
        double b = Math.pow(eye, 4);
        double angle = ERRORS.angle().sd();
        double fourth = Math.pow(height * distanceSd, 2) / (2 * angle * angle) + (a + b) / 2;
        BestDistance best = BestDistance.of(height, eye, AngleScale.DEGREES, ERRORS.withDistanceSd(distanceSd))
                .orElseThrow();
        FLAT.check(Math.sqrt(Math.sqrt(fourth)), best.distance(), "best distance (m)");
    }

    /** The range is where the error is a tenth above its least, by its own definition. */
    @Test
    void theRangeEndsWhereTheErrorIsATenthLarger() {
        BestDistance best = best(25, ERRORS);
        assertTrue(best.nearest() < best.distance() && best.distance() < best.farthest());
        for (double end : new double[] {best.nearest(), best.farthest()}) {
            AngleScale scale = AngleScale.PERCENT;
            double top = scale.reading((25 - EYE) / end);
            Sighting s = new HorizontalSighting(new Readings(scale, top, scale.reading(-EYE / end)), end);
            Tolerance.relative("width of the search", 1e-6).check(1.1 * best.heightSd(), ERRORS.heightSd(s), "sd (m)");
        }
    }

    @Test
    void aSightingAsksForItsOwnTree() {
        Sighting s = new GroundSlopeSighting(new Readings(AngleScale.PERCENT, 65, -22), 32, new Slope(0.20));
        BestDistance own = BestDistance.of(s, ERRORS).orElseThrow();
        FLAT.check(
                BestDistance.of(s.height(), 0.22 * s.distance(), AngleScale.PERCENT, ERRORS)
                        .orElseThrow()
                        .distance(),
                own.distance(),
                "best distance (m)");
    }

    @Test
    void threeShotsAndOneSidedErrorsHaveNone() {
        Sighting laser = new LaserSighting(new Readings(AngleScale.DEGREES, 45, -4), 35, 25);
        assertEquals(Optional.empty(), BestDistance.of(laser, ERRORS));
        HeightErrors noReadingError = ERRORS.withAngle(AngleError.ofAngle(0));
        assertEquals(Optional.empty(), BestDistance.of(25, EYE, AngleScale.PERCENT, noReadingError));
        HeightErrors pointsOnly = new HeightErrors(AngleError.ofScaleUnits(0.5), 0, 0);
        assertEquals(Optional.empty(), BestDistance.of(25, EYE, AngleScale.PERCENT, pointsOnly));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -3, Double.NaN})
    void aHeightIsAboveZero(double height) {
        assertThrows(IllegalArgumentException.class, () -> BestDistance.of(height, EYE, AngleScale.PERCENT, ERRORS));
        assertThrows(IllegalArgumentException.class, () -> BestDistance.of(25, Double.NaN, AngleScale.PERCENT, ERRORS));
    }

    private static BestDistance best(double height, HeightErrors errors) {
        return BestDistance.of(height, EYE, AngleScale.PERCENT, errors).orElseThrow();
    }
}
