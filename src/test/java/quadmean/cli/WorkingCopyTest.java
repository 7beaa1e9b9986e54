package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check --copy}: a copy to mend, and the tally as it was. */
class WorkingCopyTest {
    private static final Path TALLY = Path.of("datasets/demo-mistakes.csv");

    @TempDir
    Path folder;

    @Test
    void everyRowIsInTheCopyWithItsProblemsAndRecodes() throws IOException {
        String before = Files.readString(TALLY);
        assertEquals(0, check("designs/demo-mistakes.toml"));
        assertEquals(before, Files.readString(TALLY));
        List<String> original = Files.readAllLines(TALLY);
        List<String> copy = Files.readAllLines(folder.resolve("to-mend-demo-mistakes.csv"));
        assertEquals(original.size(), copy.size());
        assertEquals(original.get(0) + ",problems", copy.get(0));
        assertTrue(copy.get(25).contains(",PSME,") && copy.get(25).contains("species-recoded (keep)"), copy.get(25));
        assertTrue(copy.get(41).endsWith("plot-missing (drop)"), copy.get(41));
        assertTrue(copy.get(709).endsWith("row-length (drop)"), copy.get(709));
        // a row without problems is as it was
        assertEquals(original.get(1) + ",", copy.get(1));
    }

    @Test
    void aRefusedTallyGetsItsCopyToo() throws IOException {
        Files.copy(Path.of("datasets/demo-tally.csv"), folder.resolve("t.csv"));
        String design = Files.readString(Path.of("designs/demo.toml"))
                .replace("../datasets/demo-tally.csv", "t.csv")
                .replace("dbh-missing = \"drop\"", "dbh-missing = \"refuse\"");
        assertEquals(
                1, check(Files.writeString(folder.resolve("d.toml"), design).toString()));
        List<String> copy = Files.readAllLines(folder.resolve("to-mend-t.csv"));
        assertTrue(copy.get(76).endsWith("dbh-missing (refuse)"), copy.get(76));
    }

    private int check(String design) {
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        return Main.run(nowhere, nowhere, "check", design, "--copy", "--out", folder.toString());
    }
}
