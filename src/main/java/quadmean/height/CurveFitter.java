package quadmean.height;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import quadmean.height.CurveFit.Scatter;
import quadmean.model.CurveForm;
import quadmean.model.HeightWeights;
import quadmean.stats.LeastSquares;
import quadmean.stats.LeastSquaresFit;
import quadmean.stats.LeastSquaresProblem;
import quadmean.stats.Maximum;

/** Fits forms to one set of heights by least squares and judges the results. Plain numbers of one unit system. */
public final class CurveFitter {
    /** A relative offset above this is no optimum; parameters agree with an exact one to about as many digits. */
    private static final double CONVERGED = 1e-6;

    /** A residual sum of squares nearer than this to the limit's (relative) is the limit. */
    private static final double AT_LIMIT = 1e-9;

    /** Powers of dbh that the scatter may grow with. */
    private static final double LEAST_POWER = -1;

    private static final double MOST_POWER = 3;

    private final double[] d;
    private final double[] y;
    private final CurveShape shape;
    private final HeightWeights weights;

    private CurveFitter(double[] d, double[] y, CurveShape shape, HeightWeights weights) {
        this.d = d;
        this.y = y;
        this.shape = shape;
        this.weights = weights;
    }

    /**
     * A fitter for one set of heights.
     *
     * @param d dbh of each tree, above 0
     * @param h height of each tree, above breast height, in the length unit that goes with d
     * @param breastHeight breast height in that unit
     * @param smallest the smallest dbh that the curve must serve; curves are judged down to it
     * @param weights how much each tree counts
     */
    static CurveFitter of(double[] d, double[] h, double breastHeight, double smallest, HeightWeights weights) {
        double[] y = Arrays.stream(h).map(v -> v - breastHeight).toArray();
        return new CurveFitter(d, y, CurveShape.over(d, y, smallest), weights);
    }

    /** Fits h = bh + f(d), all trees counting alike. */
    public static CurveFit fit(CurveForm form, double[] d, double[] h, double breastHeight) {
        double smallest = Arrays.stream(d).min().orElse(Double.NaN);
        return of(d, h, breastHeight, smallest, HeightWeights.EQUAL).fit(form);
    }

    /** Fits h = bh + f(d). */
    CurveFit fit(CurveForm form) {
        CurveModel model = CurveModel.of(form);
        int least = model.parameters() + 2;
        if (d.length < least) {
            return without(form, FitStatus.TOO_FEW, "needs " + least + " heights, has " + d.length);
        }
        if (Arrays.stream(d).distinct().count() < model.parameters()) {
            return without(form, FitStatus.NOT_CONVERGED, "fewer different diameters than parameters");
        }
        Scatter scatter = scatter(model);
        Optional<LeastSquaresFit> fit = solve(model, scatter.power());
        Optional<LimitCurve> limit = model.limit();
        if (limit.isPresent() && fit.isPresent()) {
            Optional<LeastSquaresFit> there = solve(limit.get(), scatter.power());
            if (there.isPresent() && fit.get().rss() >= there.get().rss() * (1 - AT_LIMIT)) {
                return degenerate(form, limit.get(), there.get().rss());
            }
        }
        if (fit.isEmpty() || !isOptimum(fit.get())) {
            return without(form, FitStatus.NOT_CONVERGED, evidence(fit));
        }
        String fault = shape.fault(model, fit.get().parameters());
        FitStatus status = fault.isEmpty() ? FitStatus.CONVERGED : FitStatus.UNREASONABLE;
        return new CurveFit(form, status, fit.get(), scatter, fault);
    }

    private static CurveFit without(CurveForm form, FitStatus status, String remark) {
        return new CurveFit(form, status, null, Scatter.EVEN, remark);
    }

    private static boolean isOptimum(LeastSquaresFit fit) {
        return fit.relativeOffset() <= CONVERGED && fit.hasFullRank();
    }

    private static String evidence(Optional<LeastSquaresFit> fit) {
        return fit.map(f -> String.format(
                        Locale.ROOT,
                        "no start led to an optimum inside the domain of the form: at the best point the relative offset is %.2g (0 at an optimum) and"
                                + " the condition number %.2g",
                        f.relativeOffset(),
                        f.conditionNumber()))
                .orElse("no start gave finite heights");
    }

    private static CurveFit degenerate(CurveForm form, LimitCurve limit, double rss) {
        String remark = String.format(
                Locale.ROOT,
                "no optimum: the residual sum of squares falls towards %.9g, that of %s above breast height, as the"
                        + " asymptote goes to infinity",
                rss,
                limit.words());
        return without(form, FitStatus.DEGENERATE, remark);
    }

    private Optional<LeastSquaresFit> solve(CurveModel model, double power) {
        List<double[]> starts = starts(model);
        return starts.isEmpty() ? Optional.empty() : LeastSquares.solve(problem(model, power, starts));
    }

    /** Starts from the trees above breast height, where the linear forms exist. */
    private List<double[]> starts(CurveModel model) {
        int[] above = IntStream.range(0, y.length).filter(i -> y[i] > 0).toArray();
        return above.length < 2
                ? List.of()
                : model.starts(
                        Arrays.stream(above).mapToDouble(i -> d[i]).toArray(),
                        Arrays.stream(above).mapToDouble(i -> y[i]).toArray());
    }

    private LeastSquaresProblem problem(CurveModel model, double power, List<double[]> starts) {
        LeastSquaresProblem equal = LeastSquaresProblem.ofCurve(model, d, y, starts);
        return power == 0
                ? equal
                : equal.withWeights(
                        Arrays.stream(d).map(v -> Math.pow(v, -2 * power)).toArray());
    }

    private Scatter scatter(CurveModel model) {
        return switch (weights) {
            case EQUAL -> Scatter.EVEN;
            case INVERSE_DBH -> new Scatter(0.5, 0);
            case POWER_OF_DBH -> new Scatter(estimatedPower(model).orElse(0), 1);
        };
    }

    /** The power with the largest normal likelihood; each is tried from the optimum of equal weights. */
    private OptionalDouble estimatedPower(CurveModel model) {
        Optional<LeastSquaresFit> equal = solve(model, 0);
        if (equal.isEmpty()) {
            return OptionalDouble.empty();
        }
        List<double[]> start = List.of(equal.get().parameters());
        return OptionalDouble.of(Maximum.between(
                LEAST_POWER,
                MOST_POWER,
                power -> LeastSquares.solve(problem(model, power, start))
                        .map(LeastSquaresFit::logLikelihood)
                        .orElse(Double.NEGATIVE_INFINITY)));
    }
}
