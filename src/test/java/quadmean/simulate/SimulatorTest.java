package quadmean.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.design.Design;
import quadmean.model.IntervalRule;
import quadmean.model.Progress;
import quadmean.simulate.Trials.Stand;

class SimulatorTest {
    private static final Set<IntervalRule> T = EnumSet.of(IntervalRule.STUDENT_T);

    @TempDir
    private Path folder;

    private Simulator points() throws IOException {
        Design design = Trials.design(folder, Methods.SIMPLE_RANDOM.design(Stand.WAKA, 8));
        return Simulator.of(design, Stand.WAKA.forest(design), 1);
    }

    private static SimulationResult in(int threads, Simulator simulator, long seed)
            throws ExecutionException, InterruptedException {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> simulator.run(300, seed, T, Progress.SILENT))
                    .get();
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void theNumberOfThreadsDoesNotShow() throws Exception {
        Simulator simulator = points();
        SimulationResult alone = in(1, simulator, 3);
        assertEquals(alone.attributes(), in(4, simulator, 3).attributes());
        assertEquals(alone.attributes(), in(4, points(), 3).attributes(), "nor what ran before");
        assertTrue(!alone.attributes().equals(in(1, simulator, 4).attributes()), "another seed, other cruises");
    }

    @Test
    void everyCruiseIsCountedOnce() throws IOException {
        AtomicInteger blocks = new AtomicInteger();
        AtomicInteger reports = new AtomicInteger();
        SimulationResult result = points().run(301, 1, T, (work, done, of) -> {
            assertEquals(5, of);
            blocks.accumulateAndGet(done, Math::max);
            reports.incrementAndGet();
        });
        assertEquals(5, blocks.get());
        AttributeOutcome o = result.target().orElseThrow();
        assertEquals(301, o.estimates() + o.without());
        assertEquals(
                301, o.histogram().counts().stream().mapToLong(Long::longValue).sum());
        Coverage c = o.coverages().get(0);
        assertEquals(c.intervals(), c.covered() + c.below() + c.above());
    }

    /** Sums over blocks give what two passes over all estimates give. */
    @Test
    void momentsAreThoseOfAllEstimates() throws IOException {
        Simulator simulator = points();
        double[] estimates = new double[200];
        for (int i = 0; i < estimates.length; i++) {
            estimates[i] = simulator.rows(9, i, T).get(IntervalRule.STUDENT_T).stream()
                    .filter(r -> r.attribute() == quadmean.units.Attribute.BASAL_AREA)
                    .findFirst()
                    .orElseThrow()
                    .mean();
        }
        AttributeOutcome o = simulator.run(200, 9, T, Progress.SILENT).target().orElseThrow();
        double mean = java.util.Arrays.stream(estimates).average().orElseThrow();
        double variance = java.util.Arrays.stream(estimates)
                        .map(e -> (e - mean) * (e - mean))
                        .sum()
                / 199;
        double third = java.util.Arrays.stream(estimates)
                        .map(e -> Math.pow(e - mean, 3))
                        .sum()
                / 200;
        assertEquals(mean, o.mean(), 1e-10 * mean);
        assertEquals(Math.sqrt(variance), o.sd(), 1e-10 * mean);
        assertEquals(third / Math.pow(variance * 199 / 200, 1.5), o.skewness(), 1e-8);
    }

    /** By hand: eight points of twenty minutes, and the walk at 2 km/h. */
    @Test
    void costIsWalkAndPlots() throws IOException {
        Cost cost = points().run(100, 1, T, Progress.SILENT).cost();
        assertEquals(8, cost.plots(), 1e-12);
        assertTrue(cost.walkM() > 100 && cost.walkM() < 800, "eight points on a hectare: " + cost.walkM());
        assertEquals(cost.walkM() / 2000 + 8 / 3.0, cost.hours(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kind = \"strip\"\\nwidth = 10\\nlength = 50 | strips are not",
                "kind = \"point\"\\nbasal_area_factor = 0.01\\nboundary = \"mirage\" | larger basal area factor",
            })
    void whatCannotBeRunIsRefusedInWords(String plot, String words) throws IOException {
        Design design = Trials.design(
                folder,
                Trials.text(Stand.WAKA, false, "[plot]\n" + plot.replace("\\n", "\n") + "\n[simulate]\nplots = 5\n"));
        Forest forest = Stand.WAKA.forest(design);
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Simulator.of(design, forest, 1));
        assertTrue(String.valueOf(e.getMessage()).contains(words), e.getMessage());
    }
}
