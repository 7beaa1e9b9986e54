package quadmean.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.estimate.EstimateRow;
import quadmean.layout.Tract;
import quadmean.support.ShippedCruises;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;

/** The tally of the laid-out demonstration cruise is what its generator makes, and finds what stands on the tract. */
class LaidOutStandTest {
    private static final Path PLOTS = Path.of("datasets/demo-laid-out-plots.csv");

    private static LaidOutStand stand() throws IOException {
        return LaidOutStand.of(DemoTract.read(), LaidOutStand.SEED);
    }

    @Test
    void theShippedTallyIsWhatTheGeneratorMakes() throws IOException {
        assertEquals(stand().tally(PLOTS), Files.readString(Path.of("datasets/demo-laid-out-tally.csv")));
    }

    /** Truth is counted on the ground, from every tree; three standard errors are exceeded once in some 300 samples. */
    @Test
    void theEstimateFindsWhatStandsThere() throws IOException {
        CruiseRun run = ShippedCruises.run("demo-laid-out");
        assertEquals(List.of(), run.tally().problems());
        CruiseResult result = run.result();
        assertNotNull(result);
        Tract tract = DemoTract.read();
        double ha = tract.whole().mapHa();
        List<LaidOutStand.Stem> stems = stand().stems();
        double basalArea = stems.stream()
                        .mapToDouble(s -> Math.PI / 4 * Math.pow(Unit.INCH.convert(s.dbh(), Unit.METRE), 2))
                        .sum()
                / ha;
        check(result, Attribute.TREES, stems.size() / ha);
        check(result, Attribute.BASAL_AREA, basalArea);
    }

    private static void check(CruiseResult result, Attribute attribute, double truth) {
        EstimateRow row = result.estimate()
                .row(EstimateRow.ALL, EstimateRow.ALL, attribute, Basis.PER_AREA)
                .orElseThrow();
        assertTrue(Math.abs(row.mean() - truth) <= 3 * row.se(), attribute + ": " + row.mean() + ", true " + truth);
    }

    /** Trees that count twice stand on plots marked as near a line, and only there. */
    @Test
    void treesCountTwiceOnPlotsNearALineAlone() throws IOException {
        List<String> near = Files.readAllLines(PLOTS).stream()
                .filter(l -> l.contains(",near,"))
                .map(l -> l.split(",")[0])
                .toList();
        List<String> twice = Files.readAllLines(Path.of("datasets/demo-laid-out-tally.csv")).stream()
                .filter(l -> l.endsWith(",2"))
                .map(l -> l.split(",")[0])
                .distinct()
                .toList();
        assertTrue(near.containsAll(twice), twice + " of " + near);
        assertTrue(twice.size() >= 3, twice.toString());
    }
}
