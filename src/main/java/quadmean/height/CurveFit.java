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
 * @param remark what a reader should know, empty if nothing
 */
public record CurveFit(
        CurveForm form, FitStatus status, @Nullable LeastSquaresFit fit, String remark) {

    /** Akaike's criterion for small samples; infinite without an optimum, so that it never wins. */
    public double aicc() {
        return fit == null ? Double.POSITIVE_INFINITY : fit.aicc();
    }
}
