package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.support.Tolerance;

class LeastSquaresTest {
    /** NIST prints eleven; no set is excused, not even those it warns of. Seven digits were asked for. */
    private static final Tolerance NINE_DIGITS = Tolerance.relative("nine certified digits", 1e-9);

    private static final LeastSquaresProblem.Curve LINE =
            CertifiedProblems.model((x, b) -> b[0] + b[1] * x, (x, b) -> new double[] {1, x});

    /** Every NIST problem from both of its published starts. */
    static Stream<Arguments> certified() {
        return CertifiedProblems.all()
                .flatMap(set -> Stream.of("start1", "start2")
                        .map(start -> Arguments.of(set.get("name").asText(), start, set)));
    }

    @ParameterizedTest(name = "{0} from {1}")
    @MethodSource("certified")
    void certifiedValuesComeOut(String name, String start, JsonNode set) {
        LeastSquaresFit fit = solve(set, CertifiedProblems.parameters(set, start));
        NINE_DIGITS.check(CertifiedProblems.parameters(set, "certified"), fit.parameters(), name);
        double[] sds = CertifiedProblems.parameters(set, "standard_deviation");
        for (int i = 0; i < sds.length; i++) {
            NINE_DIGITS.check(sds[i], fit.standardError(i), name + " sd " + i);
        }
        NINE_DIGITS.check(number(set.get("residual_sum_of_squares")), fit.rss(), name + " rss");
        NINE_DIGITS.check(number(set.get("residual_standard_deviation")), fit.sigma(), name + " sigma");
        assertTrue(fit.relativeOffset() < 1e-6, "offset " + fit.relativeOffset());
    }

    @Test
    void everyCertifiedProblemIsSolved() {
        assertEquals(CertifiedProblems.MODELS.size(), CertifiedProblems.all().count());
    }

    @Test
    void theBestOfSeveralStartsWins() {
        // a start where the curve is flat, and a good one
        JsonNode set = CertifiedProblems.all()
                .filter(s -> s.get("name").asText().equals("BoxBOD"))
                .findFirst()
                .orElseThrow();
        double[] flat = {100, 1e4};
        double[] good = CertifiedProblems.parameters(set, "start2");
        LeastSquaresFit both = solve(set, flat, good);
        assertEquals(solve(set, good).rss(), both.rss());
        assertTrue(solve(set, flat).rss() > both.rss());
    }

    @Test
    void parametersThatDataCannotTellApartHaveNoErrors() {
        LeastSquaresProblem.Curve twice =
                CertifiedProblems.model((x, b) -> (b[0] + b[1]) * x, (x, b) -> new double[] {x, x});
        LeastSquaresFit fit = LeastSquares.solve(LeastSquaresProblem.ofCurve(
                        twice, new double[] {1, 2, 3}, new double[] {2, 4, 7}, List.of(new double[] {1, 0})))
                .orElseThrow();
        assertFalse(fit.hasFullRank());
        assertTrue(Double.isNaN(fit.standardError(0)));
        assertTrue(fit.conditionNumber() > 1e14);
    }

    /** The points 1, 2, 4 over 0, 1, 2 lie 1/6, -1/3, 1/6 off y = 5/6 + 1.5·x: rss 1/6 (by hand). */
    @Test
    void aStraightLineThroughThreePoints() {
        LeastSquaresFit fit = line(new double[] {0, 1, 2}, new double[] {1, 2, 4});
        Tolerance.ROUNDING.check(new double[] {5 / 6.0, 1.5}, fit.parameters(), "line");
        Tolerance.ROUNDING.check(1 / 6.0, fit.rss(), "rss");
        Tolerance.ROUNDING.check(Math.sqrt(1 / 6.0), fit.sigma(), "sigma");
        Tolerance.ROUNDING.check(Math.sqrt(1 / 12.0), fit.standardError(1), "error of the slope");
        // n·(ln(2π·rss/n) + 1) + 2·3, by definition of Akaike's criterion
        Tolerance.ROUNDING.check(3 * (Math.log(2 * Math.PI / 18) + 1) + 6, fit.aic(), "AIC");
    }

