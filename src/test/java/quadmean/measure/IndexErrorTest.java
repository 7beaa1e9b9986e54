package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;

class IndexErrorTest {

    /** On the scale of degrees angles are readings: 30 less half a degree is 29.5 (by definition). */
    @Test
    void degreesAreTakenOffAsTheyAre() {
        Tolerance.ROUNDING.check(29.5, IndexError.of(AngleScale.DEGREES, 0.5).corrected(AngleScale.DEGREES, 30), "deg");
    }

    /** By hand: 100 % is 45°; an error of 1 % is atan(0.01) = 0.57294°, and tan(44.42706°) = 0.980198 = 0.99/1.01. */
    @Test
    void percentsAreTakenOffAsAngles() {
        double corrected = IndexError.of(AngleScale.PERCENT, 1).corrected(AngleScale.PERCENT, 100);
        Tolerance.ROUNDING.check(100 * 0.99 / 1.01, corrected, "percent");
        Tolerance.ROUNDING.check(0 - 1, IndexError.of(AngleScale.PERCENT, 1).corrected(AngleScale.PERCENT, 0), "level");
    }

    @ParameterizedTest
    @EnumSource(AngleScale.class)
    void takingOffAndPuttingOnGivesTheReadingBack(AngleScale scale) {
        IndexError error = IndexError.of(scale, 0.7);
        double once = error.corrected(scale, 12.5);
        Tolerance.ROUNDING.check(12.5, new IndexError(-error.radians()).corrected(scale, once), "reading");
        assertEquals(12.5, IndexError.NONE.corrected(scale, 12.5));
    }

    /** Two-way readings of a slope find the error that was put on them, in degrees exactly (TwoWaySlope). */
    @Test
    void aTwoWayCheckFindsTheErrorThatWasPutOn() {
        TwoWaySlope check = new TwoWaySlope(AngleScale.DEGREES, 10.6, -9.4, InstrumentUse.SAME_INSTRUMENT);
        IndexError error = IndexError.of(AngleScale.DEGREES, check.indexError());
        Tolerance.ROUNDING.check(10, error.corrected(AngleScale.DEGREES, 10.6), "there");
        Tolerance.ROUNDING.check(-10, error.corrected(AngleScale.DEGREES, -9.4), "back");
    }

    @Test
    void aBrokenInstrumentIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> IndexError.of(AngleScale.DEGREES, 9.1));
        assertThrows(
                IllegalArgumentException.class,
                () -> IndexError.of(AngleScale.DEGREES, -1).corrected(AngleScale.DEGREES, 89.5));
    }
}
