package quadmean.stats;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.apache.commons.math3.util.Pair;

/**
 * Nonlinear least squares: Levenberg-Marquardt from each start, then Gauss-Newton steps by QR until they bring nothing
 * more. Bates &amp; Watts 1988 (from memory) for the convergence measure.
 */
public final class LeastSquares {
    private static final int MAX_STEPS = 2_000;
    private static final int MAX_POLISH = 50;
    private static final double SINGULAR = 1e-14;

    /** Residuals below this share of the responses count as that much, so that exact data have an optimum too. */
    private static final double NEGLIGIBLE = 1e-6;

    /** Stands for a value that does not exist, so that the descent turns back. */
    private static final double OUT_OF_DOMAIN = 1e150;

    private LeastSquares() {}

    /**
     * The best solution over all starts.
     *
     * @return the point with the smallest residual sum of squares, or empty if no start gave a finite one. Whether it is
     *     an optimum is for the caller to judge by its relative offset and condition number; without full rank the
     *     covariance is NaN and the condition number infinite or above 1e14.
     */
    public static Optional<LeastSquaresFit> solve(LeastSquaresProblem problem) {
        return problem.starts().stream()
                .map(start -> descend(problem, start))
                .map(p -> polish(problem, p))
                .flatMap(p -> evaluate(problem, p).stream())
                .min((a, b) -> Double.compare(a.rss(), b.rss()));
    }

    /** The best point seen on the way down; also where the optimizer gave up, for that is evidence too. */
    private static double[] descend(LeastSquaresProblem problem, double[] start) {
        Best best = new Best(problem, start);
        LeastSquaresBuilder builder = new LeastSquaresBuilder()
                .start(start)
                .target(problem.y())
                .model(p -> new Pair<>(values(problem, best.seen(p.toArray())), jacobian(problem, p.toArray())))
                .maxEvaluations(MAX_STEPS)
                .maxIterations(MAX_STEPS);
        LevenbergMarquardtOptimizer optimizer = new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(1e-14)
                .withParameterRelativeTolerance(1e-14)
                .withOrthoTolerance(1e-14);
        try {
            optimizer.optimize(builder.build());
        } catch (MathIllegalStateException | MathIllegalArgumentException outOfReach) {
            // no convergence from this start: the caller sees it in the relative offset
            return best.point;
        }
        return best.point;
    }

    private static final class Best {
        private final LeastSquaresProblem problem;
        private double[] point;
        private double rss;

        Best(LeastSquaresProblem problem, double[] start) {
            this.problem = problem;
            this.point = start;
            this.rss = rss(problem, start);
        }

        double[] seen(double[] p) {
            double now = rss(problem, p);
            if (now < rss && Double.isFinite(jacobian(problem, p).getFrobeniusNorm())) {
                point = p.clone();
                rss = now;
            }
            return p;
        }
    }

    private static double[] polish(LeastSquaresProblem problem, double[] start) {
        double[] best = start;
        double bestOffset = offset(problem, best);
        for (int i = 0; i < MAX_POLISH; i++) {
            double[] step = gaussNewtonStep(problem, best);
            if (step.length == 0) {
                return best;
            }
            double[] next = new ArrayRealVector(best, false)
                    .add(new ArrayRealVector(step, false))
                    .toArray();
            double nextOffset = offset(problem, next);
            boolean better = nextOffset < bestOffset && rss(problem, next) <= rss(problem, best) * (1 + 1e-12);
            if (!better) {
                return best;
            }
            best = next;
            bestOffset = nextOffset;
        }
        return best;
    }

    /** The Gauss-Newton step, or an empty array where the Jacobian has not full rank. */
    private static double[] gaussNewtonStep(LeastSquaresProblem problem, double[] p) {
        RealMatrix j = jacobian(problem, p);
        double[] scale = scaleColumns(j);
        QRDecomposition qr = new QRDecomposition(j, SINGULAR);
        if (!qr.getSolver().isNonSingular()) {
            return new double[0];
        }
        double[] step = qr.getSolver().solve(residuals(problem, p)).toArray();
        for (int k = 0; k < step.length; k++) {
            step[k] /= scale[k];
        }
        return step;
    }

    private static double offset(LeastSquaresProblem problem, double[] p) {
        RealMatrix j = jacobian(problem, p);
        scaleColumns(j);
        RealVector r = residuals(problem, p);
        RealVector rotated = new QRDecomposition(j).getQT().operate(r);
        int n = r.getDimension();
        double tangent = rotated.getSubVector(0, p.length).getNorm() / Math.sqrt(p.length);
        double normal = rotated.getSubVector(p.length, n - p.length).getNorm() / Math.sqrt(n - p.length);
        double floor = NEGLIGIBLE * new ArrayRealVector(problem.y(), false).getNorm() / Math.sqrt(n);
        double scale = Math.max(normal, floor);
        return scale == 0 ? 0 : tangent / scale;
    }

    private static Optional<LeastSquaresFit> evaluate(LeastSquaresProblem problem, double[] p) {
        double rss = rss(problem, p);
        RealMatrix j = jacobian(problem, p);
        if (!Double.isFinite(rss) || !Double.isFinite(j.getFrobeniusNorm())) {
            return Optional.empty();
        }
        double[] scale = scaleColumns(j);
        SingularValueDecomposition svd = new SingularValueDecomposition(j);
        double inverseCondition = svd.getInverseConditionNumber();
        int n = problem.x().length;
        double variance = inverseCondition > SINGULAR ? rss / (n - p.length) : Double.NaN;
        RealMatrix inverse = svd.getCovariance(0);
        double[][] covariance = new double[p.length][p.length];
        for (int a = 0; a < p.length; a++) {
            for (int b = 0; b < p.length; b++) {
                covariance[a][b] = inverse.getEntry(a, b) / (scale[a] * scale[b]) * variance;
            }
        }
        return Optional.of(new LeastSquaresFit(p, covariance, rss, n, offset(problem, p), 1 / inverseCondition));
    }

    /** Scales the columns to length one, in place, and returns the lengths that they had. */
    private static double[] scaleColumns(RealMatrix j) {
        double[] scale = new double[j.getColumnDimension()];
        for (int k = 0; k < scale.length; k++) {
            double norm = j.getColumnVector(k).getNorm();
            scale[k] = norm > 0 && Double.isFinite(norm) ? norm : 1;
            j.setColumnVector(k, j.getColumnVector(k).mapDivide(scale[k]));
        }
        return scale;
    }

    private static RealVector values(LeastSquaresProblem problem, double[] p) {
        return new ArrayRealVector(
                Arrays.stream(problem.x())
                        .map(x -> problem.model().value(x, p))
                        .map(v -> Double.isFinite(v) ? v : OUT_OF_DOMAIN)
                        .toArray(),
                false);
    }

    private static RealVector residuals(LeastSquaresProblem problem, double[] p) {
        return new ArrayRealVector(problem.y(), false).subtract(values(problem, p));
    }

    private static double rss(LeastSquaresProblem problem, double[] p) {
        RealVector r = residuals(problem, p);
        return r.dotProduct(r);
    }

    private static RealMatrix jacobian(LeastSquaresProblem problem, double[] p) {
        double[][] rows = new double[problem.x().length][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = problem.model().gradient(problem.x()[i], p);
        }
        return new Array2DRowRealMatrix(rows, false);
    }
}