    /** Small-sample criterion of Hurvich and Tsai: AIC + 2k(k+1)/(n-k-1), k = 3 (definition). */
    @Test
    void smallSamplesPayForParameters() {
        LeastSquaresFit six = line(new double[] {1, 2, 3, 4, 5, 6}, new double[] {1, 3, 2, 5, 4, 6});
        Tolerance.ROUNDING.check(six.aic() + 12, six.aicc(), "AICc");
        LeastSquaresFit four = line(new double[] {1, 2, 3, 4}, new double[] {1, 3, 2, 5});
        assertEquals(Double.POSITIVE_INFINITY, four.aicc());
        LeastSquaresFit three = line(new double[] {1, 2, 3}, new double[] {1, 3, 2});
        assertEquals(Double.POSITIVE_INFINITY, three.aicc());
    }

    @Test
    void anExactFitHasNoOffset() {
        LeastSquaresFit fit = line(new double[] {0, 1, 2, 3}, new double[] {1, 3, 5, 7});
        Tolerance.absolute("rounding", 1e-14).check(0, fit.rss(), "rss");
        assertArrayEquals(new double[] {1, 2}, fit.parameters(), 1e-12);
        assertTrue(fit.hasFullRank());
    }

    /**
     * Derivatives of the wrong sign lead nowhere, so the start stands: residuals 1, 2, 6 about b = 0, of which the
     * tangent takes 9/√3 on one degree of freedom and leaves √(41 - 27) on two (by hand).
     */
    @Test
    void farFromAnOptimumTheOffsetSaysSo() {
        LeastSquaresProblem.Curve backwards = CertifiedProblems.model((x, b) -> b[0], (x, b) -> new double[] {-1});
        LeastSquaresFit fit = LeastSquares.solve(LeastSquaresProblem.ofCurve(
                        backwards, new double[] {1, 2, 3}, new double[] {1, 2, 6}, List.of(new double[] {0})))
                .orElseThrow();
        assertArrayEquals(new double[] {0}, fit.parameters());
        Tolerance.ROUNDING.check(9 / Math.sqrt(3) / Math.sqrt(7), fit.relativeOffset(), "relative offset");
    }

    @Test
    void aModelWithoutValuesGivesNoFit() {
        LeastSquaresProblem.Curve nowhere =
                CertifiedProblems.model((x, b) -> Double.NaN, (x, b) -> new double[] {Double.NaN});
        Optional<LeastSquaresFit> fit = LeastSquares.solve(LeastSquaresProblem.ofCurve(
                nowhere, new double[] {1, 2, 3}, new double[] {1, 2, 3}, List.of(new double[] {1})));
        assertEquals(Optional.empty(), fit);
    }

    /** A point of weight 2 counts as the point twice, but for the degrees of freedom (by algebra). */
    @Test
    void aWeightIsANumberOfEqualPoints() {
        double[] x = {0, 1, 2, 3};
        double[] y = {1, 2, 4, 4};
        LeastSquaresProblem plain = LeastSquaresProblem.ofCurve(LINE, x, y, List.of(new double[] {0, 0}));
        LeastSquaresFit weighted =
                LeastSquares.solve(plain.withWeights(new double[] {1, 2, 1, 1})).orElseThrow();
        LeastSquaresFit repeated = line(new double[] {0, 1, 1, 2, 3}, new double[] {1, 2, 2, 4, 4});
        Tolerance.ROUNDING.check(repeated.parameters(), weighted.parameters(), "line");
        Tolerance.ROUNDING.check(repeated.rss(), weighted.rss(), "rss");
        Tolerance.ROUNDING.check(
                repeated.standardError(1) * Math.sqrt(1.5), weighted.standardError(1), "error of the slope");
        // -1/2·(n·(ln(2π·rss/n) + 1) - Σ ln w), by definition of the normal likelihood
        double expected = -0.5 * (4 * (Math.log(2 * Math.PI * weighted.rss() / 4) + 1) - Math.log(2));
        Tolerance.ROUNDING.check(expected, weighted.logLikelihood(), "log-likelihood");
    }

