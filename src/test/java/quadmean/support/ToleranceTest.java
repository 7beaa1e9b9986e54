package quadmean.support;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A yardstick that never fails measures nothing. */
class ToleranceTest {
    private static final Tolerance ONE_PERCENT = Tolerance.relative("one percent", 0.01);

    @ParameterizedTest
    @ValueSource(doubles = {198.01, 200, 201.99})
    void nearValuesPass(double actual) {
        ONE_PERCENT.check(200, actual, "value");
    }

    @ParameterizedTest
    @ValueSource(doubles = {197.9, 202.1, -200, Double.NaN, Double.POSITIVE_INFINITY})
    void otherValuesFail(double actual) {
        assertThrows(AssertionError.class, () -> ONE_PERCENT.check(200, actual, "value"));
    }

    @Test
    void nothingIsNearNaN() {
        assertThrows(AssertionError.class, () -> ONE_PERCENT.check(Double.NaN, Double.NaN, "value"));
    }

    @Test
    void printedDecimalsAllowHalfAUnit() {
        Tolerance.printed(3).check(3.078, 3.0775, "t");
        assertThrows(AssertionError.class, () -> Tolerance.printed(3).check(3.078, 3.0774, "t"));
    }

    @Test
    void arraysOfDifferentLengthFail() {
        double[] two = {1, 2};
        double[] three = {1, 2, 3};
        assertThrows(AssertionError.class, () -> ONE_PERCENT.check(two, three, "values"));
    }

    @Test
    void failuresNameValueAndTolerance() {
        AssertionError e = assertThrows(AssertionError.class, () -> ONE_PERCENT.check(200, 210, "basal area"));
        assertTrue(e.getMessage().contains("basal area") && e.getMessage().contains("one percent"), e.getMessage());
    }
}
