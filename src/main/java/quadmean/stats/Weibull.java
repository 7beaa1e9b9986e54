package quadmean.stats;

/**
 * The Weibull distribution, F(x) = 1 - exp(-((x-a)/b)^c): diameters of a stand (Bailey and Dell 1973).
 *
 * @param location a, the least value; below it there is nothing
 * @param scale b, above 0: what 63.2 % lie below, counted from a
 * @param shape c, above 0: below 1 a falling curve, near 3.6 about symmetric
 */
public record Weibull(double location, double scale, double shape) {
    /** Dubey's two probabilities, the best pair for the shape (Dubey 1967, from memory). */
    public static final double LOW = 0.16731;

    /** The upper one. */
    public static final double HIGH = 0.97366;

    /** The share below a plus b, 1 - 1/e, as the trade rounds it. */
    private static final double AT_SCALE = 0.6321;

    /** Refuses parameters outside their domain. */
    public Weibull {
        Arguments.positive(scale, "scale");
        Arguments.positive(shape, "shape");
    }

    /** Share of values at or below x. */
    public double below(double x) {
        return x <= location ? 0 : -Math.expm1(-Math.pow((x - location) / scale, shape));
    }

    /** Share of values between two, as of a diameter class. */
    public double between(double low, double high) {
        return below(high) - below(low);
    }

    /** Density at x. */
    public double density(double x) {
        double z = (x - location) / scale;
        return z <= 0 ? 0 : shape / scale * Math.pow(z, shape - 1) * Math.exp(-Math.pow(z, shape));
    }

    /**
     * The distribution through three percentiles: c = ln[ln(1-p2)/ln(1-p1)]/ln((x2-a)/(x1-a)), b the 63.21 % point less a (Bailey and
     * Dell 1973).
     *
     * @param values values above the location, at least two different
     * @param location a
     * @param low p1, as {@link #LOW}
     * @param high p2, above p1, as {@link #HIGH}
     * @throws IllegalArgumentException if a value is not above the location, or percentiles coincide
     */
    public static Weibull byPercentiles(double[] values, double location, double low, double high) {
        Arguments.inside(low, 0, 1, "lower probability");
        Arguments.inside(high, low, 1, "upper probability");
        for (double x : values) {
            Arguments.positive(x - location, "a value less the location");
        }
        double spread = Math.log((percentile(values, high) - location) / (percentile(values, low) - location));
        double shape = Math.log(Math.log1p(-high) / Math.log1p(-low)) / Arguments.positive(spread, "spread of values");
        return new Weibull(location, percentile(values, AT_SCALE) - location, shape);
    }

    /** The value at rank (n+1)·p, between two by a straight line (Hyndman and Fan 1996, type 6; number from memory). */
    private static double percentile(double[] values, double p) {
        double[] sorted = values.clone();
        java.util.Arrays.sort(sorted);
        double rank = Math.min(Math.max((sorted.length + 1) * p, 1), sorted.length);
        int k = (int) Math.min(rank, sorted.length - 1);
        return sorted.length == 1 ? sorted[0] : sorted[k - 1] + (rank - k) * (sorted[k] - sorted[k - 1]);
    }
}
