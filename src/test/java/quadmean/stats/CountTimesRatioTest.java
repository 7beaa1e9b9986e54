package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.Tolerance;

/**
 * Counts on many plots, the ratio of the wanted to the counted on some of them: stems of longleaf quadrats on 32 of 64, basal area per
 * stem on 12 of the 32. Both estimates are the same number; they differ in the error.
 */
class CountTimesRatioTest {
    private static final double[] IDS =
            IntStream.rangeClosed(1, 64).asDoubleStream().toArray();
    private static final double[] BASAL_AREA = Samples.quadrats(IDS, "ba_m2");
    private static final double[] STEMS = Samples.quadrats(IDS, "stems");
    private static final DegreesOfFreedom RULE = DegreesOfFreedom.UNITS_MINUS_STRATA;

    /**
     * Mean estimated over true variance, expected from 40 000 cruises in R by the same two formulas written out. Independent factors
     * (Bruce 1961) overstate the error where quadrats with many stems have thin ones, and more so the more are measured; double sampling
     * follows what the quadrats show and comes near the truth.
     */
    @ParameterizedTest
    @CsvSource({"32,12,0.844,1.165", "48,32,0.946,1.468", "60,50,0.957,1.306"})
    void independenceIsAnAssumption(int counted, int measured, double twoSamples, double independent) {
        int times = 20_000;
        double[] means = new double[times];
        double[] two = new double[times];
        double[] bruce = new double[times];
        for (int k = 0; k < times; k++) {
            int[] order = order(Samples.random(k));
            int[] many = Arrays.copyOf(order, counted);
            int[] some = Arrays.copyOf(order, measured);
            StratumSample first = new StratumSample(1, 64, Enumeration.pick(STEMS, many));
            double[] x = Enumeration.pick(STEMS, some);
            double[] y = Enumeration.pick(BASAL_AREA, some);
            MeanEstimate m = DoubleSampling.ratio(first, x, y);
            MeanEstimate product = product(first, x, y);
            assertEquals(m.mean(), product.mean(), 1e-12 * m.mean());
            means[k] = m.mean();
            two[k] = m.variance();
            bruce[k] = product.variance();
        }
        double truth = Moments.of(means).variance();
        double ofTwo = Moments.of(two).mean() / truth;
        double ofBruce = Moments.of(bruce).mean() / truth;
        System.out.printf(
                Locale.ROOT,
                "%d of %d: double sampling %.3f, independent factors %.3f of the true variance%n",
                measured,
                counted,
                ofTwo,
                ofBruce);
        // two simulated variances, of 20 000 and 40 000 cruises, off by 1.2 % and more, as the estimates have long
        // tails
        Tolerance chance = Tolerance.relative("four Monte Carlo errors", 0.05);
        chance.check(twoSamples, ofTwo, "two samples");
        chance.check(independent, ofBruce, "independent");
    }

    /** With a ratio that is the same everywhere both errors are that of the counts (by algebra). */
    @Test
    void aConstantRatioLeavesTheErrorOfTheCounts() {
        int[] order = order(new Random(4));
        StratumSample first = new StratumSample(1, 64, Enumeration.pick(STEMS, Arrays.copyOf(order, 32)));
        double[] x = Enumeration.pick(STEMS, Arrays.copyOf(order, 12));
        MeanEstimate counts = StratifiedMean.simple(first).times(0.08);
        MeanEstimate product = product(first, x, Samples.times(0.08, x));
        Tolerance.R_SCRIPT.check(counts.mean(), product.mean(), "mean");
        Tolerance.R_SCRIPT.check(counts.se(), product.se(), "error");
        Tolerance.R_SCRIPT.check(
                counts.mean(),
                DoubleSampling.ratio(first, x, Samples.times(0.08, x)).mean(),
                "mean");
    }

    private static MeanEstimate product(StratumSample counts, double[] x, double[] y) {
        StratumSample numerator = new StratumSample(1, 64, y);
        MeanEstimate ratio = RatioEstimate.estimate(List.of(numerator), List.of(numerator.with(x)), RULE);
        return ProductEstimate.of(List.of(StratifiedMean.simple(counts), ratio), ProductEstimate.Variance.BRUCE);
    }

    private static int[] order(Random random) {
        return Arrays.stream(
                        Samples.shuffled(IntStream.range(0, 64).asDoubleStream().toArray(), random))
                .mapToInt(v -> (int) v)
                .toArray();
    }
}
