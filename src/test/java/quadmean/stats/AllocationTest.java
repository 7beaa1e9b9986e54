package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.stats.Allocation.PlannedStratum;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class AllocationTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    /** Spellman and Whiting, chapter 7; the stratum sizes are from memory of Freese's example. */
    @Test
    void proportionalSharesOfSeventyEight() {
        JsonNode e = ReferenceFiles.example("allocation-proportional-78");
        double[] sizes = numbers(e.get("inputs").get("N_h"));
        check(e, Allocation.PROPORTIONAL, strata(sizes, new double[] {1, 1, 1}), 78);
    }

    /** Textbook item after Williams, A Sampler on Sampling; the printed allocation is from memory. */
    @Test
    void neymanSharesOfOneHundred() {
        JsonNode e = ReferenceFiles.example("allocation-neyman-williams");
        JsonNode in = e.get("inputs");
        check(e, Allocation.NEYMAN, strata(numbers(in.get("N_h")), numbers(in.get("s_h"))), 100);
    }

    /** Freese 1962, three types: shares of 78 recomputed outside this program; stratum sizes from memory. */
    @Test
    void neymanSharesOfTheThreeTypes() {
        JsonNode own = ReferenceFiles.example("stratified-freese-3types").get("recomputed");
        double[] sds = Arrays.stream(numbers(own.get("s2"))).map(Math::sqrt).toArray();
        double[] shares = Allocation.NEYMAN.shares(78, strata(new double[] {1350, 700, 450}, sds));
        Tolerance.ROUNDING.check(numbers(own.get("neyman_allocation_of_78")), shares, "shares");
    }

    /** And the error of an allocation is that of the estimator: the same variance as with 10 units in each. */
    @Test
    void expectedErrorIsThatOfTheEstimator() {
        JsonNode own = ReferenceFiles.example("stratified-freese-3types").get("recomputed");
        double[] sds = Arrays.stream(numbers(own.get("s2"))).map(Math::sqrt).toArray();
        double[] sizes = {1350, 700, 450};
        List<PlannedStratum> strata = new ArrayList<>();
        for (int h = 0; h < 3; h++) {
            double mean = number(own.get("means").get(h));
            strata.add(new PlannedStratum(sizes[h] / 2500, sizes[h], mean, sds[h]));
        }
        double expected = 100 * StudentT.critical(0.95, 27) * number(own.get("SE_with_fpc")) / 590.48;
        double planned = Allocation.errorPercent(new int[] {10, 10, 10}, 0.95, strata);
        Tolerance.ROUNDING.check(expected, planned, "error (percent)");
    }

    /** Shares 9.8, 0.15 and 0.05 of 10: the small strata take their two units from the large one. */
    @Test
    void everyStratumGetsTwo() {
        List<PlannedStratum> strata = strata(new double[] {980, 15, 5}, new double[] {1, 1, 1});
        assertArrayEquals(new int[] {6, 2, 2}, Allocation.PROPORTIONAL.allocate(10, strata));
        assertArrayEquals(new int[] {2, 2, 2}, Allocation.PROPORTIONAL.allocate(6, strata));
        assertThrows(IllegalArgumentException.class, () -> Allocation.PROPORTIONAL.allocate(5, strata));
    }

    @Test
    void tiesGoToTheEarlierStratum() {
        List<PlannedStratum> strata = strata(new double[] {1, 1, 1}, new double[] {1, 1, 1});
        assertArrayEquals(new int[] {4, 4, 3}, Allocation.PROPORTIONAL.allocate(11, strata));
    }

    @Test
    void withoutAnySpreadNeymanSharesBySize() {
        List<PlannedStratum> strata = strata(new double[] {5, 1}, new double[] {0, 0});
        assertArrayEquals(new int[] {8, 2}, Allocation.NEYMAN.allocate(10, strata));
    }

    @ParameterizedTest
    @EnumSource(Allocation.class)
    void anErrorOutOfReachGivesNoAllocation(Allocation allocation) {
        List<PlannedStratum> strata = strata(new double[] {3, 1}, new double[] {40, 50});
        assertNull(allocation.smallest(1e-3, 0.95, strata));
        assertThrows(IllegalArgumentException.class, () -> allocation.smallest(0, 0.95, strata));
    }

    /** Strata of 6 and 4 units: 30 plots do not fit, so both are taken whole. */
    @Test
    void moreUnitsThanThereAreMakeACensus() {
        List<PlannedStratum> strata = List.of(new PlannedStratum(0.6, 6, 10, 3), new PlannedStratum(0.4, 3.4, 10, 5));
        assertArrayEquals(new int[] {6, 4}, Allocation.NEYMAN.allocate(30, strata));
        assertEquals(0, Allocation.errorPercent(new int[] {6, 4}, 0.95, strata));
        assertArrayEquals(new int[] {6, 4}, Allocation.PROPORTIONAL.smallest(1e-6, 0.95, strata));
    }

    private static void check(JsonNode e, Allocation allocation, List<PlannedStratum> strata, int n) {
        double[] printed = numbers(e.get("published").get("n_h"));
        int[] expected = Arrays.stream(printed).mapToInt(v -> (int) v).toArray();
        assertArrayEquals(expected, allocation.allocate(n, strata));
        Tolerance.ROUNDING.check(numbers(e.get("recomputed").get("n_h")), allocation.shares(n, strata), "shares");
    }

    private static List<PlannedStratum> strata(double[] sizes, double[] sds) {
        double all = Arrays.stream(sizes).sum();
        List<PlannedStratum> strata = new ArrayList<>();
        for (int h = 0; h < sizes.length; h++) {
            strata.add(new PlannedStratum(sizes[h] / all, INFINITE, 100, sds[h]));
        }
        return strata;
    }
}
