package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;

import java.util.List;
import org.junit.jupiter.api.Test;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/** What an estimate answers, and where there is no answer. */
class MeanEstimateTest {
    private static final DegreesOfFreedom RULE = DegreesOfFreedom.UNITS_MINUS_STRATA;

    /** idaho-points-1-72.json, script idaho.R: 72 points, so 71 degrees of freedom. */
    @Test
    void samplingErrorAndLimitsOfARealCruise() {
        var ba = ReferenceFiles.json("idaho-points-1-72.json").get("basal_area_m2_ha");
        double mean = number(ba.get("mean"));
        double se = number(ba.get("se"));
        MeanEstimate m = new MeanEstimate(72, 71, mean, se, se * Math.sqrt(72));
        Tolerance.R_SCRIPT.check(number(ba.get("sampling_error_percent")), m.samplingErrorPercent(0.95), "error %");
        Tolerance.R_SCRIPT.check(number(ba.get("cv_percent")), m.cvPercent(), "CV %");
        Tolerance.R_SCRIPT.check(number(ba.get("lower")), m.interval(0.95).lower(), "lower");
        Tolerance.R_SCRIPT.check(number(ba.get("upper")), m.interval(0.95).upper(), "upper");
    }

    @Test
    void oneUnitGivesAMeanButNoError() {
        MeanEstimate m = StratifiedMean.estimate(List.of(StratumSample.of(1, new double[] {7})), RULE);
        assertEquals(7, m.mean());
        assertFalse(m.hasError());
        assertTrue(Double.isNaN(m.interval(0.95).lower()));
        assertTrue(Double.isNaN(m.samplingErrorPercent(0.95)));
    }

    @Test
    void oneThinStratumTakesTheErrorFromAll() {
        List<StratumSample> strata =
                List.of(StratumSample.of(0.5, new double[] {1, 2, 3}), StratumSample.of(0.5, new double[] {4}));
        for (DegreesOfFreedom rule : DegreesOfFreedom.values()) {
            MeanEstimate m = StratifiedMean.estimate(strata, rule);
            assertEquals(3, m.mean());
            assertEquals(4, m.n());
            assertFalse(m.hasError(), rule.toString());
        }
    }

    @Test
    void equalUnitsGiveAnErrorOfZeroUnderBothRules() {
        List<StratumSample> strata =
                List.of(StratumSample.of(0.5, new double[] {2, 2}), StratumSample.of(0.5, new double[] {4, 4, 4}));
        for (DegreesOfFreedom rule : DegreesOfFreedom.values()) {
            MeanEstimate m = StratifiedMean.estimate(strata, rule);
            assertTrue(m.hasError());
            assertEquals(0, m.se());
            assertEquals(3, m.df());
            assertEquals(new Interval(3, 3), m.interval(0.9));
        }
    }

    @Test
    void aMeanOfZeroHasNoPercentages() {
        MeanEstimate m = StratifiedMean.estimate(List.of(StratumSample.of(1, new double[] {-1, 1})), RULE);
        assertTrue(Double.isNaN(m.cvPercent()));
        assertTrue(Double.isNaN(m.samplingErrorPercent(0.95)));
        assertTrue(m.halfWidth(0.95) > 0);
    }

    @Test
    void aNegativeScaleKeepsTheErrorPositive() {
        assertEquals(new MeanEstimate(5, 4, -6, 2, 4), new MeanEstimate(5, 4, 3, 1, 2).times(-2));
    }

    @Test
    void weightsThatDoNotAddUpAndEmptyStrataAreRefused() {
        List<StratumSample> light = List.of(StratumSample.of(0.9, new double[] {1, 2}));
        List<StratumSample> empty = List.of(StratumSample.of(1, new double[0]));
        assertThrows(IllegalArgumentException.class, () -> StratifiedMean.estimate(light, RULE));
        assertThrows(IllegalArgumentException.class, () -> StratifiedMean.estimate(empty, RULE));
        assertThrows(IllegalArgumentException.class, () -> StratifiedMean.estimate(List.of(), RULE));
    }
}