    /** For models linear in their parameters residual over one minus leverage is exact (by algebra). */
    @Test
    void deletedResidualsAreThoseOfFitsWithoutThePoint() {
        double[] x = {0, 1, 2, 3, 5};
        double[] y = {1, 2, 4, 4, 7};
        LeastSquaresFit all = line(x, y);
        double squares = 0;
        for (int i = 0; i < x.length; i++) {
            double[] p = line(without(x, i), without(y, i)).parameters();
            double off = y[i] - p[0] - p[1] * x[i];
            Tolerance.ROUNDING.check(off, all.deleted()[i], "without point " + i);
            squares += off * off;
        }
        Tolerance.ROUNDING.check(Math.sqrt(squares / 5), all.leaveOneOutError(), "leave-one-out error");
    }

    private static double[] without(double[] values, int i) {
        return IntStream.range(0, values.length)
                .filter(k -> k != i)
                .mapToDouble(k -> values[k])
                .toArray();
    }

    /** The least sum of squares with a slope of 1 or less is that of slope 1 (by hand). */
    @Test
    void theSearchStaysInsideTheDomain() {
        LeastSquaresProblem.Curve gentle = new LeastSquaresProblem.Curve() {
            @Override
            public double value(double x, double[] b) {
                return b[0] * x;
            }

            @Override
            public double[] gradient(double x, double[] b) {
                return new double[] {x};
            }

            @Override
            public boolean accepts(double[] b) {
                return b[0] <= 1;
            }
        };
        double[] x = {1, 2, 3};
        LeastSquaresFit fit = LeastSquares.solve(
                        LeastSquaresProblem.ofCurve(gentle, x, new double[] {2, 4, 6}, List.of(new double[] {0.5})))
                .orElseThrow();
        assertTrue(fit.parameters()[0] <= 1);
        Tolerance.relative("the edge", 1e-6).check(1, fit.parameters()[0], "slope");
        assertTrue(fit.relativeOffset() > 1, "no optimum there: " + fit.relativeOffset());
        List<double[]> outside = List.of(new double[] {2});
        assertEquals(Optional.empty(), LeastSquares.solve(LeastSquaresProblem.ofCurve(gentle, x, x, outside)));
    }

    @Test
    void problemsThatDoNotAddUpAreRefused() {
        double[] three = {1, 2, 3};
        double[] two = {1, 2};
        List<double[]> start = List.of(new double[] {0, 0});
        assertThrows(IllegalArgumentException.class, () -> LeastSquaresProblem.ofCurve(LINE, three, two, start));
        assertThrows(IllegalArgumentException.class, () -> LeastSquaresProblem.ofCurve(LINE, two, two, start));
        assertThrows(IllegalArgumentException.class, () -> LeastSquaresProblem.ofCurve(LINE, three, three, List.of()));
        LeastSquaresProblem good = LeastSquaresProblem.ofCurve(LINE, three, three, start);
        assertThrows(IllegalArgumentException.class, () -> good.withWeights(two));
        assertThrows(IllegalArgumentException.class, () -> good.withWeights(new double[] {1, 0, 1}));
    }

    private static LeastSquaresFit line(double[] x, double[] y) {
        return LeastSquares.solve(LeastSquaresProblem.ofCurve(LINE, x, y, List.of(new double[] {0, 0})))
                .orElseThrow();
    }

    private static LeastSquaresFit solve(JsonNode set, double[]... starts) {
        return LeastSquares.solve(CertifiedProblems.problem(set, starts)).orElseThrow();
    }
}
