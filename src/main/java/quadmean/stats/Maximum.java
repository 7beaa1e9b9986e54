package quadmean.stats;

import java.util.function.DoubleUnaryOperator;

/** The largest value of a function with one peak, by golden section. */
public final class Maximum {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** Near its peak a function is flat to rounding over a share of this size. */
    private static final double NARROW = 1e-9;

    private Maximum() {}

    /**
     * Where a function is largest.
     *
     * @param low lower end of the search
     * @param high upper end
     * @param function a function with one peak between them, or rising or falling throughout
     */
    public static double between(double low, double high, DoubleUnaryOperator function) {
        double a = low;
        double b = high;
        double left = b - GOLDEN * (b - a);
        double right = a + GOLDEN * (b - a);
        double atLeft = function.applyAsDouble(left);
        double atRight = function.applyAsDouble(right);
        while (b - a > NARROW * (high - low)) {
            if (atLeft >= atRight) {
                b = right;
                right = left;
                atRight = atLeft;
                left = b - GOLDEN * (b - a);
                atLeft = function.applyAsDouble(left);
            } else {
                a = left;
                left = right;
                atLeft = atRight;
                right = a + GOLDEN * (b - a);
                atRight = function.applyAsDouble(right);
            }
        }
        return (a + b) / 2;
    }
}
