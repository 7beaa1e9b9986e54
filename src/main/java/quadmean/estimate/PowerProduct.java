package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import quadmean.stats.MeanEstimate;

/**
 * A product of powers of means, f = k·Π m^e, as nearly every stand statistic is. To the first order its error is that of the
 * mean of f·Σ e·x/m over plots (linearisation; Cochran 1977, section 2.11 for the ratio, from memory), which any sampling design
 * knows how to estimate.
 */
final class PowerProduct {
    private final double factor;
    private final List<ToDoubleFunction<SampledPlot>> values = new ArrayList<>();
    private final List<Double> exponents = new ArrayList<>();

    private PowerProduct(double factor) {
        this.factor = factor;
    }

    static PowerProduct of(double factor) {
        return new PowerProduct(factor);
    }

    /** The same times the mean of a plot value to a power. */
    PowerProduct times(ToDoubleFunction<SampledPlot> value, double exponent) {
        PowerProduct more = new PowerProduct(factor);
        more.values.addAll(values);
        more.exponents.addAll(exponents);
        more.values.add(value);
        more.exponents.add(exponent);
        return more;
    }

    /** The same over the mean of a plot value. */
    PowerProduct over(ToDoubleFunction<SampledPlot> value) {
        return times(value, -1);
    }

    /** Value and error; NaN where a mean is zero or unknown. */
    MeanEstimate estimate(Sample sample) {
        double[] means = values.stream().mapToDouble(v -> sample.mean(v).mean()).toArray();
        double product = factor;
        for (int i = 0; i < means.length; i++) {
            product *= means[i] == 0 ? Double.NaN : Math.pow(means[i], exponents.get(i));
        }
        double f = product;
        MeanEstimate linear = sample.mean(plot -> {
            double sum = 0;
            for (int i = 0; i < means.length; i++) {
                sum += exponents.get(i) * values.get(i).applyAsDouble(plot) / means[i];
            }
            return f * sum;
        });
        return new MeanEstimate(linear.n(), linear.df(), f, linear.se(), linear.sd());
    }
}
