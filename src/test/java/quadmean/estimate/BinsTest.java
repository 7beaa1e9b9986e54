package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** By counting in plain loops. */
class BinsTest {
    @Test
    void classesAreOfRoundWidthAndBeginAtZero() {
        Bins bins = Bins.of(new double[] {0, 4.9, 5, 12, 95});
        assertEquals(5, bins.width()); // 95 in 19 steps
        assertEquals(20, bins.counts().size());
        assertEquals(List.of(2L, 1L, 1L), bins.counts().subList(0, 3));
        assertEquals(1, bins.counts().get(19));
        assertEquals(0, bins.beyond());
        assertEquals(15, bins.lower(3));
    }

    @Test
    void fewWildNumbersLieBeyond() {
        double[] values =
                IntStream.range(0, 100).mapToDouble(i -> i < 98 ? i % 10 : 1e6).toArray();
        Bins bins = Bins.of(values);
        assertEquals(2, bins.beyond());
        assertEquals(98, bins.counts().stream().mapToLong(c -> c).sum());
        assertTrue(bins.width() < 1, "the others are not squeezed into one class: " + bins.width());
    }

    @Test
    void unknownNumbersHaveNoPart() {
        Bins bins = Bins.of(new double[] {Double.NaN, 3, Double.POSITIVE_INFINITY});
        assertEquals(1, bins.counts().stream().mapToLong(c -> c).sum() + bins.beyond());
        assertEquals(List.of(), Bins.of(new double[] {Double.NaN}).counts());
        assertEquals(List.of(), Bins.of(new double[0]).counts());
        assertEquals(List.of(), Bins.of(new double[] {0, 0}).counts());
    }

    /** Zeros that are most of all numbers do not hide the others. */
    @Test
    void fewNumbersAboveZeroShow() {
        double[] values = new double[100];
        values[99] = 7;
        Bins bins = Bins.of(values);
        assertEquals(99, bins.counts().get(0));
        assertEquals(1, bins.counts().get(bins.counts().size() - 1));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void everyNumberIsCountedOnceWhereItBelongs(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double scale = Math.pow(10, random.nextInt(9) - 4);
        double[] values = IntStream.range(0, 500)
                .mapToDouble(i -> scale * -Math.log(1 - random.nextDouble()))
                .toArray();
        Bins bins = Bins.of(values);
        assertTrue(
                bins.counts().size() <= 20, "at most twenty: " + bins.counts().size());
        long inside = 0;
        for (int i = 0; i < bins.counts().size(); i++) {
            long expected = 0;
            for (double v : values) {
                expected += v >= bins.lower(i) && v < bins.lower(i + 1) ? 1 : 0;
            }
            assertEquals(expected, bins.counts().get(i), "class " + i);
            inside += expected;
        }
        assertEquals(values.length, inside + bins.beyond());
    }
}
