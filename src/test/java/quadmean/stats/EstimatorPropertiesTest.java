package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.Tolerance;

/** What holds for every sample, by algebra. Seeds are fixed and stand in the failure. */
class EstimatorPropertiesTest {
    private static final DegreesOfFreedom RULE = DegreesOfFreedom.SATTERTHWAITE;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void permutingUnitsChangesNothing(long seed) {
        Random random = new Random(seed);
        List<StratumSample> strata = strata(random);
        List<StratumSample> shuffled = strata.stream()
                .map(s -> s.with(Samples.shuffled(s.values(), random)))
                .toList();
        checkSame(StratifiedMean.estimate(strata, RULE), StratifiedMean.estimate(shuffled, RULE), seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void orderOfStrataChangesNothing(long seed) {
        List<StratumSample> strata = strata(new Random(seed));
        List<StratumSample> turned = List.of(strata.get(2), strata.get(0), strata.get(1));
        checkSame(StratifiedMean.estimate(strata, RULE), StratifiedMean.estimate(turned, RULE), seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void scalingReadingsScalesMeanAndError(long seed) {
        Random random = new Random(seed);
        double k = 0.01 + 50 * random.nextDouble();
        List<StratumSample> strata = strata(random);
        List<StratumSample> scaled =
                strata.stream().map(s -> s.with(Samples.times(k, s.values()))).toList();
        MeanEstimate expected = StratifiedMean.estimate(strata, RULE).times(k);
        checkSame(expected, StratifiedMean.estimate(scaled, RULE), seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void splittingIntoEqualCopiesKeepsTheMean(long seed) {
        double[] values = Samples.positive(9, new Random(seed));
        List<StratumSample> one = List.of(StratumSample.of(1, values));
        List<StratumSample> two = List.of(StratumSample.of(0.25, values), StratumSample.of(0.75, values));
        MeanEstimate whole = StratifiedMean.estimate(one, RULE);
        MeanEstimate split = StratifiedMean.estimate(two, RULE);
        Tolerance.ROUNDING.check(whole.mean(), split.mean(), "mean, seed " + seed);
        // variance Σ W²: 1/16 + 9/16 of the whole
        Tolerance.ROUNDING.check(whole.se() * Math.sqrt(0.625), split.se(), "error, seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aCensusHasNoError(long seed) {
        List<StratumSample> census = strata(new Random(seed)).stream()
                .map(s -> new StratumSample(s.weight(), s.values().length, s.values()))
                .toList();
        MeanEstimate m = StratifiedMean.estimate(census, RULE);
        assertEquals(0, m.se(), "seed " + seed);
        assertTrue(m.hasError() && m.halfWidth(0.95) == 0, "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void satterthwaiteLiesBetweenTheThinnestStratumAndAllTogether(long seed) {
        List<StratumSample> strata = strata(new Random(seed));
        double df = StratifiedMean.estimate(strata, RULE).df();
        double all = StratifiedMean.estimate(strata, DegreesOfFreedom.UNITS_MINUS_STRATA)
                .df();
        int thinnest =
                strata.stream().mapToInt(s -> s.values().length - 1).min().orElseThrow();
        assertTrue(df >= thinnest && df <= all, "seed " + seed + ": " + df + " outside " + thinnest + ".." + all);
    }

    /** Over all 56 samples of 3 out of 8: the mean is unbiased, and so is its estimated variance. */
    @Test
    void allSamplesTogetherAreUnbiased() {
        double[] population = {3, 1, 4, 1, 5, 9, 2, 6};
        double[] means = new double[56];
        double[] variances = new double[56];
        int k = 0;
        for (int a = 0; a < 8; a++) {
            for (int b = a + 1; b < 8; b++) {
                for (int c = b + 1; c < 8; c++) {
                    double[] drawn = {population[a], population[b], population[c]};
                    MeanEstimate m = StratifiedMean.estimate(List.of(new StratumSample(1, 8, drawn)), RULE);
                    means[k] = m.mean();
                    variances[k++] = m.se() * m.se();
                }
            }
        }
        assertEquals(56, k);
        double truth = Moments.of(population).mean();
        double trueVariance = Moments.of(means).variance() * 55 / 56;
        Tolerance.ROUNDING.check(truth, Moments.of(means).mean(), "mean of means");
        Tolerance.ROUNDING.check(trueVariance, Moments.of(variances).mean(), "mean of se²");
    }

    private static List<StratumSample> strata(Random random) {
        List<StratumSample> strata = new ArrayList<>();
        for (double weight : new double[] {0.5, 0.3, 0.2}) {
            int n = 3 + random.nextInt(10);
            strata.add(new StratumSample(weight, n + random.nextInt(50) + 1, Samples.positive(n, random)));
        }
        return strata;
    }

    private static void checkSame(MeanEstimate expected, MeanEstimate actual, long seed) {
        assertEquals(expected.n(), actual.n());
        Tolerance.ROUNDING.check(expected.mean(), actual.mean(), "mean, seed " + seed);
        Tolerance.ROUNDING.check(expected.se(), actual.se(), "error, seed " + seed);
        Tolerance.ROUNDING.check(expected.sd(), actual.sd(), "sd, seed " + seed);
        Tolerance.ROUNDING.check(expected.df(), actual.df(), "df, seed " + seed);
    }
}
