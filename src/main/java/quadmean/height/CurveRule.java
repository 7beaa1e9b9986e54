package quadmean.height;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quadmean.stats.LeastSquaresFit;
import quadmean.stats.Moments;
import quadmean.units.Unit;

/**
 * The rule by which one curve of a league table is chosen: the smallest leave-one-out error; but a form with fewer
 * parameters is preferred if its mean squared leave-one-out error exceeds the smallest by no more than one standard
 * error of that difference, tree by tree. Among several such forms that with the fewest parameters wins, and among those
 * that with the smallest error. After the one-standard-error rule of Breiman and others 1984 (from memory).
 */
final class CurveRule {
    private CurveRule() {}

    /** The chosen fit and why. */
    record Choice(CurveFit fit, String reason) {}

    /**
     * Chooses among the converged fits.
     *
     * @param fits fits of several forms to the same trees in the same order
     * @param unit length unit of the fits
     */
    static Optional<Choice> choose(List<CurveFit> fits, Unit unit) {
        List<CurveFit> usable =
                fits.stream().filter(f -> f.status() == FitStatus.CONVERGED).toList();
        Optional<CurveFit> smallest = usable.stream().min(Comparator.comparingDouble(CurveFit::leaveOneOutError));
        return smallest.map(best -> usable.stream()
                .filter(f -> parameters(f) < parameters(best) && isNear(f, best))
                .min(Comparator.comparingInt(CurveRule::parameters).thenComparingDouble(CurveFit::leaveOneOutError))
                .map(simple -> new Choice(simple, simpler(simple, best, unit)))
                .orElseGet(() -> new Choice(best, best(best, unit))));
    }

    private static String best(CurveFit fit, Unit unit) {
        return fit.form().label() + " has the smallest leave-one-out error (" + error(fit, unit) + ")";
    }

    private static String simpler(CurveFit simple, CurveFit best, Unit unit) {
        return simple.form().label() + " (leave-one-out error " + error(simple, unit) + ") is simpler than "
                + best.form().label() + " (" + error(best, unit)
                + ", the smallest) and within one standard error of it";
    }

    private static String error(CurveFit fit, Unit unit) {
        return String.format(Locale.ROOT, "%.2f %s", fit.leaveOneOutError(), unit.symbol());
    }

    private static LeastSquaresFit fit(CurveFit tried) {
        return Objects.requireNonNull(tried.fit(), "a converged fit has an optimum");
    }

    private static int parameters(CurveFit tried) {
        return fit(tried).parameters().length;
    }

    private static boolean isNear(CurveFit simple, CurveFit best) {
        return !isWorse(fit(simple).deleted(), fit(best).deleted(), 1);
    }

    /**
     * Whether errors are worse than others of the same trees, by the mean difference of their squares.
     *
     * @param standardErrors by more than how many standard errors of that mean
     */
    static boolean isWorse(double[] errors, double[] others, double standardErrors) {
        double[] differences = new double[errors.length];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = errors[i] * errors[i] - others[i] * others[i];
        }
        Moments m = Moments.of(differences);
        return m.mean() > standardErrors * m.sd() / Math.sqrt(m.n());
    }
}
