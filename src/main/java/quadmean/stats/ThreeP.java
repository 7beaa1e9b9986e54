package quadmean.stats;

import java.util.Arrays;
import java.util.List;

/**
 * 3P sampling: every unit gets a prediction, and is measured with probability prediction/limit, at most 1 (Grosenbaugh 1965, from
 * memory). Units whose prediction reaches the limit are sure to be measured and add no sampling error.
 */
public final class ThreeP {
    private ThreeP() {}

    /**
     * The limit that is expected to bring in so many units, as long as no prediction exceeds it.
     *
     * @param sumOfPredictions over all units, above 0
     * @param wanted units to measure, at least 1
     */
    public static double limit(double sumOfPredictions, int wanted) {
        return Arguments.positive(sumOfPredictions, "sum of predictions")
                / Arguments.atLeast(wanted, 1, "units to measure");
    }

    /**
     * Unadjusted total Σ y/P: unbiased, and so is its variance, but large, for the number of measured units is left to chance.
     *
     * @param y values of the measured units
     * @param prediction their predictions, above 0
     * @param limit the largest random number of the draw, above 0
     */
    public static MeanEstimate unadjusted(double[] y, double[] prediction, double limit) {
        Arguments.positive(limit, "limit of the predictions");
        double[] p = Arrays.stream(prediction)
                .map(k -> Math.min(1, Arguments.positive(k, "prediction") / limit))
                .toArray();
        return HorvitzThompson.total(y, p, HorvitzThompson.UnitVariance.POISSON);
    }

    /**
     * Adjusted total ΣKPI·mean(y/KPI): a far smaller variance, and a bias of Σk(y·K/T - k)/K² of the total, K the sum of all
     * predictions k and T that of all y: of order 1/N, whatever n (by algebra, to the first order). Its error is that of
     * {@link HansenHurwitz} with chances KPI/ΣKPI, as if so many had been drawn with replacement: too large where much of the
     * population is drawn.
     *
     * @param y values of the measured units that were not sure to be measured, at least one
     * @param prediction their predictions, above 0
     * @param sumOfPredictions over all units that were not sure to be measured, drawn or not
     */
    public static MeanEstimate adjusted(double[] y, double[] prediction, double sumOfPredictions) {
        double[] p = Arrays.stream(prediction).map(k -> k / sumOfPredictions).toArray();
        Arguments.atLeast(y.length, 1, "measured units");
        return HansenHurwitz.total(y, p);
    }

    /**
     * The same with the units that were sure to be measured: their sum is added as it is.
     *
     * @param sure values of the units that were sure to be measured
     */
    public static MeanEstimate adjusted(double[] y, double[] prediction, double sumOfPredictions, double[] sure) {
        MeanEstimate known = new MeanEstimate(sure.length, 0, Moments.sum(sure), 0, 0);
        MeanEstimate drawn = adjusted(y, prediction, sumOfPredictions);
        return WeightedSum.of(new double[] {1, 1}, List.of(drawn, known), DegreesOfFreedom.UNITS_MINUS_STRATA);
    }
}
