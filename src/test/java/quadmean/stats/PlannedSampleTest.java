package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.stats.Allocation.PlannedStratum;
import quadmean.stats.SampleSearch.Goal;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class PlannedSampleTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final Goal TEN = Goal.expected(10, 0.95);

    /** Every kind finds what an upward search from the smallest size finds. */
    @ParameterizedTest
    @MethodSource("everyKind")
    void theSmallestSizeIsThatOfAnUpwardSearch(PlannedSample sample) {
        for (double error : new double[] {25, 12, 7}) {
            int n = sample.least();
            while (sample.expected(sample.parts(n)).samplingErrorPercent(0.95) > error) {
                n++;
            }
            assertEquals(
                    OptionalInt.of(n), SampleSearch.smallest(sample, Goal.expected(error, 0.95)), "error " + error);
        }
    }

    /** More assurance never asks for less, nor does a spread that comes from a pilot of few plots. */
    @ParameterizedTest
    @MethodSource("everyKind")
    void assuranceAndUncertaintyAskForMore(PlannedSample sample) {
        int plain = SampleSearch.smallest(sample, TEN).orElseThrow();
        int sure = SampleSearch.smallest(sample, TEN.assured(0.8)).orElseThrow();
        int surer = SampleSearch.smallest(sample, TEN.assured(0.9)).orElseThrow();
        int afterPilot = SampleSearch.smallest(sample, TEN.assured(0.9, 12)).orElseThrow();
        assertTrue(
                plain <= sure && sure < surer && surer < afterPilot,
                plain + " " + sure + " " + surer + " " + afterPilot);
        double chance = SampleSearch.assurance(sample, sample.parts(plain), TEN);
        assertTrue(chance > 0.5 && chance < 0.7, "a little more than half the time: " + chance);
    }

    static Stream<PlannedSample> everyKind() {
        return Stream.of(
                new SimplePlan(45, INFINITE),
                new SimplePlan(45, 400),
                new StratifiedPlan(Allocation.OPTIMUM, threeTypes(), DegreesOfFreedom.UNITS_MINUS_STRATA),
                new ClusterPlan(60, 0.3, 4, INFINITE, INFINITE),
                new ClusterPlan(60, 0.3, 4, 10, 200),
                new TwoPhasePlan(50, 0.9, 3.2),
                new ProductPlan(45, 25, 0.7));
    }

    /** Freese 1962, three types (sizes from memory), with costs of 4, 1 and 1 a unit. */
    private static List<PlannedStratum> threeTypes() {
        return List.of(
                new PlannedStratum(0.54, INFINITE, 610, 90.06, 2, 4),
                new PlannedStratum(0.28, INFINITE, 737, 124.73, 5, 1),
                new PlannedStratum(0.18, INFINITE, 304, 110.47, 2, 1));
    }

    /**
     * The F distribution in R 4.2.2: {@code pf((10/9)^2, 39, 14)}, {@code sqrt(14/qchisq(0.2, 14))}; with a pilot without end the
     * chance is chi-square's, {@code pchisq(39*(10/9)^2, 39)}.
     */
    @Test
    void chancesAfterAPilotAreThoseOfR() {
        Tolerance.R_SCRIPT.check(0.653763417242447, Assurance.afterPilot(9, 10, 39, 14), "pf");
        Tolerance.R_SCRIPT.check(0.850501047922156, Assurance.afterPilot(9, 10, 39, INFINITE), "pchisq");
        Tolerance.R_SCRIPT.check(1.21604684772761, Assurance.spreadLimit(14, 0.8), "limit");
        assertEquals(1, Assurance.afterPilot(0, 10, 39, 14));
    }

    /** {@code integrate(function(x) 1-pnorm(x)^n-(1-pnorm(x))^n, -Inf, Inf, rel.tol=1e-12)} in R 4.2.2, n 2, 5, 10, 25. */
    @ParameterizedTest
    @CsvSource({"2, 1.1283791671", "5, 2.32592894728", "10, 3.07750546167", "25, 3.93062921951"})
    void rangesOfNormalValuesAreThoseOfR(int n, double expected) {
        assertEquals(expected, ExpectedRange.ofNormal(n), 1e-8 * expected);
    }

    /** Two phases: the published plans cost 11.5 a plot in the field and 0.37 a photo plot; 126 and 713, and 170 and 290. */
    @Test
    void theCostOfTwoPhasesIsThatPublished() {
        JsonNode e = ReferenceFiles.example("double-sampling-cost");
        JsonNode in = e.get("inputs");
        double[] costs = {number(in.get("cost_photo")), number(in.get("cost_field"))};
        for (int i = 0; i < 2; i++) {
            double[] plan = numbers(in.get("plans").get(i));
            int[] parts = {(int) plan[1], (int) plan[0]};
            assertEquals(
                    number(e.get("published").get("costs").get(i)),
                    SampleSearch.cost(parts, 0, costs),
                    0.05,
                    "plan " + i);
        }
    }

    /** By algebra: no other ratio of the two samples has less error for the money. Fine steps about the optimum. */
    @ParameterizedTest
    @CsvSource({"0.9, 0.37, 11.5", "0.7, 1, 4", "0.95, 1, 1.5"})
    void theBestRatiosCostLeast(double correlation, double first, double second) {
        double best = TwoPhasePlan.bestRatio(correlation, first, second);
        double cost = costOfTwoPhases(correlation, best, first, second);
        assertTrue(cost <= costOfTwoPhases(correlation, 1.02 * best, first, second));
        assertTrue(best == 1 || cost <= costOfTwoPhases(correlation, 0.98 * best, first, second));
    }

    /** Cost of a unit of precision, without rounding: (c1·k + c2)·((1 - r²) + r²/k). */
    private static double costOfTwoPhases(double r, double k, double first, double second) {
        return (first * k + second) * (1 - r * r + r * r / k);
    }

    @Test
    void clustersAndProductsHaveTheirBestRatiosToo() {
        // (c1 + c2·m)·(rho + (1 - rho)/m) is smallest at √(c1/c2·(1 - rho)/rho) = √(9·4) = 6
        assertEquals(6, ClusterPlan.bestPerCluster(9, 1, 0.2), 1e-12);
        assertEquals(INFINITE, ClusterPlan.bestPerCluster(9, 1, 0));
        // (c1 + c2·k)·(a² + b²/k) is smallest at b/a·√(c1/c2) = 0.5·√16 = 2
        assertEquals(2, ProductPlan.bestTreesPerUnit(50, 25, 16, 1), 1e-12);
        assertEquals(1, TwoPhasePlan.bestRatio(0.1, 5, 1));
    }

    /** A cluster of one is a plot; without correlation clusters are plots; a whole cluster has no error within. */
    @Test
    void clustersReduceToSimplerSamples() {
        int[] parts = {12, 48};
        double plots = new SimplePlan(60, INFINITE).expected(new int[] {48}).se();
        assertEquals(
                plots,
                new ClusterPlan(60, 0, 4, INFINITE, INFINITE).expected(parts).se(),
                1e-12);
        double whole = new ClusterPlan(60, 0.3, 4, 4, INFINITE).expected(parts).se();
        assertEquals(60 * Math.sqrt((1 + 3 * 0.3) / 48), whole, 1e-12);
        assertEquals(0, new ClusterPlan(60, 0.3, 4, 4, 12).expected(parts).se());
        double sampled = new ClusterPlan(60, 0.3, 4, 10, 12).expected(parts).se();
        assertEquals(60 * Math.sqrt(0.7 / 48 * 0.6), sampled, 1e-12, "every cluster, four of its ten plots");
    }

    /** With all plots measured, or readings that agree, two phases are one. */
    @Test
    void twoPhasesReduceToOne() {
        double one = new SimplePlan(50, INFINITE).expected(new int[] {30}).se();
        assertEquals(
                one, new TwoPhasePlan(50, 0.6, 1).expected(new int[] {30, 30}).se(), 1e-12);
        double nearlyAll =
                new TwoPhasePlan(50, 1 - 1e-15, 4).expected(new int[] {120, 30}).se();
        assertEquals(one / 2, nearlyAll, 1e-6);
    }

    /** Counts that vary by 30 % on 25 points and ratios by 20 % on 16 trees: √(6² + 5²) %. */
    @Test
    void percentErrorsOfAProductAddUpSquared() {
        MeanEstimate e = new ProductPlan(30, 20, 1).expected(new int[] {25, 16});
        assertEquals(100, e.mean(), 1e-12);
        assertEquals(Math.sqrt(61), e.se(), 1e-12);
    }

    /** Neyman's shares by the square root of costs: 310·3, 420·12/2 and 516·6 (inputs of the textbook item after Williams). */
    @Test
    void dearStrataGetFewer() {
        double[] sizes = numbers(ReferenceFiles.example("allocation-neyman-williams")
                .get("inputs")
                .get("N_h"));
        List<PlannedStratum> strata = List.of(
                new PlannedStratum(sizes[0] / 1246, INFINITE, 100, 3, 2, 1),
                new PlannedStratum(sizes[1] / 1246, INFINITE, 100, 12, 2, 4),
                new PlannedStratum(sizes[2] / 1246, INFINITE, 100, 6, 2, 1));
        double sum = 930 + 2520 + 3096;
        Tolerance.ROUNDING.check(
                new double[] {93000 / sum, 252000 / sum, 309600 / sum},
                Allocation.OPTIMUM.shares(100, strata),
                "shares");
    }

    @Test
    void everyStratumGetsItsFewest() {
        List<PlannedStratum> strata = List.of(
                new PlannedStratum(0.9, INFINITE, 100, 30, 2, 1), new PlannedStratum(0.1, INFINITE, 100, 5, 6, 1));
        assertArrayEquals(new int[] {14, 6}, Allocation.NEYMAN.allocate(20, strata));
        StratifiedPlan plan = new StratifiedPlan(Allocation.NEYMAN, strata, DegreesOfFreedom.UNITS_MINUS_STRATA);
        assertEquals(8, plan.least());
        assertThrows(IllegalArgumentException.class, () -> Allocation.NEYMAN.allocate(7, strata));
    }

    /** The largest sample within a budget: one unit more would cost too much. */
    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53, 54})
    void aBudgetIsUsedUpAndNotExceeded(long seed) {
        Random random = new Random(seed);
        double[] costs = {0.5 + random.nextDouble(), 0.1 + random.nextDouble()};
        PlannedSample sample = new TwoPhasePlan(40, 0.8, 1 + 4 * random.nextDouble());
        double budget = 50 + 100 * random.nextDouble();
        int n = SampleSearch.affordable(sample, 10, costs, budget).orElseThrow();
        assertTrue(SampleSearch.cost(sample.parts(n), 10, costs) <= budget, "seed " + seed);
        assertTrue(SampleSearch.cost(sample.parts(n + 1), 10, costs) > budget, "seed " + seed);
        assertEquals(OptionalInt.empty(), SampleSearch.affordable(sample, 10, costs, 10.1));
    }

    @Test
    void valuesOutsideTheDomainAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new ClusterPlan(60, 1, 4, 4, INFINITE));
        assertThrows(IllegalArgumentException.class, () -> new ClusterPlan(60, 0.2, 4, 3, INFINITE));
        assertThrows(IllegalArgumentException.class, () -> new TwoPhasePlan(60, 1, 4));
        assertThrows(IllegalArgumentException.class, () -> new ProductPlan(60, 0, 4));
        assertThrows(IllegalArgumentException.class, () -> new SimplePlan(60, 0));
        assertThrows(IllegalArgumentException.class, () -> TEN.assured(1));
        assertThrows(IllegalArgumentException.class, () -> ExpectedRange.ofNormal(1));
    }

    @Test
    void aGoalOutOfReachHasNoSize() {
        assertEquals(OptionalInt.empty(), SampleSearch.smallest(new SimplePlan(1e5, INFINITE), Goal.expected(1, 0.95)));
        assertEquals(OptionalInt.of(40), SampleSearch.smallest(new SimplePlan(50, 40), Goal.expected(0.01, 0.95)));
    }
}
