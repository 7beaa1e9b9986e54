package quadmean.stats;

import java.util.ArrayList;
import java.util.List;

/** Ratio of two estimated means, its variance by linearisation (Cochran 1977, section 2.11; number from memory). */
public final class RatioEstimate {
    private RatioEstimate() {}

    /**
     * Estimates R = mean(y)/mean(x), with the variance of the mean of (y - R·x)/mean(x).
     *
     * @param y numerators
     * @param x denominators, strata and units in the same order as y
     * @param rule how to count degrees of freedom
     * @return the ratio; mean and error are NaN where mean(x) is zero
     */
    public static MeanEstimate estimate(List<StratumSample> y, List<StratumSample> x, DegreesOfFreedom rule) {
        double meanX = StratifiedMean.estimate(x, rule).mean();
        double ratio = StratifiedMean.estimate(y, rule).mean() / meanX;
        List<StratumSample> linear = new ArrayList<>();
        for (int h = 0; h < y.size(); h++) {
            double[] ys = y.get(h).values();
            double[] xs = x.get(h).values();
            double[] z = new double[ys.length];
            for (int i = 0; i < z.length; i++) {
                z[i] = (ys[i] - ratio * xs[i]) / meanX;
            }
            linear.add(y.get(h).with(z));
        }
        MeanEstimate residual = StratifiedMean.estimate(linear, rule);
        return new MeanEstimate(residual.n(), residual.df(), ratio, residual.se(), residual.sd());
    }
}
