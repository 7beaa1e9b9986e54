package quadmean.height;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import quadmean.model.CurveForm;
import quadmean.stats.LeastSquares;
import quadmean.stats.LeastSquaresFit;
import quadmean.stats.LeastSquaresProblem;

/** Fits one form to heights by least squares and judges the result. Plain numbers of one unit system. */
public final class CurveFitter {
    /** A relative offset above this is no optimum; parameters agree with an exact one to about as many digits. */
    private static final double CONVERGED = 1e-6;

    /** A residual sum of squares nearer than this to the limit's (relative) is the limit. */
    private static final double AT_LIMIT = 1e-9;

    /** The shape is judged up to this multiple of the largest dbh. */
    private static final double BEYOND_DATA = 1.25;

    private CurveFitter() {}

    /**
     * Fits h = bh + f(d).
     *
     * @param form the form of f
     * @param d dbh of each tree, above 0
     * @param h height of each tree, above breast height, in the length unit that goes with d
     * @param breastHeight breast height in that unit
     */
    public static CurveFit fit(CurveForm form, double[] d, double[] h, double breastHeight) {
        CurveModel model = CurveModel.of(form);
        if (d.length < model.parameters() + 2) {
            return new CurveFit(
                    form, FitStatus.TOO_FEW, null, "needs " + (model.parameters() + 2) + " heights, has " + d.length);
        }
        double[] y = Arrays.stream(h).map(v -> v - breastHeight).toArray();
        Optional<LeastSquaresFit> fit = solve(model, d, y);
        if (form == CurveForm.CHAPMAN_RICHARDS) {
            Optional<LeastSquaresFit> limit = solve(CurveModel.POWER, d, y).filter(l -> reaches(fit, l));
            if (limit.isPresent()) {
                return degenerate(form, limit.get());
            }
        }
        if (fit.filter(CurveFitter::isOptimum).isEmpty()) {
            return new CurveFit(form, FitStatus.NOT_CONVERGED, null, "no start led to an optimum");
        }
        String fault = shapeFault(model, fit.get().parameters(), d);
        FitStatus status = fault.isEmpty() ? FitStatus.CONVERGED : FitStatus.UNREASONABLE;
        return new CurveFit(form, status, fit.get(), fault);
    }

    private static boolean isOptimum(LeastSquaresFit fit) {
        return fit.relativeOffset() <= CONVERGED && fit.hasFullRank();
    }

    private static Optional<LeastSquaresFit> solve(CurveModel model, double[] d, double[] y) {
        return LeastSquares.solve(LeastSquaresProblem.ofCurve(model, d, y, model.starts(d, y)));
    }

    /** Whether a fit does no better than the limit of its form: then its optimum lies at infinity. */
    private static boolean reaches(Optional<LeastSquaresFit> fit, LeastSquaresFit limit) {
        return fit.isPresent() && fit.get().rss() >= limit.rss() * (1 - AT_LIMIT);
    }

    private static CurveFit degenerate(CurveForm form, LeastSquaresFit limit) {
        String remark = String.format(
                Locale.ROOT,
                "no optimum: the residual sum of squares falls towards %.9g, that of the power curve, as b goes to 0 and"
                        + " a to infinity",
                limit.rss());
        return new CurveFit(form, FitStatus.DEGENERATE, null, remark);
    }

    /** What is wrong with the shape between 1/20 of the smallest and 1.25 times the largest dbh; empty if nothing. */
    private static String shapeFault(CurveModel model, double[] p, double[] d) {
        double low = Arrays.stream(d).min().orElseThrow() / 20;
        double high = BEYOND_DATA * Arrays.stream(d).max().orElseThrow();
        double before = 0;
        for (int i = 0; i <= 200; i++) {
            double at = low + (high - low) * i / 200;
            double value = model.value(at, p);
            if (!(value >= before && value < Double.POSITIVE_INFINITY)) {
                return String.format(Locale.ROOT, "falls, or has no height, at dbh %.1f", at);
            }
            before = value;
        }
        return "";
    }
}
