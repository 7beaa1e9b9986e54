package quadmean.stats;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Bootstrap of a stratified sample by its own units: in each stratum n - 1 of the n units are drawn with replacement, and with a
 * finite population correction the deviations shrink by √(1-f), so that the variance over resamples is the design's own for any
 * mean (Rao and Wu 1988; McCarthy and Snowden 1985 for n - 1; from memory). Seeded: each resample has its own stream of random
 * numbers, so that results do not depend on the number of threads.
 */
public final class Bootstrap {
    private static final int BLOCK = 128;

    private Bootstrap() {}

    /**
     * Draws resamples.
     *
     * @param strata strata in the order in which the statistic takes their units
     * @param statistic what to compute
     * @param replicates number of resamples, at least 1
     * @param seed the same seed gives the same numbers
     */
    public static BootstrapSample run(
            List<ResampledStratum> strata, UnitStatistic statistic, int replicates, long seed) {
        Arguments.atLeast(strata.size(), 1, "strata");
        Arguments.atLeast(replicates, 1, "resamples");
        ResampledStratum[] design = strata.toArray(ResampledStratum[]::new);
        double[][] values = new double[statistic.outputs()][replicates];
        int blocks = (replicates + BLOCK - 1) / BLOCK;
        IntStream.range(0, blocks)
                .parallel()
                .forEach(b -> draw(design, statistic, values, b * BLOCK, Math.min(replicates, (b + 1) * BLOCK), seed));
        return BootstrapSample.of(design, statistic, values);
    }

    private static void draw(
            ResampledStratum[] design, UnitStatistic statistic, double[][] values, int from, int to, long seed) {
        UnitStatistic.Evaluator evaluator = statistic.evaluator();
        double[] weights = new double[units(design)];
        double[] out = new double[values.length];
        double[] shrinkages = new double[design.length];
        for (int h = 0; h < design.length; h++) {
            shrinkages[h] = design[h].shrinkage();
        }
        for (int r = from; r < to; r++) {
            resample(design, shrinkages, RandomStream.state(seed, r), weights);
            evaluator.evaluate(weights, out);
            for (int k = 0; k < out.length; k++) {
                values[k][r] = out[k];
            }
        }
    }

    private static void resample(ResampledStratum[] design, double[] shrinkages, long start, double[] weights) {
        long state = start;
        int first = 0;
        for (int h = 0; h < design.length; h++) {
            int n = design[h].units();
            double share = design[h].weight();
            double kept = n == 1 ? share : share / n * (1 - shrinkages[h]);
            for (int i = first; i < first + n; i++) {
                weights[i] = kept;
            }
            double step = share * shrinkages[h] / (n - 1);
            for (int k = 1; k < n; k++) {
                state += RandomStream.STEP;
                weights[first + RandomStream.below(n, state)] += step;
            }
            first += n;
        }
    }

    static int units(ResampledStratum[] design) {
        int units = 0;
        for (ResampledStratum s : design) {
            units += s.units();
        }
        return units;
    }
}
