package quadmean.height;

import quadmean.model.CurveForm;

/**
 * Curve forms written as a straight line of transformed heights, with the way back. The mean of a height is not the
 * height of the mean: each way back corrects for that, to second order in the scatter of the transformed heights.
 */
public enum LinearisedCurve {
    /** d/√y = a + b·d; back by d²/ŷ²·(1 + 3s²/ŷ²), a second-order expansion. */
    NASLUND(CurveForm.NASLUND, "bias corrected by the factor 1 + 3s²/ŷ²") {
        @Override
        double predictor(double d) {
            return d;
        }

        @Override
        double transform(double d, double y) {
            return d / Math.sqrt(y);
        }

        @Override
        double back(double d, double z, double variance) {
            return d * d / (z * z) * (1 + 3 * variance / (z * z));
        }

        @Override
        double slope(double d, double z) {
            return 2 * d * d / Math.pow(Math.abs(z), 3);
        }
    },

    /** ln y = ln a + b·ln(d/(1 + d)). */
    CURTIS(CurveForm.CURTIS, LinearisedCurve.LOGARITHMIC) {
        @Override
        double predictor(double d) {
            return Math.log(d / (1 + d));
        }
    },

    /** ln y = ln a - b/d. */
    MICHAILOFF(CurveForm.MICHAILOFF, LinearisedCurve.LOGARITHMIC) {
        @Override
        double predictor(double d) {
            return -1 / d;
        }
    };

    private static final String LOGARITHMIC = "bias corrected by the factor exp(s²/2)";

    private final CurveForm form;
    private final String correction;

    LinearisedCurve(CurveForm form, String correction) {
        this.form = form;
        this.correction = correction;
    }

    /** The curve form that this is the line of. */
    public CurveForm form() {
        return form;
    }

    /** The correction of bias in words. */
    public String correction() {
        return correction;
    }

    /** The predictor of the straight line. */
    abstract double predictor(double d);

    /** The row of a design matrix. */
    final double[] row(double d) {
        return new double[] {1, predictor(d)};
    }

    /** A height above breast height on the scale of the straight line. */
    double transform(double d, double y) {
        return Math.log(y);
    }

    /**
     * The mean height above breast height of trees whose transformed height is scattered about a value.
     *
     * @param d dbh
     * @param z the value
     * @param variance variance of the scatter on the scale of the straight line
     */
    double back(double d, double z, double variance) {
        return Math.exp(z + variance / 2);
    }

    /** How much the height changes with the transformed height, without sign. */
    double slope(double d, double z) {
        return Math.exp(z);
    }
}
