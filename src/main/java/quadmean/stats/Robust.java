package quadmean.stats;

import java.util.Arrays;

/** Middle and spread that a few wild values do not move. */
public final class Robust {
    /** Makes the median absolute deviation of normal values their standard deviation: 1/0.67449. */
    private static final double MAD_TO_SD = 1.4826;

    private Robust() {}

    /** The median; NaN without values. */
    public static double median(double[] values) {
        double[] sorted = Arrays.stream(values).sorted().toArray();
        int n = sorted.length;
        if (n == 0) {
            return Double.NaN;
        }
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }

    /** A robust standard deviation about a given middle: 1.4826 times the median absolute deviation from it. */
    public static double sd(double[] values, double middle) {
        return MAD_TO_SD
                * median(Arrays.stream(values).map(v -> Math.abs(v - middle)).toArray());
    }
}
