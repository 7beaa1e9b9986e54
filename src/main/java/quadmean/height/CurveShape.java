package quadmean.height;

import java.util.Arrays;
import java.util.Locale;

/**
 * Where the shape of a curve is judged: from well below the smallest tree to a quarter beyond the largest.
 *
 * @param low smallest dbh looked at
 * @param high largest dbh looked at
 * @param most a height above breast height that no sound curve reaches there
 */
record CurveShape(double low, double high, double most) {
    /** Share of the smallest dbh down to which curves are judged; common practice, no source. */
    private static final double BELOW = 1.0 / 20;

    /** The largest measured dbh times this is judged too; common practice, no source. */
    private static final double BEYOND = 1.25;

    /** A curve that gives more than so many times the tallest tree just beyond the data explodes; common practice, no source. */
    private static final double EXPLODES = 2;

    private static final int STEPS = 400;

    /**
     * The range for a set of heights.
     *
     * @param d measured diameters
     * @param y their heights above breast height
     * @param smallest the smallest dbh that the curve must serve
     */
    static CurveShape over(double[] d, double[] y, double smallest) {
        double least = Math.min(smallest, Arrays.stream(d).min().orElse(Double.NaN));
        double largest = Arrays.stream(d).max().orElse(Double.NaN);
        double tallest = Arrays.stream(y).max().orElse(Double.NaN);
        return new CurveShape(BELOW * least, BEYOND * largest, EXPLODES * tallest);
    }

    /** What is wrong with the shape of a curve; empty if nothing. */
    String fault(CurveModel model, double[] p) {
        double before = 0;
        for (int i = 0; i <= STEPS; i++) {
            double at = low + (high - low) * i / STEPS;
            double value = model.value(at, p);
            if (!(value >= 0)) {
                return String.format(Locale.ROOT, "lies below breast height, or has no height, at dbh %.1f", at);
            }
            if (!(value <= most)) {
                return String.format(Locale.ROOT, "explodes: more than twice the tallest tree at dbh %.1f", at);
            }
            if (value < before) {
                return String.format(Locale.ROOT, "falls at dbh %.1f", at);
            }
            before = value;
        }
        return "";
    }
}
