package quadmean.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quadmean.stats.FixedWidth;
import quadmean.stats.MeanEstimate;
import quadmean.support.Tolerance;

class StoppingCoverageTest {

    @Test
    @Tag("slow")
    void theShippedTableIsWhatTheSimulationMakes() throws IOException {
        try (var in = StoppingCoverageTest.class.getResourceAsStream("stopping-coverage.csv")) {
            String shipped = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(StoppingSimulation.table(StoppingSimulation.RUNS), shipped);
        }
    }

    /** By hand: n·(t·SE/(target·mean))² with t(0.95; 9) = 2.262157 (printed tables) is 10·(2.262157·5/10)² = 12.79. */
    @Test
    void theFirstStageSaysHowManyAreNeeded() {
        MeanEstimate first = new MeanEstimate(10, 9, 100, 5, 15.8);
        double needed = FixedWidth.unitsNeeded(first, 10, 0.95);
        Tolerance.absolute("t printed with six decimals", 1e-4).check(12.7934, needed, "units");
        assertTrue(FixedWidth.TWO_STAGE.mayStop(first, new MeanEstimate(13, 12, 90, 9, 1), 10, 0.95));
        assertTrue(!FixedWidth.TWO_STAGE.mayStop(first, new MeanEstimate(12, 11, 90, 0.1, 1), 10, 0.95));
        assertEquals(10, FixedWidth.unitsNeeded(first, 50, 0.95), "never fewer than there are");
        MeanEstimate reported = FixedWidth.TWO_STAGE.reported(first, new MeanEstimate(40, 39, 90, 1, 6));
        assertEquals(9, reported.df());
        assertEquals(2.5, reported.se(), 1e-12);
    }

    /** The usual limits after looking hold less often than they say; two stages and a minimum come nearer to it. */
    @Test
    void lookingCostsCoverageAndAMinimumGivesSomeBack() {
        List<StoppingCoverage.Row> rows = StoppingCoverage.rows();
        assertEquals(2 * 2 * 3 * 7, rows.size());
        for (StoppingCoverage.Row r : rows) {
            if (r.rule().equals("sequential") && r.minimum() == 5) {
                assertTrue(r.coveragePercent() < 100 * r.confidence(), r.toString());
                StoppingCoverage.Row later = find(rows, r, "sequential", 40);
                StoppingCoverage.Row twoStage = find(rows, r, "two_stage", 20);
                assertTrue(later.coveragePercent() > r.coveragePercent() - 0.5, r + " and " + later);
                assertTrue(twoStage.coveragePercent() > r.coveragePercent(), r + " and " + twoStage);
            }
        }
    }

    private static StoppingCoverage.Row find(
            List<StoppingCoverage.Row> rows, StoppingCoverage.Row like, String rule, int minimum) {
        return rows.stream()
                .filter(r -> r.stand().equals(like.stand())
                        && r.confidence() == like.confidence()
                        && r.targetPercent() == like.targetPercent()
                        && r.rule().equals(rule)
                        && r.minimum() == minimum)
                .findFirst()
                .orElseThrow();
    }
}
