package quadmean.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Nonlinear least squares: damped steps after Levenberg and Marquardt from each start, each parameter measured by its
 * own derivatives, then undamped steps until they bring nothing more. Nielsen 1999 for the damping, Bates &amp; Watts
 * 1988 for the convergence measure (both from memory).
 */
public final class LeastSquares {
    private static final int MAX_STEPS = 2_000;

    /** A search that gains less than the share {@link #STANDSTILL} of the sum of squares over so many steps is over. */
    private static final int PATIENCE = 20;

    private static final double STANDSTILL = 1e-7;
    private static final int MAX_POLISH = 50;
    private static final double SINGULAR = 1e-14;

    /** Damping of the first step; where no start led to an optimum, all start again with shorter steps. */
    private static final double[] FIRST_DAMPING = {1e-3, 1, 1e3};

    private static final double MOST_DAMPING = 1e25;
    private static final double LEAST_GAIN = 1e-4;

    /** At an offset below this what is left in the tangent plane is rounding of the parameters. */
    private static final double AT_OPTIMUM = 1e-6;

    private LeastSquares() {}

    /**
     * The best solution over all starts.
     *
     * @return the point with the smallest residual sum of squares, or empty if no start gave a finite one. Whether it is
     *     an optimum is for the caller to judge by its relative offset and condition number; without full rank the
     *     covariance is NaN and the condition number infinite or above 1e14.
     */
    public static Optional<LeastSquaresFit> solve(LeastSquaresProblem problem) {
        List<Tangent> starts = problem.starts().stream()
                .flatMap(start -> Tangent.at(problem, start).stream())
                .toList();
        List<Tangent> ends = new ArrayList<>(starts);
        for (double damping : FIRST_DAMPING) {
            starts.forEach(start -> ends.add(polish(problem, descend(problem, start, damping))));
            if (ends.stream().anyMatch(LeastSquares::isOptimum)) {
                break;
            }
        }
        return ends.stream().min((a, b) -> Double.compare(a.rss(), b.rss())).map(best -> evaluate(problem, best));
    }

    private static boolean isOptimum(Tangent at) {
        return at.offset() < AT_OPTIMUM && singularValues(at).getInverseConditionNumber() > SINGULAR;
    }

    private static SingularValueDecomposition singularValues(Tangent at) {
        return new SingularValueDecomposition(
                new Array2DRowRealMatrix(at.turned().triangle(), false));
    }

    private static Tangent descend(LeastSquaresProblem problem, Tangent start, double firstDamping) {
        Tangent at = start;
        double[] widest = start.scale().clone();
        double damping = firstDamping;
        double growth = 2;
        double lately = start.rss();
        for (int i = 0; i < MAX_STEPS && damping < MOST_DAMPING; i++) {
            if (i % PATIENCE == PATIENCE - 1) {
                if (at.rss() >= lately * (1 - STANDSTILL)) {
                    return at;
                }
                lately = at.rss();
            }
            double[] step = at.step(damping, widest);
            double[] next = at.moved(step);
            if (Arrays.equals(next, at.parameters())) {
                return at;
            }
            Misfit misfit = Misfit.at(problem, next);
            double gain = (at.rss() - misfit.sum()) / at.promised(step);
            Optional<Tangent> there = gain > LEAST_GAIN ? Tangent.at(problem, next, misfit) : Optional.empty();
            if (there.isPresent()) {
                at = there.get();
                widen(widest, at.scale());
                damping *= Math.max(1.0 / 3, 1 - Math.pow(2 * gain - 1, 3));
                growth = 2;
            } else {
                damping *= growth;
                growth *= 2;
            }
        }
        return at;
    }

    private static void widen(double[] widest, double[] scale) {
        for (int k = 0; k < widest.length; k++) {
            widest[k] = Math.max(widest[k], scale[k]);
        }
    }

    /** Undamped steps, as long as they bring the optimum nearer. */
    private static Tangent polish(LeastSquaresProblem problem, Tangent start) {
        Tangent best = start;
        for (int i = 0; i < MAX_POLISH; i++) {
            double offset = best.offset();
            double most = best.rss() * (1 + 1e-9);
            Optional<Tangent> next =
                    Tangent.at(problem, best.moved(best.step())).filter(t -> t.offset() < offset && t.rss() <= most);
            if (next.isEmpty()) {
                return best;
            }
            best = next.get();
        }
        return best;
    }

    private static LeastSquaresFit evaluate(LeastSquaresProblem problem, Tangent at) {
        int n = problem.y().length;
        int p = at.parameters().length;
        double rss = at.offset() < AT_OPTIMUM ? at.normalRss() : at.rss();
        SingularValueDecomposition svd = singularValues(at);
        double inverseCondition = svd.getInverseConditionNumber();
        double variance = inverseCondition > SINGULAR ? rss / (n - p) : Double.NaN;
        RealMatrix inverse = svd.getCovariance(0);
        double[][] covariance = new double[p][p];
        for (int a = 0; a < p; a++) {
            for (int b = 0; b < p; b++) {
                covariance[a][b] = inverse.getEntry(a, b) / (at.scale()[a] * at.scale()[b]) * variance;
            }
        }
        double logWeights = Arrays.stream(problem.weights()).map(Math::log).sum();
        return new LeastSquaresFit(
                at.parameters(),
                covariance,
                rss,
                n,
                at.offset(),
                1 / inverseCondition,
                logWeights,
                deletedResiduals(problem, at));
    }

    private static double[] deletedResiduals(LeastSquaresProblem problem, Tangent at) {
        double[] deleted = new double[problem.y().length];
        for (int i = 0; i < deleted.length; i++) {
            double root = Math.sqrt(problem.weights()[i]);
            double[] row = problem.model().gradient(problem.x()[i], at.parameters());
            for (int k = 0; k < row.length; k++) {
                row[k] *= root / at.scale()[k];
            }
            double residual = problem.model().residual(problem.x()[i], problem.y()[i], at.parameters());
            deleted[i] = residual / (1 - at.turned().leverage(row));
        }
        return deleted;
    }
}
