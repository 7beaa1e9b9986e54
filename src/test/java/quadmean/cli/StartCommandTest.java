package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A new cruise, and the demonstration, from nothing but the program. */
class StartCommandTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"us", "metric"})
    void theDesignPlansAsItIs(String units) {
        Run.of("start", folder.resolve("new"), "--units", units).assertCode(0);
        Run plan = Run.of("plan", folder.resolve("new/cruise.toml"), "--out", folder.resolve("out"));
        plan.assertCode(0);
        assertTrue(plan.out().contains("plots"), plan.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"us", "metric"})
    void anEmptyTallyIsRefusedInWords(String units) {
        Run.of("start", folder.resolve("new"), "--units", units).assertCode(0);
        Run check = Run.of("check", folder.resolve("new/cruise.toml"), "--out", folder.resolve("out"));
        check.assertCode(1);
        assertTrue(check.err().contains("the tally has no rows"), check.err());
    }

    @ParameterizedTest
    @CsvSource({"us, 14.2, 100", "metric, 36, 30"})
    void theTallyTakesRowsUnderItsHeadings(String units, double dbh, double distance) throws IOException {
        Path design = folder.resolve("new/cruise.toml");
        Run.of("start", folder.resolve("new"), "--units", units).assertCode(0);
        StringBuilder rows = new StringBuilder();
        for (int plot = 1; plot <= 4; plot++) {
            for (int tree = 1; tree <= 4; tree++) {
                rows.append(plot + "," + tree + "," + (tree == 1 ? "PIPO" : "PSME") + "," + (dbh + plot + tree) + ","
                        + (70 + 2 * tree) + ",-5," + distance + "\n");
            }
        }
        Files.writeString(folder.resolve("new/tally.csv"), rows, StandardOpenOption.APPEND);
        Run run = Run.of("estimate", design, "--out", folder.resolve("out"));
        run.assertCode(0);
        assertTrue(run.out().contains("Rows: 16 in = 16 used + 0 dropped"), run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"start", "demo"})
    void nothingIsReplaced(String command) throws IOException {
        Path mine = command.equals("start") ? folder.resolve("tally.csv") : folder.resolve("designs/demo.toml");
        Files.createDirectories(mine.getParent());
        Files.writeString(mine, "mine");
        Run run = Run.of(command, folder);
        run.assertCode(2);
        assertTrue(run.err().contains(mine + " is there already"), run.err());
        assertEquals("mine", Files.readString(mine));
        assertFalse(Files.exists(folder.resolve("cruise.toml")));
        assertFalse(Files.exists(folder.resolve("datasets")));
    }

    @Test
    void aFileInTheWayIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "");
        Run run = Run.of("start", file);
        run.assertCode(2);
        assertTrue(run.err().contains("taken is there already"), run.err());
    }

    @Test
    void anUnknownSystemOfUnitsIsSaid() {
        Run run = Run.of("start", folder.resolve("new"), "--units", "imperial");
        run.assertCode(2);
        assertTrue(run.err().contains("us, metric") || run.err().contains("metric, us"), run.err());
    }

    @Test
    void theDemonstrationGoesFromPlanToReport() {
        Run run = Run.of("demo", folder.resolve("show"));
        run.assertCode(0);
        for (String file : new String[] {"plan.json", "problems.csv", "curves.html", "report.html", "estimate.json"}) {
            assertTrue(Files.exists(folder.resolve("show/out/" + file)), file);
        }
        assertTrue(run.out().contains("quadmean start DIR"), run.out());
    }
}
