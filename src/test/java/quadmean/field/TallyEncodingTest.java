package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tally;
import quadmean.support.SmallDesign;

/** Letters arrive as they were written, or the file is refused. */
class TallyEncodingTest {
    private static final String TEXT = "plot,tree,species,dbh,height\n1,1,Lärche,30,20\n2,1,Föhre,25,\n";
    private static final Charset ANSI = Charset.forName("windows-1252");

    @TempDir
    Path folder;

    private Tally read(String declared, byte[] content) throws IOException {
        Files.write(folder.resolve("tally.csv"), content);
        String encoding = declared.isEmpty() ? "" : "\nencoding = \"" + declared + "\"";
        return TallyReader.read(new SmallDesign()
                .with("\n[species.PSME]\nname = \"Douglas-fir\"\n", "")
                .with("\"tally.csv\"", "\"tally.csv\"" + encoding)
                .valid(folder));
    }

    private static byte[] marked(Charset charset) {
        return ("\uFEFF" + TEXT).getBytes(charset);
    }

    private static void assertSpecies(Tally tally) {
        assertEquals(
                List.of("Lärche", "Föhre"),
                tally.plots().stream()
                        .flatMap(p -> p.trees().stream())
                        .map(t -> t.species())
                        .toList(),
                tally.problems().toString());
    }

    private static void assertStated(String encoding, Tally tally) {
        assertEquals(1, tally.problems().size(), tally.problems().toString());
        Problem p = tally.problems().get(0);
        assertEquals(Rule.FORMAT_DETECTED, p.rule());
        assertEquals(Policy.KEEP, p.policy());
        assertEquals(encoding, p.value());
        assertEquals(0, tally.rows().kept(), "the file is meant, no row");
    }

    private static void assertRefused(Rule rule, String words, Tally tally) {
        assertEquals(1, tally.problems().size(), tally.problems().toString());
        Problem p = tally.problems().get(0);
        assertEquals(rule, p.rule());
        assertTrue(p.detail().contains(words), p.detail());
        assertTrue(tally.isRefused());
        assertEquals(0, tally.rows().in());
    }

    @Test
    void utf8NeedsNoWord() throws IOException {
        for (byte[] content : List.of(TEXT.getBytes(StandardCharsets.UTF_8), marked(StandardCharsets.UTF_8))) {
            Tally tally = read("", content);
            assertSpecies(tally);
            assertEquals(List.of(), tally.problems());
        }
    }

    @Test
    void ansiIsFoundAndStatedWithAWordToLookAt() throws IOException {
        Tally tally = read("", TEXT.getBytes(ANSI));
        assertSpecies(tally);
        assertStated("windows-1252", tally);
        assertTrue(tally.problems().get(0).detail().contains("line 2 has \"Lärche\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16LE", "UTF-16BE"})
    void wideTextWithAMarkIsFoundAndStated(String charset) throws IOException {
        Tally tally = read("", marked(Charset.forName(charset)));
        assertSpecies(tally);
        assertStated("utf-16", tally);
    }

    @Test
    void declaredEncodingsAreNotStated() throws IOException {
        for (Tally tally : List.of(
                read("windows-1252", TEXT.getBytes(ANSI)),
                read("utf-8", TEXT.getBytes(StandardCharsets.UTF_8)),
                read("utf-16", marked(StandardCharsets.UTF_16LE)),
                read("utf-16", TEXT.getBytes(StandardCharsets.UTF_16LE)),
                read("utf-16", TEXT.getBytes(StandardCharsets.UTF_16BE)))) {
            assertSpecies(tally);
            assertEquals(List.of(), tally.problems());
        }
    }

    @Test
    void aMarkAgainstTheDesignIsAContradiction() throws IOException {
        assertRefused(Rule.FORMAT_CONTRADICTS, "UTF-8", read("windows-1252", marked(StandardCharsets.UTF_8)));
        assertRefused(Rule.FORMAT_CONTRADICTS, "UTF-16", read("utf-8", marked(StandardCharsets.UTF_16LE)));
        assertRefused(Rule.FORMAT_CONTRADICTS, "UTF-8", read("utf-16", marked(StandardCharsets.UTF_8)));
    }

    @Test
    void lettersThatTheDeclaredEncodingDoesNotHaveAreRefused() throws IOException {
        assertRefused(Rule.FILE_UNREADABLE, "UTF-8", read("utf-8", TEXT.getBytes(ANSI)));
        byte[] undefined = "plot,tree,species,dbh,height\n1,1,A\u0081,30,\n".getBytes(StandardCharsets.ISO_8859_1);
        assertRefused(Rule.FILE_UNREADABLE, "windows-1252", read("windows-1252", undefined));
        assertRefused(Rule.FILE_UNREADABLE, "nor all in windows-1252", read("", undefined));
    }

    @Test
    void aMixtureOfEncodingsIsRefused() throws IOException {
        ByteArrayOutputStream mixed = new ByteArrayOutputStream();
        mixed.write(TEXT.getBytes(StandardCharsets.UTF_8));
        mixed.write("3,1,Lärche,30,\n".getBytes(ANSI));
        assertRefused(Rule.FILE_UNREADABLE, "from line 4 on", read("", mixed.toByteArray()));
    }

    @Test
    void wideTextWithoutAMarkIsRefusedWithAHint() throws IOException {
        assertRefused(
                Rule.FILE_UNREADABLE, "encoding = \"utf-16\"", read("", TEXT.getBytes(StandardCharsets.UTF_16LE)));
        assertRefused(Rule.FILE_UNREADABLE, "UTF-32", read("", marked(Charset.forName("UTF-32LE"))));
        assertRefused(Rule.FILE_UNREADABLE, "UTF-32", read("utf-8", marked(Charset.forName("UTF-32BE"))));
    }

    @Test
    void lettersFarDownTheFileDecideToo() throws IOException {
        String far = "1,,PSME,30,\n".repeat(40_000);
        Tally tally = read("", (TEXT.replace("ä", "a").replace("ö", "o") + far + "3,1,Eibe\u00E9,9,\n").getBytes(ANSI));
        assertStated("windows-1252", tally);
        assertEquals(40_003, tally.rows().used());
    }
}
