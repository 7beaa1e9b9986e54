package quadmean.stats;

/**
 * A least-squares line with what regression estimators take from it.
 *
 * @param n number of points
 * @param line the line; its slope is NaN where all x are equal
 * @param meanX mean of x
 * @param squaresX sum of squares of x about its mean
 * @param residualVariance sum of squared residuals over n - 2; NaN for two points
 */
record FittedLine(int n, StraightLine line, double meanX, double squaresX, double residualVariance) {

    static FittedLine through(double[] x, double[] y) {
        Arguments.sameLength(y.length, x.length, "values of y and x");
        StraightLine line = StraightLine.through(x, y);
        Moments moments = Moments.of(x);
        double[] squares = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            double r = y[i] - line.at(x[i]);
            squares[i] = r * r;
        }
        int n = x.length;
        double residual = n < 3 ? Double.NaN : Moments.sum(squares) / (n - 2);
        return new FittedLine(n, line, moments.mean(), moments.variance() * (n - 1), residual);
    }

    /** The line and what scatters about it, step by step; X is the auxiliary at which it is read. */
    void show(double[] x, double[] y, double at, Working working) {
        double[] fromMean = java.util.Arrays.stream(x).map(v -> v - meanX).toArray();
        double[] residuals = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            residuals[i] = y[i] - line.at(x[i]);
        }
        working.mean("x̄", "mean of their auxiliary", "n", x, meanX, Working.Scale.NUMBER);
        working.sum(
                "SS", "squares of the auxiliary about it", Working.SQUARES, fromMean, squaresX, Working.Scale.NUMBER);
        working.given("a", "least-squares line: height at 0", line.intercept(), Working.Scale.FACTOR);
        working.given("b", "and slope", line.slope(), Working.Scale.FACTOR);
        working.step("mean", "mean, the line read at X", "{a} + {b} × {X}", line.at(at), Working.Scale.VALUE);
        if (Double.isFinite(residualVariance)) {
            String formula = "(" + Working.SQUARES + ") / ({n} - 2)";
            working.sum("s²", "variance about the line", formula, residuals, residualVariance, Working.Scale.SQUARE);
        }
    }

    /** What the variance of the line's height at x is, over the residual variance: 1/n + (x - meanX)²/squaresX. */
    double leverage(double x) {
        return 1.0 / n + (x - meanX) * (x - meanX) / squaresX;
    }
}
