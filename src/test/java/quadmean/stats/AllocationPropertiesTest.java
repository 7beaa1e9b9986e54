package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.stats.Allocation.PlannedStratum;

/** What holds for every plan. Seeds are fixed and stand in the failure. */
class AllocationPropertiesTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void smallestIsWhatScanningFromTwoPerStratumFinds(long seed) {
        Random random = new Random(seed);
        List<PlannedStratum> strata = planned(random);
        double target = 3 + 17 * random.nextDouble();
        for (Allocation allocation : Allocation.values()) {
            int n = 2 * strata.size();
            while (Allocation.errorPercent(allocation.allocate(n, strata), 0.95, strata) > target) {
                n++;
            }
            int[] found = allocation.smallest(target, 0.95, strata);
            assertArrayEquals(allocation.allocate(n, strata), found, "seed " + seed + " " + allocation);
        }
    }

    /** By Neyman 1934 no other split of n has a smaller error; rounding to whole units may cost a little. */
    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34})
    void neymanIsNoWorseThanProportional(long seed) {
        List<PlannedStratum> strata = planned(new Random(seed)).stream()
                .map(s -> new PlannedStratum(s.weight(), INFINITE, s.mean(), s.sd()))
                .toList();
        double byNeyman = Allocation.errorPercent(Allocation.NEYMAN.allocate(200, strata), 0.9, strata);
        double bySize = Allocation.errorPercent(Allocation.PROPORTIONAL.allocate(200, strata), 0.9, strata);
        assertTrue(byNeyman <= bySize, "seed " + seed + ": " + byNeyman + " against " + bySize);
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44, 45})
    void noStratumGetsMoreUnitsThanItHas(long seed) {
        Random random = new Random(seed);
        List<PlannedStratum> strata = new ArrayList<>(planned(random));
        strata.set(0, new PlannedStratum(strata.get(0).weight(), 6, 10, 400));
        for (int n = 2 * strata.size(); n < 90; n += 7) {
            int[] units = Allocation.NEYMAN.allocate(n, strata);
            assertTrue(units[0] <= 6, "seed " + seed + ", n " + n + ": " + Arrays.toString(units));
            assertEquals(n, Arrays.stream(units).sum(), "seed " + seed);
        }
    }

    private static List<PlannedStratum> planned(Random random) {
        double[] sizes =
                random.doubles(2 + random.nextInt(4)).map(u -> 0.05 + u).toArray();
        double all = Arrays.stream(sizes).sum();
        boolean finite = random.nextBoolean();
        return Arrays.stream(sizes)
                .mapToObj(s -> new PlannedStratum(
                        s / all,
                        finite ? Math.rint(400 * s) : INFINITE,
                        10 + 40 * random.nextDouble(),
                        1 + 20 * random.nextDouble()))
                .toList();
    }
}
