package quadmean.measure;

/** Argument checks, written so that NaN fails; each returns its value. */
final class Checks {
    private Checks() {}

    static double positive(double value, String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be above zero, got " + value);
        }
        return value;
    }

    static double notNegative(double value, String name) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be zero or more, got " + value);
        }
        return value;
    }

    static double finite(double value, String name) {
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be a finite number, got " + value);
        }
        return value;
    }
}
