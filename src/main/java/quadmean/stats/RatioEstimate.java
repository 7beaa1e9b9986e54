package quadmean.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * Ratio of two estimated means, and means by a ratio; variances by linearisation (Cochran 1977, sections 2.11 and 6.4 to
 * 6.12; numbers from memory). Ratios are biased: by -Cov(r, mean(x))/mean(X), which shrinks as 1/n (Hartley and Ross 1954, by
 * algebra).
 */
public final class RatioEstimate {
    private RatioEstimate() {}

    /** The two variances of a mean by a ratio that handbooks print. */
    public enum Variance {
        /** v0 = (1-f)/n · Σ(y-rx)²/(n-1): the linearised variance as it stands. */
        V0("v0"),
        /** v2 = v0·(population mean of x / sample mean of x)²: follows the sample at hand. */
        V2("v2");

        private final String label;

        Variance(String label) {
            this.label = label;
        }

        /** The name used in outputs. */
        public String label() {
            return label;
        }
    }

    /**
     * Estimates R = mean(y)/mean(x), with the variance of the mean of (y - R·x)/mean(x). Over strata this is the combined
     * ratio.
     *
     * @param y numerators
     * @param x denominators, strata and units in the same order as y
     * @param rule how to count degrees of freedom
     * @return the ratio; mean and error are NaN where mean(x) is zero
     */
    public static MeanEstimate estimate(List<StratumSample> y, List<StratumSample> x, DegreesOfFreedom rule) {
        return estimate(y, x, rule, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate estimate(
            List<StratumSample> y, List<StratumSample> x, DegreesOfFreedom rule, Working working) {
        double meanX = StratifiedMean.estimate(x, rule).mean();
        double ratio = StratifiedMean.estimate(y, rule).mean() / meanX;
        working.given("ȳ", "mean of the numerator", ratio * meanX, Working.Scale.FACTOR);
        working.number("x̄", "mean of the denominator", meanX);
        working.step("r", "their ratio", "{ȳ} / {x̄}", ratio, Working.Scale.FACTOR);
        working.heading("Its error is that of the mean of (y - r × x) / x̄, a value for each unit");
        List<StratumSample> linear = new ArrayList<>();
        for (int h = 0; h < y.size(); h++) {
            linear.add(y.get(h).with(residuals(y.get(h).values(), x.get(h).values(), ratio, meanX)));
        }
        return StratifiedMean.estimate(linear, rule, working).about(ratio);
    }

    /**
     * Mean of y where the population mean of x is known: R·meanX, with one ratio for all strata.
     *
     * @param y measured values
     * @param x auxiliary values, strata and units in the same order as y
     * @param meanX population mean of x
     * @param form which variance
     * @param rule how to count degrees of freedom
     */
    public static MeanEstimate mean(
            List<StratumSample> y, List<StratumSample> x, double meanX, Variance form, DegreesOfFreedom rule) {
        return mean(y, x, meanX, form, rule, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate mean(
            List<StratumSample> y,
            List<StratumSample> x,
            double meanX,
            Variance form,
            DegreesOfFreedom rule,
            Working working) {
        MeanEstimate ratio = estimate(y, x, rule, working.ofFactors());
        double sampleMean = StratifiedMean.estimate(x, rule).mean();
        MeanEstimate mean =
                ratio.times(form == Variance.V0 ? sampleMean : meanX).about(ratio.mean() * meanX);
        working.heading("Mean by the ratio, variance " + form.label());
        working.given("v_r", "variance of the ratio", ratio.variance(), Working.Scale.SQUARE);
        working.number("X", "known mean of the auxiliary", meanX);
        working.step("mean", "mean", "{r} × {X}", mean.mean(), Working.Scale.VALUE);
        String by = form == Variance.V0 ? "{x̄}" : "{X}";
        working.step("v", "its variance", "{v_r} × " + by + "²", mean.variance(), Working.Scale.SQUARE);
        working.error(mean, "");
        return mean;
    }

    /**
     * The same with a ratio of its own for each stratum, which needs each stratum's mean of x and more than a few units in
     * each, for the biases add up.
     *
     * @param meansX population mean of x in each stratum
     */
    public static MeanEstimate separateMean(
            List<StratumSample> y, List<StratumSample> x, double[] meansX, Variance form, DegreesOfFreedom rule) {
        Arguments.sameLength(meansX.length, y.size(), "stratum means of x and strata");
        List<MeanEstimate> parts = new ArrayList<>();
        for (int h = 0; h < y.size(); h++) {
            parts.add(mean(List.of(y.get(h).alone()), List.of(x.get(h).alone()), meansX[h], form, rule));
        }
        return WeightedSum.of(y.stream().mapToDouble(StratumSample::weight).toArray(), parts, rule);
    }

    /** The variable whose mean has, to the first order, the error of the ratio: (y - ratio·x)/divisor. */
    static double[] residuals(double[] y, double[] x, double ratio, double divisor) {
        Arguments.sameLength(y.length, x.length, "values of y and x");
        double[] z = new double[y.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = (y[i] - ratio * x[i]) / divisor;
        }
        return z;
    }
}
