package quadmean.stats;

/**
 * The least-squares line y = intercept + slope·x.
 *
 * @param intercept value at x = 0
 * @param slope change of y for one unit of x; NaN where all x are equal
 */
public record StraightLine(double intercept, double slope) {

    /**
     * The line through points.
     *
     * @param x predictors, at least two
     * @param y one response for each
     */
    public static StraightLine through(double[] x, double[] y) {
        Arguments.atLeast(x.length, 2, "points for a line");
        double meanX = Moments.of(x).mean();
        double meanY = Moments.of(y).mean();
        double[] squares = new double[x.length];
        double[] products = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            squares[i] = (x[i] - meanX) * (x[i] - meanX);
            products[i] = (x[i] - meanX) * (y[i] - meanY);
        }
        double slope = Moments.sum(products) / Moments.sum(squares);
        return new StraightLine(meanY - slope * meanX, slope);
    }

    /** The line's value at x. */
    public double at(double x) {
        return intercept + slope * x;
    }
}
