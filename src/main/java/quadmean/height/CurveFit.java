package quadmean.height;

import org.jspecify.annotations.Nullable;
import quadmean.model.CurveForm;
import quadmean.stats.LeastSquaresFit;

/**
 * One form fitted to one set of heights.
 *
 * @param form the form
 * @param status what came of it
 * @param fit parameters and errors, in the unit system of the fit; null unless there is an optimum
 * @param scatter how the scatter grows with dbh
 * @param remark what a reader should know, empty if nothing
 */
public record CurveFit(
        CurveForm form, FitStatus status, @Nullable LeastSquaresFit fit, Scatter scatter, String remark) {

    /**
     * Scatter about a curve: its standard deviation is sigma·d^power.
     *
     * @param power power of dbh; 0 where it is the same for all dbh
     * @param estimated how many parameters were estimated for it: 1 or 0
     */
    public record Scatter(double power, int estimated) {
        /** The same scatter for all dbh. */
        static final Scatter EVEN = new Scatter(0, 0);
    }

    /** Akaike's criterion for small samples; infinite without an optimum. */
    public double aicc() {
        return fit == null ? Double.POSITIVE_INFINITY : fit.aicc(scatter.estimated());
    }

    /**
     * Leave-one-out error in the length unit of the fit, by the linearised form: root mean square of residual over one
     * minus leverage. Infinite without an optimum, so that it never wins.
     */
    public double leaveOneOutError() {
        return fit == null ? Double.POSITIVE_INFINITY : fit.leaveOneOutError();
    }
}
