package quadmean.stats;

import java.util.List;
import java.util.StringJoiner;

/**
 * Sums of independent estimates: strata, or a part measured whole beside a part sampled. Variances add with squared
 * weights (by algebra); every stratified estimator of this room ends here.
 */
public final class WeightedSum {
    private WeightedSum() {}

    /**
     * Estimates Σ w·mean with variance Σ w²·se².
     *
     * @param weights one for each part; shares of the population where means are joined, 1 where totals are added
     * @param parts independent estimates
     * @param rule how to count degrees of freedom; a part without error adds nothing to Satterthwaite's
     * @return the sum; its error is NaN, on 0 degrees of freedom, where a part has none
     * @throws IllegalArgumentException without parts, or with another number of weights
     */
    public static MeanEstimate of(double[] weights, List<MeanEstimate> parts, DegreesOfFreedom rule) {
        return of(weights, parts, rule, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate of(double[] weights, List<MeanEstimate> parts, DegreesOfFreedom rule, Working working) {
        Arguments.atLeast(parts.size(), 1, "parts of a sum");
        Arguments.sameLength(weights.length, parts.size(), "weights and parts");
        int k = weights.length;
        int units = 0;
        double partDf = 0;
        double[] means = new double[k];
        double[] within = new double[k];
        double[] variances = new double[k];
        double[] squaresOverDf = new double[k];
        for (int i = 0; i < k; i++) {
            MeanEstimate p = parts.get(i);
            units += p.n();
            partDf += p.df();
            means[i] = weights[i] * p.mean();
            within[i] = weights[i] * p.sd() * p.sd();
            variances[i] = weights[i] * weights[i] * p.se() * p.se();
            squaresOverDf[i] = variances[i] == 0 ? 0 : variances[i] * variances[i] / p.df();
        }
        double variance = Moments.sum(variances);
        double df = Double.isNaN(variance) ? 0 : partDf;
        if (rule == DegreesOfFreedom.SATTERTHWAITE && variance > 0) {
            df = variance * variance / Moments.sum(squaresOverDf);
        }
        MeanEstimate sum =
                new MeanEstimate(units, df, Moments.sum(means), Math.sqrt(variance), Math.sqrt(Moments.sum(within)));
        if (k > 1 && working.isKept()) {
            show(weights, parts, sum, rule, working);
        }
        return sum;
    }

    private static void show(
            double[] weights, List<MeanEstimate> parts, MeanEstimate sum, DegreesOfFreedom rule, Working working) {
        working.heading("All parts together");
        StringJoiner means = new StringJoiner(" + ");
        StringJoiner variances = new StringJoiner(" + ");
        StringJoiner degrees = new StringJoiner(" + ");
        StringJoiner squares = new StringJoiner(" + ");
        for (int i = 1; i <= weights.length; i++) {
            MeanEstimate p = parts.get(i - 1);
            working.number("W" + i, "weight of part " + i, weights[i - 1]);
            working.given("m" + i, "estimate of part " + i, p.mean(), Working.Scale.VALUE);
            working.given("v" + i, "variance of part " + i, p.variance(), Working.Scale.SQUARE);
            working.number("d" + i, "degrees of freedom of part " + i, p.df());
            means.add("{W%d} × {m%d}".replace("%d", Integer.toString(i)));
            variances.add("{W%d}² × {v%d}".replace("%d", Integer.toString(i)));
            degrees.add("{d%d}".replace("%d", Integer.toString(i)));
            if (p.variance() != 0) {
                squares.add("({W%d}² × {v%d})² / {d%d}".replace("%d", Integer.toString(i)));
            }
        }
        working.step("mean", "estimate", means.toString(), sum.mean(), Working.Scale.VALUE);
        if (sum.hasError()) {
            boolean isSatterthwaite = rule == DegreesOfFreedom.SATTERTHWAITE && sum.variance() > 0;
            working.step("v", "its variance", variances.toString(), sum.variance(), Working.Scale.SQUARE);
            working.error(sum, isSatterthwaite ? "{v}² / (" + squares + ")" : degrees.toString());
        }
    }
}
