package quadmean.stats;

import java.util.Locale;

/** Argument checks, written so that NaN fails; each returns its value. */
final class Arguments {
    private Arguments() {}

    static double confidence(double value) {
        return inside(value, 0, 1, "confidence");
    }

    static double positive(double value, String name) {
        return inside(value, 0, Double.POSITIVE_INFINITY, name);
    }

    static int atLeast(int value, int least, String name) {
        if (value < least) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s must be at least %d, got %d", name, least, value));
        }
        return value;
    }

    static void sameLength(int one, int other, String names) {
        if (one != other) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s must be as many, got %d and %d", names, one, other));
        }
    }

    /** A probability of selection, in (0, 1]. */
    static double probability(double value) {
        if (!(value > 0 && value <= 1)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "a probability must lie in (0, 1], got %s", value));
        }
        return value;
    }

    static double inside(double value, double low, double high, String name) {
        if (!(value > low && value < high)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s must lie in (%s, %s), got %s", name, low, high, value));
        }
        return value;
    }
}
