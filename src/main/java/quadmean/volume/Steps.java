package quadmean.volume;

/**
 * Rounding to whole steps. What a conversion between units leaves, such as 15.999 999 999 999 998 ft for a log of
 * 16 ft, counts as the step it stands for.
 */
final class Steps {
    private static final double HAIR = 1e-9;

    private Steps() {}

    /** The whole number of steps at or below a value. */
    static double countDown(double value, double step) {
        return Math.floor(value / step + HAIR);
    }

    /** The multiple of the step at or below a value. */
    static double down(double value, double step) {
        return countDown(value, step) * step;
    }

    /** The nearest multiple of the step, halves up. */
    static double nearest(double value, double step) {
        return countDown(value + step / 2, step) * step;
    }

    /** Whether a value is a multiple of the step. */
    static boolean isMultiple(double value, double step) {
        return Math.abs(value - nearest(value, step)) <= HAIR * step;
    }
}
