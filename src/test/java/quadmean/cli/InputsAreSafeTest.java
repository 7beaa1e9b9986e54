package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.SmallDesign;

/** No input is ever overwritten, whatever it is called and wherever the results go. */
class InputsAreSafeTest {
    @TempDir
    Path folder;

    private void assertSafe(Run run, Path tally) throws IOException {
        run.assertCode(2);
        assertTrue(run.err().contains("--out"), run.err());
        assertEquals(Run.TALLY, Files.readString(tally));
    }

    private Path design(SmallDesign design, String tallyName) throws IOException {
        Path tally = folder.resolve(tallyName);
        Files.writeString(tally, Run.TALLY);
        design.with("tally.csv", tallyName).write(folder);
        return tally;
    }

    @ParameterizedTest
    @ValueSource(strings = {"trees.csv", "problems.csv", "report.html"})
    void estimateOverATallyIsRefused(String name) throws IOException {
        Path tally = design(new SmallDesign(), name);
        assertSafe(Run.of("estimate", folder.resolve("design.toml"), "--out", folder), tally);
        assertEquals(Set.of("design.toml", name), Run.files(folder).keySet(), "nothing else is written either");
    }

    @Test
    void wayRoundThroughALinkIsFound() throws IOException {
        Path tally = design(new SmallDesign(), "problems.csv");
        Files.createSymbolicLink(folder.resolve("link"), folder);
        assertSafe(Run.of("check", folder.resolve("design.toml"), "--out", folder.resolve("link")), tally);
    }

    @Test
    void tallyReachedThroughALinkIsFound() throws IOException {
        Path real =
                Files.writeString(Files.createDirectory(folder.resolve("out")).resolve("problems.csv"), Run.TALLY);
        Files.createSymbolicLink(folder.resolve("tally.csv"), real);
        assertSafe(Run.of("check", new SmallDesign().write(folder), "--out", folder.resolve("out")), real);
    }

    @Test
    void designCalledLikeAnOutputIsSafe() throws IOException {
        Files.writeString(folder.resolve("tally.csv"), Run.TALLY);
        Path design = Files.writeString(folder.resolve("problems.csv"), SmallDesign.TEXT);
        Run run = Run.of("check", design, "--out", folder);
        run.assertCode(2);
        assertEquals(SmallDesign.TEXT, Files.readString(design));
    }

    @ParameterizedTest
    @ValueSource(strings = {"units = \"metrik\"", "units = \"metric", "units = \"metric\"\nfoo = 1"})
    void tallyOfADesignThatCannotBeReadIsSafe(String slip) throws IOException {
        Path tally = design(new SmallDesign().with("units = \"metric\"", slip), "problems.csv");
        Run run = Run.of("check", folder.resolve("design.toml"), "--out", folder);
        assertSafe(run, tally);
        assertTrue(run.err().contains("design.toml:"), "problems are shown all the same: " + run.err());
    }

    @Test
    void listOfProblemsOfAnEarlierRunIsReplaced() throws IOException {
        Path design = Run.cruise(folder, new SmallDesign().with("\"metric\"", "\"metrik\""), Run.TALLY);
        Run.of("check", design, "--out", folder).assertCode(1);
        Run.of("check", new SmallDesign().with("\"metric\"", "\"mtric\"").write(folder), "--out", folder)
                .assertCode(1);
        assertTrue(Run.files(folder).get("problems.csv").contains(",mtric,"));
    }
}
