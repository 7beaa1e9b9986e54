package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class MomentsTest {

    /** Exercise of an introductory textbook: worked-examples.json srs-70-squares-tree-count. */
    @Test
    void meanAndStandardDeviationOfSeventyCounts() {
        var e = ReferenceFiles.example("srs-70-squares-tree-count");
        Moments m = Moments.of(ReferenceFiles.numbers(e.get("inputs").get("counts")));
        assertEquals(70, m.n());
        Tolerance.printed(3).check(ReferenceFiles.number(e.get("published").get("mean")), m.mean(), "mean");
        Tolerance.printed(3).check(ReferenceFiles.number(e.get("published").get("s")), m.sd(), "sd");
    }

    /** 1e16 swamps a plain sum: 1e16 + 1 is 1e16 in doubles. The exact sum is 2. */
    @Test
    void smallValuesSurviveBesideHugeOnes() {
        assertEquals(2, Moments.sum(new double[] {1, 1e16, 1, -1e16}));
        assertEquals(2, Moments.sum(new double[] {1e16, 1, 1, -1e16}));
    }

    /** Ten tenths are one; a plain sum gives 0.9999999999999999. */
    @Test
    void roundingErrorsDoNotPileUp() {
        double[] tenths = new double[10];
        Arrays.fill(tenths, 0.1);
        assertEquals(1, Moments.sum(tenths));
    }

    /** Variance of 4, 7, 13, 16 is 30, and a shift of 1e9 leaves it so (by algebra). */
    @Test
    void aLargeMeanDoesNotSpoilTheVariance() {
        Moments m = Moments.of(new double[] {1e9 + 4, 1e9 + 7, 1e9 + 13, 1e9 + 16});
        assertEquals(1e9 + 10, m.mean());
        assertEquals(30, m.variance());
    }

    @Test
    void tooFewValuesGiveNoVariance() {
        assertEquals(5, Moments.of(new double[] {5}).mean());
        assertTrue(Double.isNaN(Moments.of(new double[] {5}).variance()));
        assertTrue(Double.isNaN(Moments.of(new double[0]).mean()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void orderOfTheValuesDoesNotShow(long seed) {
        Random random = new Random(seed);
        double[] values = random.doubles(200).map(u -> Math.pow(10, 12 * u)).toArray();
        double[] shuffled = Samples.shuffled(values, random);
        Moments m = Moments.of(values);
        Tolerance lastBits = Tolerance.relative("two last bits of a double, seed " + seed, 4e-16);
        lastBits.check(m.mean(), Moments.of(shuffled).mean(), "mean");
        lastBits.check(m.variance(), Moments.of(shuffled).variance(), "variance");
    }
}
