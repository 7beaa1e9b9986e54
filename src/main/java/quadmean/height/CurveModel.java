package quadmean.height;

import java.util.List;
import java.util.Optional;
import quadmean.model.CurveForm;
import quadmean.stats.LeastSquaresProblem;

/**
 * The mathematics of a curve form: height above breast height as a function of dbh, in one unit system throughout.
 * Parameters are in the order a, b, c of {@link CurveForm#formula()}. Asymptotes and inflections by algebra from the
 * formulas.
 */
sealed interface CurveModel extends LeastSquaresProblem.Curve
        permits RationalCurve, ExponentialCurve, SaturatingCurve, LimitCurve {

    /** Number of parameters. */
    int parameters();

    /** Starting values from the linear form of the curve; d above 0, y (height above breast height) above 0. */
    List<double[]> starts(double[] d, double[] y);

    /** Height above breast height that huge trees approach; infinite if there is none. */
    double asymptote(double[] p);

    /** Dbh at which the curve stops bending upwards; NaN if it bends the same way for all dbh above 0. */
    double inflection(double[] p);

    /** What the curve becomes where its best parameters lie at infinity; empty if they cannot. */
    default Optional<LimitCurve> limit() {
        return Optional.empty();
    }

    static CurveModel of(CurveForm form) {
        return switch (form) {
            case NASLUND -> RationalCurve.NASLUND;
            case NASLUND_CUBED -> RationalCurve.NASLUND_CUBED;
            case HYPERBOLIC -> RationalCurve.HYPERBOLIC;
            case PRODAN -> RationalCurve.PRODAN;
            case HOSSFELD -> RationalCurve.HOSSFELD;
            case MICHAILOFF -> ExponentialCurve.MICHAILOFF;
            case CURTIS -> ExponentialCurve.CURTIS;
            case WYKOFF -> ExponentialCurve.WYKOFF;
            case KORF -> ExponentialCurve.KORF;
            case RATKOWSKY -> ExponentialCurve.RATKOWSKY;
            case MEYER -> SaturatingCurve.MEYER;
            case CHAPMAN_RICHARDS -> SaturatingCurve.CHAPMAN_RICHARDS;
            case WEIBULL -> SaturatingCurve.WEIBULL;
            case LOGISTIC -> SaturatingCurve.LOGISTIC;
            case GOMPERTZ -> SaturatingCurve.GOMPERTZ;
            case POWER -> LimitCurve.POWER;
        };
    }

    /** Whether all values lie above zero; NaN does not. */
    static boolean positive(double... values) {
        for (double v : values) {
            if (!(v > 0)) {
                return false;
            }
        }
        return true;
    }
}
