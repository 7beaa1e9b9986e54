package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.LogRule;
import quadmean.model.Scaling.Figures;
import quadmean.model.Standing;
import quadmean.support.Tolerance;

/** Log rules: formulas, and where a table ends. */
class LogRuleTest {
    /** The polynomial's coefficients are printed with seven digits. */
    private static final Tolerance POLYNOMIAL = Tolerance.absolute("printed coefficients of the polynomial", 0.001);

    /** By the formula, a log of 4 in and less has nothing left. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 3, 3.9, 4})
    void doyleGivesNothingUpTo4Inches(double inches) {
        assertEquals(0, unrounded(LogRule.DOYLE, inches, 16));
    }

    /** 32 ft of 12 in, tapering 2 in in 16 ft: 128 in one piece; (8/4)²·16 + (10/4)²·16 = 64 + 100 in two. */
    @Test
    void doyleIsNotAdditiveOverSplitsWithTaper() {
        assertEquals(128, unrounded(LogRule.DOYLE, 12, 32));
        assertEquals(164, unrounded(LogRule.DOYLE, 12, 16) + unrounded(LogRule.DOYLE, 14, 16));
    }

    /** 0.0494·D²·L - 0.124·D·L - 0.269·L worked out by hand; coefficients from memory (Bruce 1925). */
    @ParameterizedTest
    @CsvSource({"12, 85.7056", "20, 272.176", "30, 647.536"})
    void secondScribnerRegression(double inches, double expected) {
        Tolerance.ROUNDING.check(expected, unrounded(LogRule.SCRIBNER_REGRESSION, inches, 16), inches + " in");
        RuleFigure figure = BoardFootRule.of(LogRule.SCRIBNER_REGRESSION).figure(inches, 16, Figures.AS_TABLED);
        assertEquals(new RuleFigure(Math.round(expected), Coverage.FORMULA, Standing.FROM_MEMORY), figure);
    }

    /** Michigan Compiled Laws 290.401, worked out by hand: 0.904762·Σ(0.22·D² - 0.71·D), D up 1/2 in each 4 ft. */
    @ParameterizedTest
    @CsvSource({"8, 8, 16.521", "12, 16, 96.918", "20, 16, 289.741", "30, 20, 857.352", "6, 4, 3.311"})
    void internationalQuarterFollowsTheStatute(double inches, double feet, double expected) {
        Tolerance.printed(3).check(expected, unrounded(LogRule.INTERNATIONAL_QUARTER, inches, feet), inches + " in");
    }

    /** Grosenbaugh 1952: a polynomial that equals the sum at multiples of 4 ft. */
    @Test
    void internationalQuarterEqualsThePolynomialAtMultiplesOf4Feet() {
        for (double l = 4; l <= 20; l += 4) {
            for (double d = 6; d <= 30; d++) {
                double polynomial = 0.04976191 * l * d * d
                        + 0.006220239 * l * l * d
                        - 0.1854762 * l * d
                        + 0.0002591767 * l * l * l
                        - 0.01159226 * l * l
                        + 0.04222222 * l;
                POLYNOMIAL.check(polynomial, unrounded(LogRule.INTERNATIONAL_QUARTER, d, l), d + " in, " + l + " ft");
            }
        }
    }

    /** 10 ft of 10 in: sections of 10 and 10.5 in, and half a section of 11 in: (14.9 + 16.8 + 18.81/2)·0.904762. */
    @Test
    void theLastTwoFeetAreHalfASection() {
        double expected = (14.9 + 16.8 + 18.81 / 2) * 0.904762;
        Tolerance.ROUNDING.check(expected, unrounded(LogRule.INTERNATIONAL_QUARTER, 10, 10), "10 in, 10 ft");
    }

    /** Two statutes: a 4-ft section of 12 in has 0.22·144 - 0.71·12 = 23.16 by the 1/8-inch rule, 0.904762 of it by 1/4. */
    @Test
    void theFactorOfTheQuarterInchRuleIsNotMixedUpWithTheEighthInchRule() {
        Tolerance.ROUNDING.check(23.16, unrounded(LogRule.INTERNATIONAL_EIGHTH, 12, 4), "1/8 in");
        Tolerance.ROUNDING.check(23.16 * 0.904762, unrounded(LogRule.INTERNATIONAL_QUARTER, 12, 4), "1/4 in");
        for (double d = 4; d <= 40; d += 3) {
            double eighth = unrounded(LogRule.INTERNATIONAL_EIGHTH, d, 16);
            double quarter = unrounded(LogRule.INTERNATIONAL_QUARTER, d, 16);
            Tolerance.ROUNDING.check(0.904762, quarter / eighth, d + " in");
        }
    }

