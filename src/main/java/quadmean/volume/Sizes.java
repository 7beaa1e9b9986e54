package quadmean.volume;

/** Checks of sizes, written so that NaN fails; each returns its value. */
final class Sizes {
    /** No tree is nearly as tall. */
    private static final double LONGEST_LOG_FT = 1000;

    private Sizes() {}

    static double positive(double value, String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be above zero and finite, got " + value);
        }
        return value;
    }

    static double notNegative(double value, String name) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be zero or more and finite, got " + value);
        }
        return value;
    }

    static double logFeet(double value) {
        if (!(value >= 0 && value <= LONGEST_LOG_FT)) {
            throw new IllegalArgumentException("length (ft) must lie in [0, " + LONGEST_LOG_FT + "], got " + value);
        }
        return value;
    }
}
