package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;

class TreeReadingsTest {
    private static final HeightErrors ERRORS = HeightErrors.commonPractice();

    @Test
    void meanSpreadAndSd() {
        // at 100 m the percent scale reads metres: heights of 30, 31 and 33 m; their sd by hand is √(14/6)
        TreeReadings tree = new TreeReadings(List.of(at(30), at(31), at(33)), DistanceUse.ONE_DISTANCE);
        Tolerance.ROUNDING.check(94 / 3.0, tree.meanHeight(), "mean (m)");
        Tolerance.ROUNDING.check(3, tree.spread(), "spread (m)");
        Tolerance.ROUNDING.check(Math.sqrt(14 / 6.0), tree.observedSd(), "sd (m)");
    }

    @Test
    void oneReadingHasNoSpreadAndItsOwnError() {
        TreeReadings tree = new TreeReadings(List.of(at(30)), DistanceUse.ONE_DISTANCE);
        assertEquals(0, tree.spread());
        assertTrue(Double.isNaN(tree.observedSd()));
        assertFalse(tree.disagree());
        Tolerance.ROUNDING.check(ERRORS.heightSd(at(30)), tree.meanSd(ERRORS), "sd (m)");
    }

    /** Brack and Wood, ANU notes (formulary 6.3): readings agree within 1 m on a 40 m tree. */
    @ParameterizedTest
    @CsvSource({"39.51, 40.49, false", "39.49, 40.51, true"})
    void aMetreOnFortyIsTheTolerance(double one, double other, boolean disagree) {
        TreeReadings tree = new TreeReadings(List.of(at(one), at(other)), DistanceUse.OWN_DISTANCES);
        assertEquals(disagree, tree.disagree());
        assertEquals(
                disagree, ReadingCheck.flags(tree, CommonPractice.EYE_HEIGHT).contains(HeightFlag.READINGS_DISAGREE));
    }

    /** The error of the mean of three readings by formula against simulation over fixed seeds. */
    @ParameterizedTest
    @EnumSource(DistanceUse.class)
    void theErrorOfTheMeanAgreesWithSimulation(DistanceUse use) {
        int n = 40_000;
        SplittableRandom random = new SplittableRandom(62);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double shared = 20 + 0.1 * random.nextGaussian();
            List<Sighting> read = new ArrayList<>();
            for (int j = 0; j < 3; j++) {
                double own = 20 + 0.1 * random.nextGaussian();
                read.add(degrees(
                        50 + 0.25 * random.nextGaussian(),
                        -4 + 0.25 * random.nextGaussian(),
                        use == DistanceUse.ONE_DISTANCE ? shared : own));
            }
            double mean = new TreeReadings(read, use).meanHeight();
            sum += mean;
            squares += mean * mean;
        }
        double simulated = Math.sqrt((squares - sum * sum / n) / (n - 1));
        Sighting exact = degrees(50, -4, 20);
        double stated = new TreeReadings(List.of(exact, exact, exact), use).meanSd(ERRORS);
        Tolerance.relative("four Monte Carlo errors", 4 / Math.sqrt(2.0 * n)).check(stated, simulated, "sd (m)");
    }

    @Test
    void noReadingIsNoTree() {
        assertThrows(IllegalArgumentException.class, () -> new TreeReadings(List.of(), DistanceUse.OWN_DISTANCES));
    }

    private static Sighting at(double height) {
        return new HorizontalSighting(new Readings(AngleScale.PERCENT, height - 1.5, -1.5), 100);
    }

    private static Sighting degrees(double top, double base, double distance) {
        return new HorizontalSighting(new Readings(AngleScale.DEGREES, top, base), distance);
    }
}
