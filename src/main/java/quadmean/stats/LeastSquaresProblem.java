package quadmean.stats;

import java.util.List;

/**
 * A nonlinear least-squares problem, apart from how it is solved.
 *
 * @param model the function and its derivatives
 * @param x one predictor value for each observation
 * @param y one response for each observation
 * @param starts starting points for the parameters, tried in turn; at least one
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record LeastSquaresProblem(Model model, double[] x, double[] y, List<double[]> starts) {
    public LeastSquaresProblem {
        if (x.length != y.length || starts.isEmpty()) {
            throw new IllegalArgumentException("x and y must pair up, and there must be a start");
        }
        Arguments.atLeast(x.length, starts.get(0).length + 1, "observations (parameters + 1)");
    }

    /** A function of one predictor and some parameters. */
    public interface Model {
        /** Its value at x. */
        double value(double x, double[] parameters);

        /** Its derivatives with respect to each parameter at x. */
        double[] gradient(double x, double[] parameters);
    }
}
