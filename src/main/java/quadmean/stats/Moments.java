package quadmean.stats;

/**
 * Mean and variance of plain numbers, in two passes with compensated sums, so that the order of the values does not
 * show in the result.
 *
 * @param n number of values
 * @param mean arithmetic mean; NaN without values
 * @param variance variance with divisor n - 1; NaN for fewer than two values
 */
public record Moments(int n, double mean, double variance) {

    /** Mean and variance of the values. */
    public static Moments of(double[] values) {
        int n = values.length;
        double mean = sum(values) / n;
        double[] squares = new double[n];
        for (int i = 0; i < n; i++) {
            squares[i] = (values[i] - mean) * (values[i] - mean);
        }
        return new Moments(n, n == 0 ? Double.NaN : mean, n < 2 ? Double.NaN : sum(squares) / (n - 1));
    }

    /** Standard deviation with divisor n - 1. */
    public double sd() {
        return Math.sqrt(variance);
    }

    /** Sum with Neumaier's compensation (Neumaier 1974). */
    public static double sum(double[] values) {
        double sum = 0;
        double lost = 0;
        for (double v : values) {
            double next = sum + v;
            lost += Math.abs(sum) >= Math.abs(v) ? (sum - next) + v : (v - next) + sum;
            sum = next;
        }
        return sum + lost;
    }
}
