package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.CubicRule;
import quadmean.support.Tolerance;
import quadmean.units.Unit;

class CubicVolumeTest {
    /** 6, 8 and 9 in, 16 ft with 0.005454·D² (lecture notes FOR 274, University of Idaho; computed from the formulas). */
    @ParameterizedTest
    @CsvSource({"HUBER, 5.5849", "SMALIAN, 5.1049", "NEWTON, 5.4249"})
    void workedExampleInFeet(CubicRule rule, double expected) {
        double k = 0.005454; // a rounded π/576
        double volume = CubicVolume.ofSections(rule, k * 81, k * 64, k * 36, 16);
        Tolerance.printed(4).check(expected, volume, rule.label());

        double metric =
                CubicVolume.ofDiameters(rule, inches(9), inches(8), inches(6), Unit.FOOT.convert(16, Unit.METRE));
        Tolerance.ROUNDING.check(
                volume / k * Math.PI / 576, Unit.CUBIC_METRE.convert(metric, Unit.CUBIC_FOOT), rule.label());
    }

    /** 20, 25 and 30 cm, 5 m (computed from the formulas by hand). */
    @ParameterizedTest
    @CsvSource({"HUBER, 0.245437", "SMALIAN, 0.255254", "NEWTON, 0.248709"})
    void workedExampleInMetres(CubicRule rule, double expected) {
        Tolerance.printed(6).check(expected, CubicVolume.ofDiameters(rule, 30, 25, 20, 5), rule.label());
    }

    @Test
    void sectionsThatTheRuleDoesNotUseAreNotLookedAt() {
        assertEquals(8, CubicVolume.ofSections(CubicRule.HUBER, Double.NaN, 4, Double.NaN, 2));
        assertEquals(6, CubicVolume.ofSections(CubicRule.SMALIAN, 4, Double.NaN, 2, 2));
    }

    /** By the formulas: volume is in proportion to length, and grows with each diameter that it uses. */
    @ParameterizedTest
    @EnumSource
    void volumeGrowsWithDiameterAndLength(CubicRule rule) {
        double v = CubicVolume.ofDiameters(rule, 30, 26, 20, 5);
        for (double c : new double[] {0.1, 0.5, 3, 40}) {
            Tolerance.ROUNDING.check(c * v, CubicVolume.ofDiameters(rule, 30, 26, 20, 5 * c), "length times " + c);
            Tolerance.ROUNDING.check(
                    c * c * v, CubicVolume.ofDiameters(rule, 30 * c, 26 * c, 20 * c, 5), "diameters times " + c);
        }
        for (double more = 1; more < 5; more++) {
            assertTrue(CubicVolume.ofDiameters(rule, 30 + more, 26 + more, 20 + more, 5) > v);
            assertTrue(CubicVolume.ofDiameters(rule, 30 + more, 26, 20, 5) >= v);
            assertTrue(CubicVolume.ofDiameters(rule, 30, 26 + more, 20, 5) >= v);
            assertTrue(CubicVolume.ofDiameters(rule, 30, 26, 20 + more, 5) >= v);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
    void sizesOutOfTheirDomainAreRefusedByName(double bad) {
        refused("large-end diameter", bad, () -> CubicVolume.ofDiameters(CubicRule.NEWTON, bad, 2, 1, 1));
        refused("middle diameter", bad, () -> CubicVolume.ofDiameters(CubicRule.NEWTON, 3, bad, 1, 1));
        refused("small-end diameter", bad, () -> CubicVolume.ofDiameters(CubicRule.NEWTON, 3, 2, bad, 1));
        refused("length", bad, () -> CubicVolume.ofDiameters(CubicRule.NEWTON, 3, 2, 1, bad));
    }

    private static void refused(String name, double value, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(name) && message.endsWith("got " + value), message);
    }

    private static double inches(double value) {
        return Unit.INCH.convert(value, Unit.CENTIMETRE);
    }
}
