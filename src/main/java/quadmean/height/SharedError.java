package quadmean.height;

/**
 * A part of the error of a filled height that it shares with other trees: by how much the height moves with each of some numbers, and
 * the covariance of these. Its variance in one tree is gᵀVg; in a sum over trees the gradients are added first, for they do not
 * average out.
 *
 * @param source what the numbers are; the same in all trees that share them
 * @param gradientM change of the height (m) with each number
 * @param covariance covariance matrix of the numbers
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record SharedError(String source, double[] gradientM, double[][] covariance) {

    /** The variance gᵀVg that a gradient makes of a covariance. */
    public static double variance(double[] g, double[][] covariance) {
        double sum = 0;
        for (int a = 0; a < g.length; a++) {
            for (int b = 0; b < g.length; b++) {
                sum += g[a] * covariance[a][b] * g[b];
            }
        }
        return sum;
    }
}