    /** 12 in, 16 ft: 0.79·144 - 24 - 4 = 85.76 rounds to 90, the table (cell from memory) has 80. */
    @Test
    void decimalCIsNotTheScribnerFormulaRoundedToTens() {
        Tolerance.ROUNDING.check(85.76, unrounded(LogRule.SCRIBNER_FORMULA, 12, 16), "formula");
        assertEquals(86, tabled(LogRule.SCRIBNER_FORMULA, 12, 16));
        assertEquals(90, Steps.nearest(unrounded(LogRule.SCRIBNER_FORMULA, 12, 16), 10));
        assertEquals(80, tabled(LogRule.SCRIBNER_DECIMAL_C, 12, 16));
    }

    /** Seen in print: 6 in, 8 ft is half of ten. */
    @Test
    void figuresOfDecimalCAreTensOfBoardFeet() {
        assertEquals(5, tabled(LogRule.SCRIBNER_DECIMAL_C, 6, 8));
        assertEquals(660, tabled(LogRule.SCRIBNER_DECIMAL_C, 30, 16));
        assertEquals(660, unrounded(LogRule.SCRIBNER_DECIMAL_C, 30, 16));
    }

    /** Scribner formula by hand, to tens: 31 in 693.19, 5 in 5.75, 12 in·7 ft 37.52, ·9 ft 48.24, ·22 ft 117.92. */
    @ParameterizedTest
    @CsvSource({
        "31, 16, 690, OVER_LARGEST_DIAMETER",
        "5, 16, 10, UNDER_SMALLEST_DIAMETER",
        "0, 16, 0, UNDER_SMALLEST_DIAMETER",
        "12, 7, 40, UNDER_SHORTEST_LENGTH",
        "12, 6, 30, UNDER_SHORTEST_LENGTH",
        "12, 9, 50, BETWEEN_LENGTHS",
        "12, 16.5, 90, BETWEEN_LENGTHS",
        "12, 22, 120, OVER_LONGEST_LENGTH",
        "12, 21, 110, OVER_LONGEST_LENGTH",
        "12.9, 9, 50, BETWEEN_LENGTHS",
    })
    void outsideItsTableDecimalCSaysThatTheFormulaStandsIn(
            double inches, double feet, double expected, Coverage coverage) {
        RuleFigure figure = DecimalC.table().figure(inches, feet, Figures.AS_TABLED);
        assertEquals(expected, figure.boardFeet());
        assertEquals(coverage, figure.coverage());
        assertTrue(figure.coverage().besideTable());
    }

    /** Lengths and diameters that a conversion from metres leaves a hair off are those of the table. */
    @ParameterizedTest
    @CsvSource({"12, 15.999999999999998", "12, 16.000000000000004", "11.999999999999998, 16", "12.9, 16"})
    void theTableIsFoundInSpiteOfConversions(double inches, double feet) {
        RuleFigure figure = DecimalC.table().figure(inches, feet, Figures.AS_TABLED);
        assertEquals(new RuleFigure(80, Coverage.TABLE, Standing.FROM_MEMORY), figure);
        assertFalse(figure.coverage().besideTable());
    }

    @ParameterizedTest
    @EnumSource
    void boardFeetNeverFallWithDiameterAndAreNeverNegative(LogRule rule) {
        for (Figures figures : Figures.values()) {
            for (double feet = 1; feet <= 40; feet += 0.5) {
                double before = 0;
                for (double inches = 0; inches <= 60; inches += 0.125) {
                    double now =
                            BoardFootRule.of(rule).figure(inches, feet, figures).boardFeet();
                    if (!(now >= before)) {
                        fail(rule + " " + figures + " " + inches + " in, " + feet + " ft: " + now + " after " + before);
                    }
                    before = now;
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void aRuleSaysWhatItIsAndWhereItComesFrom(LogRule rule) {
        BoardFootRule scale = BoardFootRule.of(rule);
        assertTrue(
                scale.statement().get(0).contains(rule.label()),
                () -> scale.statement().toString());
        assertFalse(scale.rounding().isBlank());
    }

    @ParameterizedTest
    @EnumSource
    void sizesOutOfTheirDomainAreRefusedByName(LogRule rule) {
        BoardFootRule scale = BoardFootRule.of(rule);
        for (double bad : new double[] {Double.NaN, -1, Double.POSITIVE_INFINITY}) {
            refused("diameter (in)", bad, () -> scale.figure(bad, 16, Figures.AS_TABLED));
            refused("length (ft)", bad, () -> scale.figure(12, bad, Figures.AS_TABLED));
        }
        refused("length (ft)", 1001, () -> scale.figure(12, 1001, Figures.AS_TABLED));
    }

    private static void refused(String start, double value, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(start) && message.endsWith("got " + value), message);
    }

    private static double unrounded(LogRule rule, double inches, double feet) {
        return BoardFootRule.of(rule).figure(inches, feet, Figures.UNROUNDED).boardFeet();
    }

    private static double tabled(LogRule rule, double inches, double feet) {
        return BoardFootRule.of(rule).figure(inches, feet, Figures.AS_TABLED).boardFeet();
    }
}
