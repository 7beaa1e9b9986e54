package quadmean.stats;

import java.util.ArrayList;
import java.util.Arrays;
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
        return estimate(strata, rule, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate estimate(List<StratumSample> strata, DegreesOfFreedom rule, Working working) {
        check(strata);
        double[] weights = strata.stream().mapToDouble(StratumSample::weight).toArray();
        List<MeanEstimate> parts = new ArrayList<>();
        for (StratumSample s : strata) {
            if (strata.size() > 1) {
                working.heading("Stratum " + (parts.size() + 1) + ", in the order of the design");
            }
            parts.add(simple(s, working));
        }
        return WeightedSum.of(weights, parts, rule, working);
    }

    /**
     * The mean of a simple random sample with its variance s²/n·(1 - n/N).
     *
     * @param m moments of the sample, of one unit or more
     * @param populationUnits number of units N for the finite population correction; infinity for none
     */
    public static MeanEstimate simple(Moments m, double populationUnits) {
        double variance = m.variance() / m.n() * StratumSample.unseen(m.n(), populationUnits);
        double df = Double.isNaN(variance) ? 0 : m.n() - 1;
        return new MeanEstimate(m.n(), df, m.mean(), Math.sqrt(variance), m.sd());
    }

    /** The mean of a simple random sample, its weight left aside. */
    static MeanEstimate simple(StratumSample s) {
        return simple(s, Working.silent());
    }

    /** The same, step by step. */
    static MeanEstimate simple(StratumSample s, Working working) {
        Moments m = Moments.of(s.values());
        MeanEstimate e = simple(m, s.populationUnits());
        working.mean("mean", "mean", "n", s.values(), m.mean(), Working.Scale.VALUE);
        if (m.n() > 1) {
            double[] deviations =
                    Arrays.stream(s.values()).map(v -> v - m.mean()).toArray();
            String half = "(" + Working.SQUARES + ") / ({n} - 1)";
            working.sum("s²", "variance between them", half, deviations, m.variance(), Working.Scale.SQUARE);
            String formula = "{s²} / {n}" + working.unseen(s, "n");
            working.step("v", "variance of the mean", formula, e.variance(), Working.Scale.SQUARE);
            working.error(e, "{n} - 1");
        }
        return e;
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
