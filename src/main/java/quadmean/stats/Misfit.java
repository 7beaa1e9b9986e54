package quadmean.stats;

/**
 * How far responses are from a model at a point.
 *
 * @param residuals response minus value of each observation; none outside the domain
 * @param sum the weighted residual sum of squares; infinite outside the domain or where a value is not finite
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
record Misfit(double[] residuals, double sum) {
    private static final Misfit OUTSIDE = new Misfit(new double[0], Double.POSITIVE_INFINITY);

    static Misfit at(LeastSquaresProblem problem, double[] p) {
        if (!problem.model().accepts(p)) {
            return OUTSIDE;
        }
        double[] residuals = new double[problem.y().length];
        double sum = 0;
        for (int i = 0; i < residuals.length; i++) {
            double r = problem.model().residual(problem.x()[i], problem.y()[i], p);
            residuals[i] = r;
            sum += problem.weights()[i] * r * r;
        }
        return new Misfit(residuals, Double.isFinite(sum) ? sum : Double.POSITIVE_INFINITY);
    }

    boolean isFinite() {
        return Double.isFinite(sum);
    }

    /** The residuals, each times the root of its weight. */
    double[] weighted(double[] weights) {
        double[] weighted = new double[residuals.length];
        for (int i = 0; i < weighted.length; i++) {
            weighted[i] = Math.sqrt(weights[i]) * residuals[i];
        }
        return weighted;
    }
}
