package quadmean.stats;

/**
 * A least-squares solution and the evidence for it.
 *
 * @param parameters estimates
 * @param covariance their covariance matrix, sigma²·(JᵀJ)⁻¹; NaN without full rank
 * @param rss residual sum of squares
 * @param n number of observations
 * @param relativeOffset Bates and Watts's convergence measure: length of the residual vector's part in the tangent plane
 *     over that at right angles to it, both per degree of freedom; 0 at an exact optimum
 * @param conditionNumber of the Jacobian with columns scaled to length one
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record LeastSquaresFit(
        double[] parameters, double[][] covariance, double rss, int n, double relativeOffset, double conditionNumber) {

    /** Whether the data tell all parameters apart; without it there are no standard errors. */
    public boolean hasFullRank() {
        return Double.isFinite(covariance[0][0]);
    }

    /** Residual standard deviation on n minus p degrees of freedom. */
    public double sigma() {
        return Math.sqrt(rss / (n - parameters.length));
    }

    /** Standard error of a parameter. */
    public double standardError(int parameter) {
        return Math.sqrt(covariance[parameter][parameter]);
    }

    /** Akaike's criterion with all p + 1 parameters of a normal likelihood. */
    public double aic() {
        return n * (Math.log(2 * Math.PI * rss / n) + 1) + 2 * (parameters.length + 1);
    }

    /** Akaike's criterion corrected for small samples (Hurvich and Tsai 1989); infinite where n is too small for it. */
    public double aicc() {
        int k = parameters.length + 1;
        return n - k - 1 > 0 ? aic() + 2.0 * k * (k + 1) / (n - k - 1) : Double.POSITIVE_INFINITY;
    }
}
