package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.support.SmallDesign;

/** A design file that is no file, no text, or no design at all. */
class DesignFileTest {
    @TempDir
    Path folder;

    @Test
    void germanDefaultLocaleIsInForce() {
        assertEquals("de", Locale.getDefault().getLanguage(), "the build sets it so that a decimal comma would show");
    }

    @Test
    void byteOrderMarkIsSkipped() throws IOException {
        Path file = Files.writeString(folder.resolve("d.toml"), "\uFEFF" + SmallDesign.TEXT);
        assertEquals(List.of(), DesignReader.read(file).problems());
    }

    @Test
    void carriageReturnsDoNotMatter() throws IOException {
        Path file = Files.writeString(folder.resolve("d.toml"), SmallDesign.TEXT.replace("\n", "\r\n"));
        assertNotNull(DesignReader.read(file).design());
    }

    @Test
    void latinTextIsNoUtf8() throws IOException {
        byte[] latin = SmallDesign.TEXT.replace("Small", "Grünwald").getBytes(StandardCharsets.ISO_8859_1);
        assertSyntax("UTF-8", Files.write(folder.resolve("d.toml"), latin));
    }

    @Test
    void largeFileIsNoDesign() throws IOException {
        assertSyntax("1 MB", Files.writeString(folder.resolve("d.toml"), "# tree\n".repeat(200_000)));
    }

    @Test
    void deepNestingIsAMessageAndNoCrash() throws IOException {
        String deep = "schema = 1\na = " + "[".repeat(50_000) + "]".repeat(50_000) + "\n";
        assertSyntax("too deep", Files.writeString(folder.resolve("d.toml"), deep));
    }

    private static void assertSyntax(String words, Path file) throws IOException {
        List<Problem> problems = DesignReader.read(file).problems();
        assertEquals(1, problems.size(), problems.toString());
        assertEquals(Rule.DESIGN_SYNTAX, problems.get(0).rule());
        assertTrue(problems.get(0).detail().contains(words), problems.get(0).detail());
    }

    @Test
    void emptyFileListsWhatMustBeThere() throws IOException {
        Path file = Files.writeString(folder.resolve("d.toml"), "");
        List<String> keys =
                DesignReader.read(file).problems().stream().map(Problem::column).toList();
        assertEquals(
                List.of("schema", "cruise", "cruise.units", "cruise.area", "cruise.name", "plot", "plot.kind"), keys);
    }

    @Test
    void folderOrMissingFileIsAnIoException() {
        assertThrows(IOException.class, () -> DesignReader.read(folder));
        assertThrows(IOException.class, () -> DesignReader.read(folder.resolve("none.toml")));
    }

    @Test
    void messageIsOneLineWithoutSignsThatSteerAScreen() throws IOException {
        Path file = Files.writeString(folder.resolve("d.toml"), SmallDesign.TEXT + "\"a\\u001B[2J\\nb\" = 1\n");
        Problem p = DesignReader.read(file).problems().get(0);
        assertTrue(p.message().codePoints().noneMatch(Character::isISOControl), p.message());
        assertTrue(p.column().startsWith("species.PSME.a"), p.column());
    }

    @Test
    void talliesOfOneNameInTwoFoldersAreCalledByTheirPaths() {
        String tally =
                SmallDesign.TEXT.substring(SmallDesign.TEXT.indexOf("[[tally]]"), SmallDesign.TEXT.indexOf("[species"));
        Design design = new SmallDesign()
                .with("tally.csv", "north/tally.csv")
                .plus(tally.replace("tally.csv", "south/tally.csv") + tally.replace("tally.csv", "west.csv"))
                .valid(folder);
        assertEquals(
                List.of("north/tally.csv", "south/tally.csv", "west.csv"),
                design.tallies().stream().map(TallyFile::name).toList());
    }

    @Test
    void linkToAnotherTallyOfTheDesignIsThatTally() throws IOException {
        Files.writeString(folder.resolve("tally.csv"), "plot\n");
        Files.createSymbolicLink(folder.resolve("link.csv"), folder.resolve("tally.csv"));
        String tally =
                SmallDesign.TEXT.substring(SmallDesign.TEXT.indexOf("[[tally]]"), SmallDesign.TEXT.indexOf("[species"));
        List<Problem> problems =
                new SmallDesign().plus(tally.replace("tally.csv", "link.csv")).problems(folder);
        assertEquals("link.csv", problems.get(0).value());
        assertEquals(1, problems.size());
    }
}
