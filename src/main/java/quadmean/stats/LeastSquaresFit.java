package quadmean.stats;

/**
 * A least-squares solution and the evidence for it.
 *
 * @param parameters estimates
 * @param covariance their covariance matrix, sigma²·(JᵀWJ)⁻¹; NaN without full rank
 * @param rss weighted residual sum of squares; at an optimum without what the rounding of the parameters adds
 * @param n number of observations
 * @param relativeOffset Bates and Watts's convergence measure: length of the residual vector's part in the tangent plane
 *     over that at right angles to it, both per degree of freedom; 0 at an exact optimum
 * @param conditionNumber of the Jacobian with columns scaled to length one
 * @param logWeights sum of the logarithms of the weights; 0 where all are 1
 * @param deleted for each observation its residual from a fit without it, by the linearised form: residual over one minus
 *     leverage (Cook &amp; Weisberg 1982, from memory; exact for linear models); not finite without full rank
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record LeastSquaresFit(
        double[] parameters,
        double[][] covariance,
        double rss,
        int n,
        double relativeOffset,
        double conditionNumber,
        double logWeights,
        double[] deleted) {

    /** Whether the data tell all parameters apart; without it there are no standard errors. */
    public boolean hasFullRank() {
        return Double.isFinite(covariance[0][0]);
    }

    /** Residual standard deviation on n minus p degrees of freedom, of an observation with weight 1. */
    public double sigma() {
        return Math.sqrt(rss / (n - parameters.length));
    }

    /** Standard error of a parameter. */
    public double standardError(int parameter) {
        return Math.sqrt(covariance[parameter][parameter]);
    }

    /** Log-likelihood of normal errors whose variance is in inverse proportion to the weights, at its largest. */
    public double logLikelihood() {
        return -0.5 * (n * (Math.log(2 * Math.PI * rss / n) + 1) - logWeights);
    }

    /** Akaike's criterion with all p + 1 parameters of a normal likelihood. */
    public double aic() {
        return aic(0);
    }

    private double aic(int others) {
        return -2 * logLikelihood() + 2 * (parameters.length + 1 + others);
    }

    /** Akaike's criterion corrected for small samples (Hurvich and Tsai 1989); infinite where n is too small for it. */
    public double aicc() {
        return aicc(0);
    }

    /**
     * The same where the weights were estimated too.
     *
     * @param others number of parameters estimated for the weights
     */
    public double aicc(int others) {
        int k = parameters.length + 1 + others;
        return n - k - 1 > 0 ? aic(others) + 2.0 * k * (k + 1) / (n - k - 1) : Double.POSITIVE_INFINITY;
    }

    /** Leave-one-out error: root mean square of the residuals from fits without the observation itself. */
    public double leaveOneOutError() {
        double sum = 0;
        for (double e : deleted) {
            sum += e * e;
        }
        return Math.sqrt(sum / n);
    }
}
