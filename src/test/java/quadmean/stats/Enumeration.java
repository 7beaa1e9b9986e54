package quadmean.stats;

import java.util.ArrayList;
import java.util.List;
import quadmean.support.Tolerance;

/** Averages over all samples that a design can draw from a small population, each with its probability. */
final class Enumeration {
    private double probability;
    private double mean;
    private double square;
    private double variance;

    /** All choices of n out of units, each rising. */
    static List<int[]> choices(int units, int n) {
        List<int[]> all = new ArrayList<>();
        extend(all, new int[n], 0, 0, units);
        return all;
    }

    private static void extend(List<int[]> all, int[] chosen, int at, int from, int units) {
        if (at == chosen.length) {
            all.add(chosen.clone());
            return;
        }
        for (int i = from; i < units; i++) {
            chosen[at] = i;
            extend(all, chosen, at + 1, i + 1, units);
        }
    }

    static double[] pick(double[] values, int[] chosen) {
        double[] picked = new double[chosen.length];
        for (int i = 0; i < picked.length; i++) {
            picked[i] = values[chosen[i]];
        }
        return picked;
    }

    /** Counts a sample: its probability, its estimate and its estimated variance. */
    void add(double p, double estimate, double estimatedVariance) {
        probability += p;
        mean += p * estimate;
        square += p * estimate * estimate;
        variance += p * estimatedVariance;
    }

    double mean() {
        return mean / probability;
    }

    /** The true variance of the estimate. */
    double trueVariance() {
        return square / probability - mean() * mean();
    }

    void checkUnbiased(double truth) {
        Tolerance.R_SCRIPT.check(truth, mean(), "mean of all estimates");
        Tolerance.R_SCRIPT.check(trueVariance(), variance / probability, "mean of all estimated variances");
    }
}
