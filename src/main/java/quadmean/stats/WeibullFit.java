package quadmean.stats;

import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A Weibull distribution of largest likelihood. For values that were only taken at or above a limit, as trees from the smallest
 * callipered diameter on, the likelihood is that of values known to reach it; leaving that out moves shape and scale.
 *
 * @param weibull the distribution
 * @param scaleError standard error of the scale from the observed information; trees as if independent of each other
 * @param shapeError standard error of the shape
 * @param logLikelihood its logarithm at the largest, weights scaled to a mean of 1
 */
public record WeibullFit(Weibull weibull, double scaleError, double shapeError, double logLikelihood) {
    private static final double LEAST_SHAPE = 0.02;
    private static final double MOST_SHAPE = 200;

    /**
     * The fit to a whole distribution.
     *
     * @param values values above the location, at least two different
     * @param location a, held fixed
     */
    public static Optional<WeibullFit> complete(double[] values, double location) {
        double[] ones = new double[values.length];
        java.util.Arrays.fill(ones, 1);
        return truncated(values, ones, location, location);
    }

    /**
     * The fit to values at or above a limit: density over 1 - F(limit).
     *
     * @param values values at or above the limit and above the location, at least two different
     * @param weights one for each, above 0: trees that it stands for
     * @param location a, held fixed
     * @param limit least value that was taken, at or above the location; equal to it for none
     * @return the fit, or empty where the likelihood has no largest value with a shape between 0.02 and 200
     */
    public static Optional<WeibullFit> truncated(double[] values, double[] weights, double location, double limit) {
        Likelihood likelihood = new Likelihood(values, weights, location, limit);
        double low = likelihood.slope(LEAST_SHAPE);
        double high = likelihood.slope(MOST_SHAPE);
        if (!(low > 0 && high < 0)) {
            return Optional.empty();
        }
        double shape = new BrentSolver(1e-14, 1e-14).solve(1_000, likelihood::slope, LEAST_SHAPE, MOST_SHAPE);
        return Optional.of(likelihood.at(shape));
    }

    /** The likelihood in units of the largest value, so that no power overflows. */
    private static final class Likelihood {
        private final double location;
        private final double unit;
        private final double[] x;
        private final double[] w;
        private final double limit;
        private final double meanLog;

        Likelihood(double[] values, double[] weights, double location, double limit) {
            Arguments.sameLength(weights.length, values.length, "weights and values");
            Arguments.atLeast(values.length, 2, "values of a distribution");
            double mean = Moments.of(weights).mean();
            this.location = location;
            this.unit = java.util.Arrays.stream(values).max().orElseThrow() - location;
            this.limit = (limit - location) / unit;
            if (!(this.limit >= 0)) {
                throw new IllegalArgumentException("the limit " + limit + " lies below the location " + location);
            }
            x = new double[values.length];
            w = new double[values.length];
            double logs = 0;
            for (int i = 0; i < x.length; i++) {
                x[i] = Arguments.positive(values[i] - location, "a value less the location") / unit;
                w[i] = Arguments.positive(weights[i], "a weight") / mean;
                if (x[i] < this.limit) {
                    throw new IllegalArgumentException("the value " + values[i] + " lies below the limit " + limit);
                }
                logs += w[i] * Math.log(x[i]);
            }
            meanLog = logs / x.length;
        }

        /** Derivative of the log-likelihood by the shape for one value, the scale at its best for that shape. */
        double slope(double c) {
            return 1 / c + meanLog - excess(c, 1) / excess(c, 0);
        }

        WeibullFit at(double c) {
            int n = x.length;
            double b = Math.pow(excess(c, 0) / n, 1 / c);
            double logB = Math.log(b);
            double s0 = n; // Σ z^c less the limit's part, z = x/b
            double s1 = excess(c, 1) / Math.pow(b, c) - logB * s0;
            double s2 = excess(c, 2) / Math.pow(b, c) - 2 * logB * (s1 + logB * s0) + logB * logB * s0;
            double cc = n / c / c + s2;
            double bb = (c * (c + 1) * s0 - n * c) / b / b;
            double cb = (n - s0 - c * s1) / b;
            double determinant = cc * bb - cb * cb;
            double logLikelihood = n * (Math.log(c / b / unit) + (c - 1) * (meanLog - logB) - 1);
            return new WeibullFit(
                    new Weibull(location, b * unit, c),
                    unit * Math.sqrt(cc / determinant),
                    Math.sqrt(bb / determinant),
                    logLikelihood);
        }

        /** Σ w·(x^c·ln^k x - limit^c·ln^k limit). */
        private double excess(double c, int k) {
            double atLimit = limit == 0 ? 0 : Math.pow(limit, c) * Math.pow(Math.log(limit), k);
            double[] terms = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                terms[i] = w[i] * (Math.pow(x[i], c) * Math.pow(Math.log(x[i]), k) - atLimit);
            }
            return Moments.sum(terms);
        }
    }
}
