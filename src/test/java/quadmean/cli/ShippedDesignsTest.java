package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.SmallDesign;

/** Every command on every shipped design it is meant for. */
class ShippedDesignsTest {
    private static final Set<String> ESTIMATE = Set.of(
            "report.html",
            "estimate.json",
            "estimates.csv",
            "trees.csv",
            "curves.csv",
            "diameters.csv",
            "problems.csv");

    @TempDir
    Path folder;

    /** Row counts: lines of the tallies in {@code datasets} without their headers; the demo drops a copy and a tree. */
    @ParameterizedTest
    @CsvSource({"demo, Rows: 705 in = 703 used + 2 dropped", "idaho-points, Rows: 399 in = 399 used + 0 dropped"})
    void estimateWritesItsFilesAndTheAccountOfRows(String name, String rows) throws IOException {
        Run run = Run.of("estimate", "designs/" + name + ".toml", "--out", folder);
        run.assertCode(0);
        assertTrue(run.out().contains(rows), run.out());
        assertTrue(run.out().contains("report.html"), run.out());
        assertEquals(ESTIMATE, Run.files(folder).keySet());
    }

    @ParameterizedTest
    @CsvSource({"check, demo", "check, idaho-points", "check, pilot-plan", "plan, demo", "plan, pilot-plan"})
    void commandSucceeds(String command, String name) throws IOException {
        Run.of(command, "designs/" + name + ".toml", "--out", folder).assertCode(0);
        Set<String> expected = command.equals("plan") ? Set.of("plan.json", "plan.csv") : Set.of("problems.csv");
        assertEquals(expected, Run.files(folder).keySet());
    }

    @ParameterizedTest
    @CsvSource({"plan, demo", "plan, pilot-plan", "check, demo", "estimate, demo", "estimate, idaho-points"})
    void secondRunWritesTheSameBytes(String command, String name) throws IOException {
        String design = "designs/" + name + ".toml";
        Run.of(command, design, "--out", folder).assertCode(0);
        Map<String, String> first = Run.files(folder);
        Run.of(command, design, "--out", folder.resolve("again")).assertCode(0);
        assertEquals(first, Run.files(folder.resolve("again")));
    }

    @Test
    void planForAStandNeedsOnlyACoefficientOfVariation() throws IOException {
        Path design = Run.cruise(folder, new SmallDesign().plus("[plan]\ncv = 40"), Run.TALLY);
        Run run = Run.of("plan", design, "--out", folder.resolve("out"));
        run.assertCode(0);
        // t² · 40²/10² = n: t(0.975, 63) = 1.998, and 64 = (1.998 · 4)²; the smallest n with t·CV/√n ≤ 10 is 64
        assertTrue(run.out().contains("64 plots"), run.out());
    }

    @Test
    void planFromExpectationsOfOneStratum() throws IOException {
        SmallDesign design = new SmallDesign()
                .with("area = 10\n", "")
                .plus("[[stratum]]\ncode = \"N\"\narea = 10\nexpected_mean = 5\nexpected_cv = 40\n");
        Run run = Run.of("plan", Run.cruise(folder, design, Run.TALLY), "--out", folder.resolve("out"));
        run.assertCode(0);
        assertTrue(run.out().contains("64 plots"), run.out());
    }

    @Test
    void resultsOfAnEarlierRunStayWhenATallyIsRefused() throws IOException {
        Path out = folder.resolve("out");
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY);
        Run.of("estimate", design, "--out", out).assertCode(0);
        String report = Run.files(out).get("report.html");
        Files.writeString(folder.resolve("tally.csv"), Run.TALLY + "4,1,PSME,x,\n");
        Run run = Run.of("estimate", design, "--out", out);
        run.assertCode(1);
        assertTrue(run.err().contains("earlier run"), run.err());
        assertEquals(report, Run.files(out).get("report.html"));
    }
}
