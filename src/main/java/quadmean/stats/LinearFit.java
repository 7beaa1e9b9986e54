package quadmean.stats;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * A weighted linear least-squares fit of y on columns of predictors, with what each observation does to it. A column of
 * ones makes an intercept.
 *
 * @param coefficients estimates, one for each column; NaN without full rank
 * @param covariance their covariance matrix, sigma²·(XᵀWX)⁻¹; NaN without full rank
 * @param rss weighted residual sum of squares
 * @param y observations
 * @param weights weights of the observations
 * @param fitted fitted values; NaN without full rank
 * @param leverages diagonal of the hat matrix; they sum to the number of coefficients
 * @param conditionNumber of the weighted predictors with columns scaled to length one
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record LinearFit(
        double[] coefficients,
        double[][] covariance,
        double rss,
        double[] y,
        double[] weights,
        double[] fitted,
        double[] leverages,
        double conditionNumber) {
    /** Columns that agree to twelve digits are the same column. */
    private static final double SINGULAR = 1e12;

    /** Leverage so near to 1 leaves nothing but rounding of the residual. */
    private static final double ALONE = 1e-10;

    /**
     * Fits by Householder reflections.
     *
     * @param columns predictors, each with a value for every observation
     * @param y observations, more of them than columns
     * @param weights their weights, above 0: in inverse proportion to their variances
     */
    public static LinearFit of(double[][] columns, double[] y, double[] weights) {
        Arguments.atLeast(y.length, columns.length + 1, "observations for " + columns.length + " coefficients");
        double[][] scaled = new double[columns.length][];
        double[] scale = new double[columns.length];
        for (int k = 0; k < columns.length; k++) {
            scaled[k] = rooted(columns[k], weights);
            double length = length(scaled[k]);
            scale[k] = length > 0 ? length : 1;
            for (int i = 0; i < y.length; i++) {
                scaled[k][i] /= scale[k];
            }
        }
        double[][] kept = Arrays.stream(scaled).map(double[]::clone).toArray(double[][]::new);
        Householder turned = Householder.of(scaled, rooted(y, weights));
        double inverseCondition = new SingularValueDecomposition(new Array2DRowRealMatrix(turned.triangle(), false))
                .getInverseConditionNumber();
        boolean hasFullRank = inverseCondition * SINGULAR > 1;
        return new Builder(columns, y, weights, kept, scale, turned, hasFullRank).build(1 / inverseCondition);
    }

    /** Number of observations. */
    public int n() {
        return y.length;
    }

    /** Whether the observations tell all coefficients apart; without it nothing is estimated. */
    public boolean hasFullRank() {
        return Double.isFinite(covariance[0][0]);
    }

    /** Degrees of freedom of the residuals. */
    public int df() {
        return n() - coefficients.length;
    }

    /** Residual standard deviation of an observation with weight 1. */
    public double sigma() {
        return Math.sqrt(rss / df());
    }

    /** Standard error of a coefficient. */
    public double standardError(int k) {
        return Math.sqrt(covariance[k][k]);
    }

    /** A coefficient over its standard error. */
    public double t(int k) {
        return coefficients[k] / standardError(k);
    }

    /** Observation minus fitted value. */
    public double residual(int i) {
        return y[i] - fitted[i];
    }

    /** Share of the weighted sum of squares about the weighted mean that the fit explains; for fits with an intercept. */
    public double rSquared() {
        double[] products = new double[n()];
        Arrays.setAll(products, i -> weights[i] * y[i]);
        double mean = Moments.sum(products) / Moments.sum(weights);
        Arrays.setAll(products, i -> weights[i] * (y[i] - mean) * (y[i] - mean));
        return 1 - rss / Moments.sum(products);
    }

    /**
     * The fitted value of an observation from a fit without it, exactly (Cook &amp; Weisberg 1982, from memory).
     *
     * @return NaN where a coefficient hangs on this observation alone
     */
    public double deletedFitted(int i) {
        return y[i] - residual(i) / without(i);
    }

    /** The residual standard deviation of a fit without an observation, exactly; NaN where there is no such fit. */
    public double deletedSigma(int i) {
        double e = residual(i);
        double left = rss - weights[i] * e * e / without(i);
        return df() > 1 ? Math.sqrt(Math.max(0, left) / (df() - 1)) : Double.NaN;
    }

    /** Cook's distance: how far the fitted values move without an observation (Cook 1977, from memory); NaN as above. */
    public double cook(int i) {
        double e = residual(i) / without(i);
        return rss == 0 ? 0 : weights[i] * e * e * leverages[i] / (coefficients.length * rss / df());
    }

    /** One minus leverage: what of an observation the others must explain. */
    private double without(int i) {
        double without = 1 - leverages[i];
        return without > ALONE ? without : Double.NaN;
    }

    private static double[] rooted(double[] values, double[] weights) {
        double[] rooted = new double[values.length];
        Arrays.setAll(rooted, i -> Math.sqrt(weights[i]) * values[i]);
        return rooted;
    }

    private static double length(double[] v) {
        double sum = 0;
        for (double x : v) {
            sum += x * x;
        }
        return Math.sqrt(sum);
    }

    /** What the turned problem says of the fit, in the scale of the columns as they were given. */
    private record Builder(
            double[][] columns,
            double[] y,
            double[] weights,
            double[][] scaled,
            double[] scale,
            Householder turned,
            boolean hasFullRank) {

        LinearFit build(double conditionNumber) {
            double rss = turned.restSquared();
            return new LinearFit(
                    coefficients(), covariance(rss), rss, y, weights, fitted(), leverages(), conditionNumber);
        }

        private double[] coefficients() {
            double[] b = turned.solve();
            Arrays.setAll(b, k -> hasFullRank ? b[k] / scale[k] : Double.NaN);
            return b;
        }

        private double[][] covariance(double rss) {
            int p = scale.length;
            double[][] covariance = turned.inverse(rss / (y.length - p));
            for (int a = 0; a < p; a++) {
                for (int b = 0; b < p; b++) {
                    covariance[a][b] = hasFullRank ? covariance[a][b] / (scale[a] * scale[b]) : Double.NaN;
                }
            }
            return covariance;
        }

        private double[] fitted() {
            double[] b = coefficients();
            double[] fitted = new double[y.length];
            for (int i = 0; i < fitted.length; i++) {
                for (int k = 0; k < b.length; k++) {
                    fitted[i] += b[k] * columns[k][i];
                }
            }
            return fitted;
        }

        private double[] leverages() {
            double[] leverages = new double[y.length];
            double[] row = new double[scale.length];
            for (int i = 0; i < leverages.length; i++) {
                for (int k = 0; k < row.length; k++) {
                    row[k] = scaled[k][i];
                }
                leverages[i] = hasFullRank ? turned.leverage(row) : Double.NaN;
            }
            return leverages;
        }
    }
}
