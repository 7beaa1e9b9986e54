package quadmean.height;

/**
 * A height from a curve with its error in two parts. The first is common to all trees that a curve serves and does not
 * average out over them, the second is each tree's own and does.
 *
 * @param metres total height (m)
 * @param curveSe standard error of the curve at this dbh, from the covariance of its parameters (m)
 * @param scatterSd standard deviation of trees about the curve at this dbh (m)
 */
public record HeightPrediction(double metres, double curveSe, double scatterSd) {
    /** Standard error of prediction of the tree: both parts together (m). */
    public double standardError() {
        return Math.hypot(curveSe, scatterSd);
    }
}
