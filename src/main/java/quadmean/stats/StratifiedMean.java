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
        double[] weights = strata.stream().mapToDouble(StratumSample::weight).toArray();
        return WeightedSum.of(
                weights, strata.stream().map(StratifiedMean::simple).toList(), rule);
    }

    /** The mean of a simple random sample, its weight left aside. */
    static MeanEstimate simple(StratumSample s) {
        Moments m = Moments.of(s.values());
        double variance = m.variance() / m.n() * s.unseen();
        double df = Double.isNaN(variance) ? 0 : m.n() - 1;
        return new MeanEstimate(m.n(), df, m.mean(), Math.sqrt(variance), m.sd());
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
