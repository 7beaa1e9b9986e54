package quadmean.support;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.Locale;

/**
 * How near a value must come to its reference, with the reason in its name.
 *
 * @param name what the tolerance allows for
 * @param relative allowed difference over the size of the expected value
 * @param absolute allowed difference where that is larger
 */
public record Tolerance(String name, double relative, double absolute) {
    /** Rounding of a few dozen double operations. */
    public static final Tolerance ROUNDING = relative("rounding of doubles", 1e-12);

    /** References that R printed with at least ten significant digits. */
    public static final Tolerance R_SCRIPT = relative("digits of the R reference", 1e-9);

    /** Least-squares estimates against another program's: both stop a little short of the optimum. */
    public static final Tolerance FIT = relative("two programs fit the same data", 1e-6);

    /** Certified values of nonlinear problems, to seven digits. */
    public static final Tolerance CERTIFIED = relative("seven certified digits", 1e-7);

    /** A tolerance in proportion to the expected value. */
    public static Tolerance relative(String name, double share) {
        return new Tolerance(name, share, 0);
    }

    /** A fixed tolerance, for values near zero. */
    public static Tolerance absolute(String name, double difference) {
        return new Tolerance(name, 0, difference);
    }

    /** Half a unit of the last decimal that a publication prints, and a hair for the decimal's own binary rounding. */
    public static Tolerance printed(int decimals) {
        return absolute("printed with " + decimals + " decimals", 0.5 * Math.pow(10, -decimals) * (1 + 1e-9));
    }

    /** Fails unless the value is near enough; NaN and infinity never are. */
    public void check(double expected, double actual, String what) {
        double allowed = Math.max(relative * Math.abs(expected), absolute);
        if (!(Math.abs(actual - expected) <= allowed)) {
            fail(String.format(
                    Locale.ROOT,
                    "%s: expected %.17g, got %.17g, off by %.3g; allowed %.3g (%s)",
                    what,
                    expected,
                    actual,
                    Math.abs(actual - expected),
                    allowed,
                    name));
        }
    }

    /** Checks two arrays of the same length, value by value. */
    public void check(double[] expected, double[] actual, String what) {
        if (expected.length != actual.length) {
            fail(what + ": expected " + expected.length + " values, got " + actual.length);
        }
        for (int i = 0; i < expected.length; i++) {
            check(expected[i], actual[i], what + "[" + i + "]");
        }
    }
}
