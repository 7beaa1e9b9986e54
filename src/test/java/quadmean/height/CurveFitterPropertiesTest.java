package quadmean.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.CurveForm;
import quadmean.stats.LeastSquaresFit;
import quadmean.support.Tolerance;

/** What holds for fits of any heights. Seeds are fixed and stand in the failure. */
class CurveFitterPropertiesTest {
    static Stream<Arguments> formsAndSeeds() {
        return Arrays.stream(CurveForm.values())
                .flatMap(form -> LongStream.rangeClosed(1, 5).mapToObj(seed -> Arguments.of(form, seed)));
    }

    @ParameterizedTest
    @MethodSource("formsAndSeeds")
    void pointsOfACurveReturnItsParameters(CurveForm form, long seed) {
        LeastSquaresFit fit = fit(form, Heights.generated(form, CurveModelTest.example(form), 1.3, 40, 0, seed));
        Tolerance.relative("exact data", 1e-8)
                .check(CurveModelTest.example(form), fit.parameters(), form + ", seed " + seed);
    }

    /** With errors of 1 m and 300 trees each estimate lies within four of its standard errors of the truth. */
    @ParameterizedTest
    @MethodSource("formsAndSeeds")
    void scatteredHeightsReturnParametersWithinTheirErrors(CurveForm form, long seed) {
        LeastSquaresFit fit = fit(form, Heights.generated(form, CurveModelTest.example(form), 1.3, 300, 1, seed));
        for (int k = 0; k < fit.parameters().length; k++) {
            double off = (fit.parameters()[k] - CurveModelTest.example(form)[k]) / fit.standardError(k);
            assertTrue(Math.abs(off) < 4, form + ", seed " + seed + ", parameter " + k + ": " + off);
        }
        // chi-square with about 298 degrees of freedom: four standard deviations are 16 % of sigma
        Tolerance.relative("sampling of sigma", 0.16).check(1, fit.sigma(), "sigma, seed " + seed);
    }

    @ParameterizedTest
    @MethodSource("formsAndSeeds")
    void orderOfTheTreesDoesNotShow(CurveForm form, long seed) {
        Heights.Sample sample = Heights.generated(form, CurveModelTest.example(form), 1.3, 60, 1, seed);
        Heights.Sample turned = new Heights.Sample(reversed(sample.d()), reversed(sample.h()));
        double[] p = fit(form, sample).parameters();
        Tolerance.FIT.check(p, fit(form, turned).parameters(), form + ", seed " + seed);
    }

    @ParameterizedTest
    @EnumSource(CurveForm.class)
    void aFormNeedsTwoTreesMoreThanParameters(CurveForm form) {
        int least = CurveModelTest.example(form).length + 2;
        Heights.Sample few = Heights.generated(form, CurveModelTest.example(form), 1.3, least - 1, 0.5, 9);
        CurveFit fit = CurveFitter.fit(form, few.d(), few.h(), 1.3);
        assertEquals(FitStatus.TOO_FEW, fit.status());
        assertNull(fit.fit());
        assertTrue(fit.remark().contains(Integer.toString(least)), fit.remark());
    }

    @ParameterizedTest
    @EnumSource(CurveForm.class)
    void withJustEnoughTreesTheFormIsTried(CurveForm form) {
        int least = CurveModelTest.example(form).length + 2;
        LeastSquaresFit fit = fit(form, Heights.generated(form, CurveModelTest.example(form), 1.3, least, 0.001, 9));
        assertEquals(least, fit.n());
    }

    @Test
    void everyOutcomeHasItsOwnWords() {
        long words = Arrays.stream(FitStatus.values())
                .map(FitStatus::label)
                .distinct()
                .count();
        assertEquals(FitStatus.values().length, words);
    }

    @ParameterizedTest
    @EnumSource(CurveForm.class)
    void treesOfOneDiameterGiveNoCurve(CurveForm form) {
        double[] d = {20, 20, 20, 20, 20, 20};
        double[] h = {15, 16, 15.5, 14, 17, 16};
        CurveFit fit = CurveFitter.fit(form, d, h, 1.3);
        assertEquals(FitStatus.NOT_CONVERGED, fit.status(), fit.remark());
        assertNull(fit.fit());
    }

    /** Heights that fall with dbh: whatever comes out is not used as a curve. */
    @ParameterizedTest
    @EnumSource(CurveForm.class)
    void heightsThatFallWithDiameterGiveNoUsableCurve(CurveForm form) {
        double[] d = {10, 15, 20, 25, 30, 35, 40};
        double[] h = {24, 20.5, 18.2, 15.1, 14.2, 12.9, 12.1};
        CurveFit fit = CurveFitter.fit(form, d, h, 1.3);
        assertTrue(fit.status() != FitStatus.CONVERGED, fit.status() + " " + fit.remark());
    }

    @Test
    void aFallingCurveSaysWhere() {
        double[] d = {10, 15, 20, 25, 30, 35, 40};
        double[] h = {24, 20.5, 18.2, 15.1, 14.2, 12.9, 12.1};
        CurveFit fit = CurveFitter.fit(CurveForm.WYKOFF, d, h, 1.3);
        assertEquals(FitStatus.UNREASONABLE, fit.status());
        assertNotNull(fit.fit());
        // a falling Wykoff curve shoots up towards dbh -1: seen first from below
        assertTrue(fit.remark().startsWith("explodes: more than twice the tallest tree at dbh "), fit.remark());
        CurveFit falling =
                CurveFitter.fit(CurveForm.POWER, new double[] {10, 11, 12, 13}, new double[] {9, 8.8, 8.9, 8.7}, 1.3);
        assertTrue(falling.remark().startsWith("falls at dbh 0.5"), falling.remark());
    }

    private static double[] reversed(double[] values) {
        double[] reversed = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            reversed[i] = values[values.length - 1 - i];
        }
        return reversed;
    }

    private static LeastSquaresFit fit(CurveForm form, Heights.Sample sample) {
        CurveFit fit = CurveFitter.fit(form, sample.d(), sample.h(), 1.3);
        assertEquals(FitStatus.CONVERGED, fit.status(), form + ": " + fit.remark());
        assertNotNull(fit.fit());
        return fit.fit();
    }
}
