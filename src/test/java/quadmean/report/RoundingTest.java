package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected texts follow from the rule: two significant digits of the standard error, half up. */
class RoundingTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12345.678 | 234.5    | 12,350",
                "12345.678 | 1000.25  | 12,300",
                "12345.678 | 99.6     | 12,350", // 99.6 becomes 100, whose two digits end at the tens
                "31.72     | 0.8      | 31.72",
                "31.725    | 0.0812   | 31.725",
                "-4.449    | 1.23     | -4.4",
                "0.04      | 12       | 0",
                "1234567   | NaN      | 1,230,000", // without an error: three digits of the value
                "0.0012345 | 0        | 0.00123",
                "0         | NaN      | 0",
                "NaN       | NaN      | –",
                "5         | 1e-12    | 5.000000" // never more than six decimals
            })
    void cutsAtTheSecondDigitOfTheError(double value, double se, String expected) {
        assertEquals(expected, Rounding.of(value, se).text(value));
    }

    @Test
    void cutsLimitsAtTheSamePlace() {
        Rounding rounding = Rounding.of(435_983.5, 35_323.5);
        assertEquals("357,000", rounding.text(357_282.76));
        assertEquals("–", rounding.text(Double.POSITIVE_INFINITY));
    }

    @ParameterizedTest
    @CsvSource({"18.0513,18.1", "99.94,99.9", "99.95,100", "151.2,151", "0,0.0", "-3.25,-3.3"})
    void percentagesHaveOneDecimalBelowAHundred(double value, String expected) {
        assertEquals(expected + "\u00a0%", Rounding.percent(value));
    }

    @Test
    void unknownPercentageIsADash() {
        assertEquals("–", Rounding.percent(Double.NaN));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"4.83451 | 4.835", "-8.5448 | -8.545", "0.00009 | 9.000e-05", "3e9 | 3.000e+09", "0 | 0", "NaN | –"
            })
    void constantsHaveFourDigits(double value, String expected) {
        assertEquals(expected, Rounding.constant(value));
    }

    @Test
    void countsHaveCommas() {
        assertEquals("1,234,567", Rounding.count(1_234_567));
    }
}
