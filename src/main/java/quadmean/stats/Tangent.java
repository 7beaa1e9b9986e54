package quadmean.stats;

import java.util.Optional;

/**
 * A problem linearised at a point: weighted residuals and the plane that small changes of the parameters reach. Columns
 * of the Jacobian are scaled to length one.
 */
final class Tangent {
    /** Residuals below this share of the responses count as that much, so that exact data have an optimum too. */
    private static final double NEGLIGIBLE = 1e-6;

    private final double[] parameters;
    private final double[] scale;
    private final double rss;
    private final LeastSquaresProblem problem;
    private final Householder turned;

    private Tangent(double[] parameters, double[] scale, double rss, LeastSquaresProblem problem, Householder turned) {
        this.parameters = parameters;
        this.scale = scale;
        this.rss = rss;
        this.problem = problem;
        this.turned = turned;
    }

    /** The problem at a point; empty where residuals or derivatives are not finite. */
    static Optional<Tangent> at(LeastSquaresProblem problem, double[] p) {
        return at(problem, p, Misfit.at(problem, p));
    }

    /**
     * The problem at a point.
     *
     * @param misfit how far the responses are from the model at that point
     */
    static Optional<Tangent> at(LeastSquaresProblem problem, double[] p, Misfit misfit) {
        if (!misfit.isFinite()) {
            return Optional.empty();
        }
        double[][] columns = columns(problem, p);
        double[] scale = new double[p.length];
        for (int k = 0; k < p.length; k++) {
            double length = length(columns[k]);
            if (!Double.isFinite(length)) {
                return Optional.empty();
            }
            scale[k] = length > 0 ? length : 1;
            for (int i = 0; i < columns[k].length; i++) {
                columns[k][i] /= scale[k];
            }
        }
        Householder turned = Householder.of(columns, misfit.weighted(problem.weights()));
        return Optional.of(new Tangent(p, scale, misfit.sum(), problem, turned));
    }

    private static double[][] columns(LeastSquaresProblem problem, double[] p) {
        int n = problem.y().length;
        double[][] columns = new double[p.length][n];
        for (int i = 0; i < n; i++) {
            double root = Math.sqrt(problem.weights()[i]);
            double[] gradient = problem.model().gradient(problem.x()[i], p);
            for (int k = 0; k < p.length; k++) {
                columns[k][i] = root * gradient[k];
            }
        }
        return columns;
    }

    private static double responses(LeastSquaresProblem problem) {
        double[] y = new double[problem.y().length];
        for (int i = 0; i < y.length; i++) {
            y[i] = Math.sqrt(problem.weights()[i]) * problem.y()[i];
        }
        return length(y);
    }

    static double length(double[] v) {
        double sum = 0;
        for (double x : v) {
            sum += x * x;
        }
        return Math.sqrt(sum);
    }

    double[] parameters() {
        return parameters;
    }

    double rss() {
        return rss;
    }

    /** The part of the residual sum of squares at right angles to the plane. */
    double normalRss() {
        return turned.restSquared();
    }

    double[] scale() {
        return scale;
    }

    Householder turned() {
        return turned;
    }

    /** Bates and Watts's relative offset; 0 at an exact optimum. */
    double offset() {
        int p = parameters.length;
        int n = problem.y().length;
        double tangent = length(turned.turned()) / Math.sqrt(p);
        double floor = NEGLIGIBLE * responses(problem) / Math.sqrt(n);
        double normal = Math.max(Math.sqrt(turned.restSquared() / (n - p)), floor);
        return normal == 0 ? 0 : tangent / normal;
    }

    /** The Gauss-Newton step. */
    double[] step() {
        return unscaled(turned.solve());
    }

    /**
     * The damped step.
     *
     * @param damping weight of the step's own length
     * @param widest the longest that each column has been: the measure of a parameter
     */
    double[] step(double damping, double[] widest) {
        int p = parameters.length;
        double[][] columns = new double[p][2 * p];
        double[] side = java.util.Arrays.copyOf(turned.turned(), 2 * p);
        for (int k = 0; k < p; k++) {
            for (int row = 0; row <= k; row++) {
                columns[k][row] = turned.triangle()[row][k];
            }
            columns[k][p + k] = Math.sqrt(damping) * widest[k] / scale[k];
        }
        return unscaled(Householder.of(columns, side).solve());
    }

    /** By how much the linearised problem says the sum of squares falls with a step. */
    double promised(double[] step) {
        double left = 0;
        for (int row = 0; row < parameters.length; row++) {
            double r = turned.turned()[row];
            for (int k = row; k < parameters.length; k++) {
                r -= turned.triangle()[row][k] * step[k] * scale[k];
            }
            left += r * r;
        }
        double now = length(turned.turned());
        return now * now - left;
    }

    double[] moved(double[] step) {
        double[] next = parameters.clone();
        for (int k = 0; k < next.length; k++) {
            next[k] += step[k];
        }
        return next;
    }

    private double[] unscaled(double[] z) {
        for (int k = 0; k < z.length; k++) {
            z[k] /= scale[k];
        }
        return z;
    }
}
