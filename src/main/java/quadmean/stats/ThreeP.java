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
        return unadjusted(y, prediction, limit, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate unadjusted(double[] y, double[] prediction, double limit, Working working) {
        Arguments.positive(limit, "limit of the predictions");
        double[] p = Arrays.stream(prediction)
                .map(k -> Math.min(1, Arguments.positive(k, "prediction") / limit))
                .toArray();
        working.heading("Measured trees, value over probability = prediction / limit, at most 1");
        working.number("L", "limit of the predictions", limit);
        return HorvitzThompson.total(y, p, HorvitzThompson.UnitVariance.POISSON, working);
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
        return adjusted(y, prediction, sumOfPredictions, Working.silent());
    }

    private static MeanEstimate adjusted(double[] y, double[] prediction, double sumOfPredictions, Working working) {
        working.number("K", "sum of the predictions of all trees that were not sure to be measured", sumOfPredictions);
        working.heading("Measured trees that were not sure to be: value over prediction / K");
        double[] p = Arrays.stream(prediction).map(k -> k / sumOfPredictions).toArray();
        Arguments.atLeast(y.length, 1, "measured units");
        return HansenHurwitz.total(y, p, working);
    }

    /**
     * The same with the units that were sure to be measured: their sum is added as it is.
     *
     * @param sure values of the units that were sure to be measured
     */
    public static MeanEstimate adjusted(double[] y, double[] prediction, double sumOfPredictions, double[] sure) {
        return adjusted(y, prediction, sumOfPredictions, sure, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate adjusted(
            double[] y, double[] prediction, double sumOfPredictions, double[] sure, Working working) {
        MeanEstimate known = new MeanEstimate(sure.length, 0, Moments.sum(sure), 0, 0);
        MeanEstimate drawn = adjusted(y, prediction, sumOfPredictions, working);
        if (sure.length > 0) {
            working.heading("Trees that were sure to be measured, which add no error");
            working.sum("S", "their sum", Working.SUM, sure, known.mean(), Working.Scale.VALUE);
        }
        return WeightedSum.of(new double[] {1, 1}, List.of(drawn, known), DegreesOfFreedom.UNITS_MINUS_STRATA, working);
    }
}
