package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.SmallDesign;

/** The program from outside: arguments, exit codes, what is printed where, and what is written. */
@Isolated("exchanges the output of the whole process")
class MainTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"--help", "plan --help", "check --help", "estimate -h"})
    void helpIsPrintedAsAResult(String line) {
        Run run = Run.of((Object[]) line.split(" "));
        run.assertCode(0);
        assertTrue(run.out().contains("Usage: quadmean") && run.out().contains("xample"), run.out());
        assertEquals("", run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--version", "check --version"})
    void versionIsPrinted(String line) {
        Run run = Run.of((Object[]) line.split(" "));
        run.assertCode(0);
        assertTrue(run.out().startsWith("quadmean "), run.out());
    }

    @ParameterizedTest
    @CsvSource({
        "'', name a command",
        "bogus, bogus",
        "check, DESIGN",
        "estimate designs/demo.toml --outt x, --outt",
        "plan a.toml b.toml, b.toml",
        "check designs/demo.toml --out, DIR"
    })
    void wrongUsageIsSaid(String line, String words) {
        Run run = Run.of((Object[]) (line.isEmpty() ? new String[0] : line.split(" ")));
        run.assertCode(2);
        assertTrue(run.err().contains(words), run.err());
        assertEquals("", run.out());
    }

    @Test
    void missingDesignIsNamed() {
        Run run = Run.of("check", folder.resolve("none.toml"));
        run.assertCode(2);
        assertTrue(run.err().contains("none.toml") && run.err().contains("designs/README.md"), run.err());
    }

    @Test
    void planningFromTheDesignNeedsNoTally() {
        Run run =
                Run.of("plan", new SmallDesign().plus("[plan]\ncv = 40").write(folder), "--out", folder.resolve("out"));
        run.assertCode(0);
    }

    @Test
    void aTallyGivenAsADesignIsToldSo() {
        Run run = Run.of("check", "datasets/demo-tally.csv", "--out", folder.resolve("out"));
        run.assertCode(2);
        assertTrue(run.err().contains("check --init"), run.err());
    }

    @Test
    void folderIsNoDesign() {
        Run run = Run.of("check", folder);
        run.assertCode(2);
        assertTrue(run.err().contains("this is a folder"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "estimate"})
    void missingTallyIsNamed(String command) {
        Run run = Run.of(command, new SmallDesign().write(folder), "--out", folder.resolve("out"));
        run.assertCode(2);
        assertTrue(run.err().contains("tally.csv"), run.err());
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "estimate"})
    void designWithoutTallyIsOnlyForPlanning(String command) {
        String text = SmallDesign.TEXT.replaceAll("(?s)\\[\\[tally.*\\[species", "[species");
        Run run = Run.of(command, new SmallDesign(text).write(folder));
        run.assertCode(2);
        assertTrue(run.err().contains("needs a tally"), run.err());
    }

    @Test
    void tallyBehindAFileCannotBeRead() throws IOException {
        Files.writeString(folder.resolve("tally.csv"), Run.TALLY);
        Path design = new SmallDesign().with("tally.csv", "tally.csv/x").write(folder);
        Run run = Run.of("check", design, "--out", folder.resolve("out"));
        run.assertCode(2);
        assertTrue(run.err().contains("cannot be read"), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }

    @Test
    void fileWithoutPermissionCannotBeRead() throws IOException {
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY);
        assertTrue(design.toFile().setReadable(false, false));
        assumeFalse(Files.isReadable(design), "this user reads everything");
        Run run = Run.of("check", design, "--out", folder.resolve("out"));
        run.assertCode(2);
        assertTrue(run.err().contains("no permission"), run.err());
    }

    @Test
    void emptyOutputFolderNameIsWrongUsage() throws IOException {
        Run run = Run.of("check", Run.cruise(folder, new SmallDesign(), Run.TALLY), "--out", "");
        run.assertCode(2);
        assertTrue(run.err().contains("name of a folder"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tally.csv", "tally.csv/sub"})
    void fileInPlaceOfTheOutputFolderStaysAsItIs(String out) throws IOException {
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY);
        Run run = Run.of("estimate", design, "--out", folder.resolve(out));
        run.assertCode(74);
        assertTrue(run.err().contains("cannot be written") && run.err().contains("--out"), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
        assertEquals(Run.TALLY, Files.readString(folder.resolve("tally.csv")));
    }

    @Test
    void linkToAFolderMayBeTheOutputFolder() throws IOException {
        Files.createDirectory(folder.resolve("real"));
        Files.createSymbolicLink(folder.resolve("link"), folder.resolve("real"));
        Run.of("check", Run.cruise(folder, new SmallDesign(), Run.TALLY), "--out", folder.resolve("link"))
                .assertCode(0);
        assertEquals(Set.of("problems.csv"), Run.files(folder.resolve("real")).keySet());
    }

    @Test
    void checkCountsAndNamesTheNextStep() throws IOException {
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY);
        Run run = Run.of("check", design, "--out", folder.resolve("out"));
        run.assertCode(0);
        assertTrue(run.out().contains("3 plots, 6 trees"), run.out());
        assertTrue(run.out().contains("Rows: 6 in = 6 used + 0 dropped"), run.out());
        assertTrue(run.out().contains("quadmean estimate"), run.out());
    }

    @Test
    void defectIsCalledADefectAndShowsNoTrace() throws IOException {
        Run run = broken(() -> {
            throw new IllegalStateException("boom");
        });
        run.assertCode(70);
        assertTrue(run.err().contains("a defect in the program") && run.err().contains("boom"), run.err());
        assertTrue(run.err().lines().count() <= 2, run.err());
    }

    @Test
    void lackOfMemoryIsSaidWithoutATrace() throws IOException {
        Run run = broken(() -> {
            throw new OutOfMemoryError("test");
        });
        run.assertCode(70);
        assertTrue(run.err().contains("-Xmx"), run.err());
        assertEquals(1, run.err().lines().count());
    }

    @Test
    void brokenInstallationIsADefectWithoutATrace() throws IOException {
        Run run = broken(() -> {
            throw new NoClassDefFoundError("part");
        });
        run.assertCode(70);
        assertTrue(run.err().contains("part") && run.err().lines().count() <= 2, run.err());
    }

    @Test
    void programPrintsUtf8ToStandardOutput() {
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        System.setOut(new PrintStream(bytes, true, StandardCharsets.ISO_8859_1));
        try {
            Main.main(new String[] {"plan", "designs/demo.toml", "--out", folder.toString()});
        } finally {
            System.setOut(before);
        }
        assertTrue(bytes.toString(StandardCharsets.UTF_8).contains("target ±10 %"));
    }

    /** A run whose output channel fails. */
    private Run broken(Supplier<Writer> failure) throws IOException {
        PrintWriter out = new PrintWriter(new StringWriter()) {
            @Override
            public void println(String line) {
                failure.get();
            }
        };
        StringWriter err = new StringWriter();
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY);
        String[] args = {
            "check", design.toString(), "--out", folder.resolve("out").toString()
        };
        return new Run(Main.run(out, new PrintWriter(err, true), args), "", err.toString());
    }

    @Test
    void longListsOfProblemsAreShortenedOnTheConsoleOnly() throws IOException {
        String bad = "plot,tree,species,dbh,height\n" + "1,,PSME,x,\n".repeat(25);
        Run run = Run.of("check", Run.cruise(folder, new SmallDesign(), bad), "--out", folder.resolve("out"));
        run.assertCode(1);
        assertTrue(run.err().contains("... and 5 more") && run.err().contains("25 number-unreadable"), run.err());
        Map<String, String> files = Run.files(folder.resolve("out"));
        assertEquals(26, files.get("problems.csv").lines().count(), "a header and each problem");
    }
}
