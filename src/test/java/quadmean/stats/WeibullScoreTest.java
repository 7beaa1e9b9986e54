package quadmean.stats;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.Tolerance;

/** Derivatives against difference quotients of the logarithm of the density over the share above the limit. */
class WeibullScoreTest {
    private static final double STEP = 1e-5;
    private static final Tolerance QUOTIENT = new Tolerance("difference quotient of second order", 1e-8, 1e-8);

    @ParameterizedTest
    @CsvSource({"0, 30, 2.5, 0, 12", "0, 30, 2.5, 10, 45", "5, 20, 0.9, 5, 7", "5, 20, 1.4, 12, 60"})
    void derivatives(double a, double b, double c, double limit, double x) {
        WeibullScore score = new WeibullScore(new Weibull(a, b, c), limit);
        QUOTIENT.check(quotient(s -> log(a, b, s, limit, x), c), score.byShape(x), "by shape");
        QUOTIENT.check(quotient(s -> log(a, s, c, limit, x), b), score.byScale(x), "by scale");
        QUOTIENT.check(
                quotient(s -> new WeibullScore(new Weibull(a, b, s), limit).byShape(x), c),
                score.byShapeTwice(x),
                "by shape twice");
        QUOTIENT.check(
                quotient(s -> new WeibullScore(new Weibull(a, s, c), limit).byScale(x), b),
                score.byScaleTwice(x),
                "by scale twice");
        QUOTIENT.check(
                quotient(s -> new WeibullScore(new Weibull(a, s, c), limit).byShape(x), b),
                score.byBoth(x),
                "by shape and scale");
        QUOTIENT.check(
                quotient(s -> new WeibullScore(new Weibull(a, b, s), limit).byScale(x), c),
                score.byBoth(x),
                "by scale and shape");
    }

    private static double log(double a, double b, double c, double limit, double x) {
        Weibull w = new Weibull(a, b, c);
        return Math.log(w.density(x)) - Math.log(1 - w.below(limit));
    }

    private static double quotient(DoubleUnaryOperator f, double at) {
        double h = STEP * at;
        return (f.applyAsDouble(at + h) - f.applyAsDouble(at - h)) / (2 * h);
    }
}
