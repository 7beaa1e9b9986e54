package quadmean.stats;

import java.util.Arrays;
import java.util.List;

/**
 * A nonlinear least-squares problem, apart from how it is solved.
 *
 * @param model the function and its derivatives
 * @param x one row of predictor values for each observation
 * @param y one response for each observation
 * @param weights one weight above zero for each observation: its squared residual counts so many times
 * @param starts starting points for the parameters, tried in turn; at least one
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record LeastSquaresProblem(Model model, double[][] x, double[] y, double[] weights, List<double[]> starts) {
    public LeastSquaresProblem {
        if (x.length != y.length || weights.length != y.length || starts.isEmpty()) {
            throw new IllegalArgumentException("x, y and weights must pair up, and there must be a start");
        }
        Arguments.atLeast(x.length, starts.get(0).length + 1, "observations (parameters + 1)");
        Arrays.stream(weights).forEach(w -> Arguments.positive(w, "weight"));
        starts = List.copyOf(starts);
    }

    /** A problem in which all observations count alike. */
    public static LeastSquaresProblem unweighted(Model model, double[][] x, double[] y, List<double[]> starts) {
        double[] ones = new double[y.length];
        Arrays.fill(ones, 1);
        return new LeastSquaresProblem(model, x, y, ones, starts);
    }

    /** A curve through points that all count alike. */
    public static LeastSquaresProblem ofCurve(Curve curve, double[] x, double[] y, List<double[]> starts) {
        return unweighted(curve, rows(x), y, starts);
    }

    /** The same problem with other weights. */
    public LeastSquaresProblem withWeights(double[] others) {
        return new LeastSquaresProblem(model, x, y, others, starts);
    }

    private static double[][] rows(double[] x) {
        return Arrays.stream(x).mapToObj(v -> new double[] {v}).toArray(double[][]::new);
    }

    /** A function of predictors and parameters. */
    public interface Model {
        /** Its value at a row of predictors. */
        double value(double[] x, double[] parameters);

        /** Its derivatives with respect to each parameter at a row of predictors. */
        double[] gradient(double[] x, double[] parameters);

        /** Whether the parameters lie in the domain of the model; the search stays inside it. */
        default boolean accepts(double[] parameters) {
            return true;
        }

        /** Response minus value; for models that can tell small differences better than doubles subtract. */
        default double residual(double[] x, double y, double[] parameters) {
            return y - value(x, parameters);
        }
    }

    /** A model with one predictor. */
    public interface Curve extends Model {
        /** Its value at x. */
        double value(double x, double[] parameters);

        /** Its derivatives with respect to each parameter at x. */
        double[] gradient(double x, double[] parameters);

        @Override
        default double value(double[] x, double[] parameters) {
            return value(x[0], parameters);
        }

        @Override
        default double[] gradient(double[] x, double[] parameters) {
            return gradient(x[0], parameters);
        }
    }
}
