package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;

import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;

class SampleSizeTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    /** sample-size-table.csv: smallest n with n ≥ (t·CV/E)², computed from that inequality. */
    static Stream<Arguments> table() {
        return ReferenceFiles.csv("sample-size-table.csv").stream()
                .map(r -> Arguments.of(
                        number(r, "cv_percent"),
                        number(r, "error_percent"),
                        number(r, "confidence"),
                        Integer.valueOf(r.getField("n"))));
    }

    @ParameterizedTest
    @MethodSource("table")
    void plotsNeededAreThoseOfTheTable(double cv, double error, double confidence, int n) {
        assertEquals(OptionalInt.of(n), SampleSize.simpleRandom(cv, error, confidence, INFINITE));
    }

    @Test
    void theTableHasAllItsCells() {
        assertEquals(24, table().count());
    }

    /** Plain iteration flips between 6 and 7: at n = 6, t = 2.5706 (NIST table, df 5: 2.571) asks for 6.61. */
    @Test
    void whereIterationFlipsTheLargerIsRight() {
        assertEquals(OptionalInt.of(7), SampleSize.simpleRandom(20, 20, 0.95, INFINITE));
    }

    /** idaho-points-1-72.json, script idaho.R: upward search from 2 with the CV of basal area. */
    @Test
    void plotsNeededForTheIdahoPoints() {
        var idaho = ReferenceFiles.json("idaho-points-1-72.json");
        double cv = number(idaho.get("basal_area_m2_ha").get("cv_percent"));
        int expected = idaho.get("plots_for_10_percent_95").asInt();
        assertEquals(94, expected);
        assertEquals(OptionalInt.of(expected), SampleSize.simpleRandom(cv, 10, 0.95, INFINITE));
    }

    @ParameterizedTest
    @CsvSource({"50,10,0.95,64", "50,10,0.95,200", "80,15,0.9,3000", "30,5,0.99,77.4", "15,10,0.95,20", "9,3,0.8,5"})
    void smallPopulationsNeedWhatAnUpwardSearchFinds(double cv, double error, double confidence, double units) {
        int n = 2;
        while (!reaches(n, cv, error, confidence, units)) {
            n++;
        }
        assertEquals(OptionalInt.of(n), SampleSize.simpleRandom(cv, error, confidence, units));
        int uncorrected =
                SampleSize.simpleRandom(cv, error, confidence, INFINITE).orElseThrow();
        assertTrue(n <= uncorrected, "the correction never asks for more");
    }

    /** A target that only a census reaches: the area seldom holds a whole number of plots. */
    @ParameterizedTest
    @CsvSource({"10,10", "10.5,11", "2,2"})
    void anUnreachablySmallErrorAsksForACensus(double units, int census) {
        assertEquals(OptionalInt.of(census), SampleSize.simpleRandom(100, 1e-3, 0.95, units));
    }

    @Test
    void targetsOutOfReachGiveNoNumber() {
        assertEquals(OptionalInt.empty(), SampleSize.simpleRandom(100, 0.01, 0.95, INFINITE));
        assertTrue(SampleSize.simpleRandom(100, 0.1, 0.95, INFINITE).isPresent());
    }

    @ParameterizedTest
    @CsvSource({"0,10,0.95,50", "NaN,10,0.95,50", "50,0,0.95,50", "50,-5,0.95,50", "50,10,95,50", "50,10,0.95,1"})
    void valuesOutsideTheDomainAreRefused(double cv, double error, double confidence, double units) {
        assertThrows(IllegalArgumentException.class, () -> SampleSize.simpleRandom(cv, error, confidence, units));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void aSmallerTargetNeverLowersN(long seed) {
        Random random = new Random(seed);
        double cv = 10 + 90 * random.nextDouble();
        double units = random.nextBoolean() ? INFINITE : 20 + random.nextInt(2000);
        int before = 0;
        for (double error = 40; error >= 1; error *= 0.93) {
            int n = SampleSize.simpleRandom(cv, error, 0.95, units).orElseThrow();
            assertTrue(n >= before, "seed " + seed + ", error " + error + ": " + n + " after " + before);
            before = n;
        }
        assertTrue(before > 2, "seed " + seed);
    }

    private static boolean reaches(int n, double cv, double error, double confidence, double units) {
        double halfWidth = StudentT.critical(confidence, n - 1.0) * cv * Math.sqrt(Math.max(0, 1 - n / units) / n);
        return halfWidth <= error;
    }
}
