package quadmean.stats;

import java.util.List;

/**
 * Mean of a stratified random sample; with one stratum, of a simple random sample (Cochran 1977, chapters 2 and 5;
 * chapter numbers from memory).
 */
public final class StratifiedMean {
    private StratifiedMean() {}

    /**
     * Estimates the population mean Σ W·mean and its variance Σ W²·s²/n·(1 - n/N).
     *
     * @param strata samples whose weights add up to 1, each with at least one unit
     * @param rule how to count degrees of freedom
     * @throws IllegalArgumentException if there is no stratum, an empty one, or weights that do not add up to 1
     */
    public static MeanEstimate estimate(List<StratumSample> strata, DegreesOfFreedom rule) {
        check(strata);
        int units = 0;
        int k = strata.size();
        double[] means = new double[k];
        double[] within = new double[k];
        double[] variances = new double[k];
        double[] squaresOverDf = new double[k];
        for (int i = 0; i < k; i++) {
            StratumSample s = strata.get(i);
            Moments m = Moments.of(s.values());
            units += m.n();
            means[i] = s.weight() * m.mean();
            within[i] = s.weight() * m.variance();
            variances[i] = s.weight() * s.weight() * m.variance() / m.n() * s.unseen();
            squaresOverDf[i] = variances[i] * variances[i] / (m.n() - 1);
        }
        double variance = Moments.sum(variances);
        double df = Double.isNaN(variance) ? 0 : units - k;
        if (rule == DegreesOfFreedom.SATTERTHWAITE && variance > 0) {
            df = variance * variance / Moments.sum(squaresOverDf);
        }
        return new MeanEstimate(units, df, Moments.sum(means), Math.sqrt(variance), Math.sqrt(Moments.sum(within)));
    }

    private static void check(List<StratumSample> strata) {
        double[] weights = strata.stream().mapToDouble(StratumSample::weight).toArray();
        if (!(Math.abs(Moments.sum(weights) - 1) < 1e-9)) {
            throw new IllegalArgumentException("stratum weights must add up to 1, got " + Moments.sum(weights));
        }
        for (StratumSample s : strata) {
            Arguments.atLeast(s.values().length, 1, "units in a stratum");
        }
    }
}
