package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.cruise.Estate;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.estimate.EstimateRow;
import quadmean.model.Progress;
import quadmean.report.EstateFolder;
import quadmean.support.FormulaEstate;

/** An estate whose files are broken: named with file and line, or read as they were meant, and never a trace of the stack. */
class EstateBrokenTest {
    private static final List<String> LINES = new FormulaEstate(1, 1).lines();
    private static final String CLEAN = FormulaEstate.HEADER + String.join("\n", LINES) + "\n";

    /** Few heights are soon fitted. */
    private static final String FEW = "heights_per_curve = 10\n";

    @TempDir
    Path folder;

    @BeforeEach
    void clean() throws IOException {
        Files.writeString(folder.resolve("t.csv"), CLEAN);
        FormulaEstate.estate(folder, "t.csv", "region", FEW);
    }

    private Run refused() {
        Run run = Run.of("estimate", folder.resolve("estate.toml"), "--out", folder.resolve("out"), "--threads", 2);
        run.assertCode(1);
        assertFalse((run.out() + run.err()).matches("(?s).*(\\tat |Exception|defect).*"), run.out() + run.err());
        assertFalse(Files.exists(folder.resolve("out/.unfinished")), "work is cleared away");
        return run;
    }

    /** Every number of every stand, for a design that is in order; the names of stands left out. */
    private String numbers() throws IOException {
        Design design = Objects.requireNonNull(
                DesignReader.read(folder.resolve("estate.toml")).design());
        try (EstateFolder work = EstateFolder.take(folder.resolve("work"), "", 60, note -> {})) {
            EstateResult result =
                    Estate.run(design, 2, work, Progress.SILENT).orElseThrow(() -> new AssertionError(work.gravest()));
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < result.stands().size(); i++) {
                result.stands()
                        .rows(i, EstimateRow.ALL)
                        .forEach(r -> text.append(r.mean() + " " + r.se() + " " + r.n() + "\n"));
            }
            assertEquals(
                    result.rows().in(), result.rows().used() + result.rows().dropped());
            return text.toString();
        }
    }

    private static byte[] utf(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static Arguments refused(String what, byte[] tally, String... words) {
        return Arguments.of(what, tally, List.of(words));
    }

    /** The clean tally with a line in place of another; the header is line 1. */
    private static byte[] line(int number, String text) {
        List<String> lines = new ArrayList<>(CLEAN.lines().toList());
        lines.set(number - 1, text);
        return utf(String.join("\n", lines) + "\n");
    }

    static Stream<Arguments> brokenTallies() {
        byte[] clean = utf(CLEAN);
        return Stream.of(
                refused("empty", new byte[0], "t.csv", "the file is empty"),
                refused("blank lines", utf("\n\n\r\n"), "t.csv", "the file is empty"),
                refused("header alone", utf(FormulaEstate.HEADER), "no rows that make a plot"),
                refused("no column", utf(CLEAN.replaceFirst("dbh", "dhb")), "t.csv:1", "no column \"dbh\""),
                refused("no stand", utf(CLEAN.replaceFirst("stand", "stnd")), "t.csv:1", "no column \"stand\""),
                refused("half a row", Arrays.copyOf(clean, clean.length - 9), "t.csv:" + (LINES.size() + 1), "fields"),
                refused(
                        "open quote",
                        utf(CLEAN + "S12,9,1,PSME,30,\"2"),
                        "t.csv:" + (LINES.size() + 2),
                        "never closed"),
                refused("quote in a row", line(20, "S01,9,\"1\"x,PSME,30,20"), "t.csv:20", "the quotes of the row"),
                refused("quote left open", line(20, "S01,9,\"1,PSME,30,20"), "t.csv:20", "the quotes of the row"),
                refused("quote in header", utf("\"" + CLEAN), "t.csv"),
                refused(
                        "half a letter",
                        new String(clean, StandardCharsets.ISO_8859_1)
                                .replaceFirst("S07,3,", "S07,3\u00C3,")
                                .getBytes(StandardCharsets.ISO_8859_1),
                        "t.csv",
                        "not text in utf-8"),
                refused("unknown stand", line(20, "S99,9,1,PSME,30,20"), "t.csv:20", "S99", "no stand"),
                refused("no plot", line(20, "S01,,1,PSME,30,20"), "t.csv:20", "names no plot"),
                refused("odd number", line(20, "S01,9,1,PSME,3o,20"), "t.csv:20", "3o", "plain number"),
                refused(
                        "apart",
                        utf(CLEAN + LINES.get(0).replace(",1,PSME", ",77,PSME") + "\n"),
                        "t.csv:" + (LINES.size() + 2),
                        "further up"),
                refused("NUL", utf("\u0000\u0001\u0002"), "t.csv"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("brokenTallies")
    void brokenTalliesAreNamed(String what, byte[] tally, List<String> words) throws IOException {
        Files.write(folder.resolve("t.csv"), tally);
        Run run = refused();
        words.forEach(w -> assertTrue(run.err().contains(w), w + " in " + run.err()));
        String list = Files.readString(folder.resolve("out/problems.csv"));
        assertTrue(list.lines().count() > 1 && list.startsWith("file,"), list);
    }

    static Stream<Arguments> otherForms() {
        return Stream.of(
                Arguments.of("CRLF", utf(CLEAN.replace("\n", "\r\n"))),
                Arguments.of("CR", utf(CLEAN.replace("\n", "\r"))),
                Arguments.of("byte order mark", utf("\uFEFF" + CLEAN)),
                Arguments.of("no line end", utf(CLEAN.stripTrailing())),
                Arguments.of("empty lines", utf("\n\n" + CLEAN.replace("\n", "\n\n"))),
                Arguments.of("tabs", utf(CLEAN.replace(",", "\t"))),
                Arguments.of("semicolons", utf(CLEAN.replace(",", ";").replace(".", ","))),
                Arguments.of("quotes", utf(CLEAN.replaceAll("(?m)^(S..),", "\"$1\","))),
                Arguments.of("blanks", utf(CLEAN.replaceAll("(?m)^(S..),", " $1 , "))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("otherForms")
    void otherFormsReadTheSame(String what, byte[] tally) throws IOException {
        String expected = numbers();
        Files.write(folder.resolve("t.csv"), tally);
        assertEquals(expected, numbers());
    }

    @Test
    void oneBrokenRowIsLeftOutByPolicy() throws IOException {
        String expected = numbers();
        FormulaEstate.estate(folder, "t.csv", "region", FEW + "[policy]\nrow-length = \"drop\"\n");
        Files.write(folder.resolve("t.csv"), utf(CLEAN.replaceFirst("(?m)^S03", "S03,9,\"1,PSME,30,20\nS03")));
        assertEquals(expected, numbers());
    }

    @Test
    void otherEncodingsAreNamedByTheirLineOrRead() throws IOException {
        String expected = numbers();
        byte[] old = CLEAN.replace("S03", "S\u00FC3").getBytes(Charset.forName("windows-1252"));
        Files.write(folder.resolve("t.csv"), old);
        Files.writeString(
                folder.resolve("stands.csv"),
                Files.readString(folder.resolve("stands.csv")).replace("S03", "S\u00FC3"));
        assertTrue(refused().err().contains("name its encoding under [[tally]]"));
        Path design = folder.resolve("estate.toml");
        Files.writeString(
                design,
                Files.readString(design).replace("file = \"t.csv\"", "file = \"t.csv\"\nencoding = \"windows-1252\""));
        assertEquals(expected, numbers());
    }

    private static byte[] packed(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        }
        return out.toByteArray();
    }

    @Test
    void packedFilesAreWholeOrNamed() throws IOException {
        String expected = numbers();
        FormulaEstate.estate(folder, "t.csv.gz", "region", FEW);
        byte[] packed = packed(utf(CLEAN));
        Files.write(folder.resolve("t.csv.gz"), packed);
        assertEquals(expected, numbers());
        Files.write(folder.resolve("t.csv.gz"), utf(CLEAN));
        assertTrue(refused().err().contains("not packed by gzip"));
        Files.write(folder.resolve("t.csv.gz"), Arrays.copyOf(packed, packed.length / 2));
        assertTrue(refused().err().contains("breaks off"));
        packed[packed.length / 2] ^= 0x55;
        Files.write(folder.resolve("t.csv.gz"), packed);
        assertTrue(refused().err().contains("t.csv.gz"));
    }

    @Test
    void foldersWithNothingOrWithOnePlotTwice() throws IOException {
        String expected = numbers();
        FormulaEstate.estate(folder, "parts", "region", FEW);
        Path parts = Files.createDirectory(folder.resolve("parts"));
        assertTrue(refused().err().contains("the folder holds no .csv"));
        Files.writeString(parts.resolve("a.csv"), CLEAN);
        Files.createDirectory(parts.resolve("b.csv"));
        assertEquals(expected, numbers());
        Files.writeString(parts.resolve("c.csv"), FormulaEstate.HEADER + LINES.get(0) + "\n");
        assertTrue(refused().err().contains("c.csv:2"));
        Run into = Run.of("estimate", folder.resolve("estate.toml"), "--out", parts);
        into.assertCode(2);
        assertTrue(into.err().contains("holds the tally"), into.err());
    }

    @ParameterizedTest
    @MethodSource("brokenStands")
    void brokenTablesOfStandsAreNamed(String from, String to, String words) throws IOException {
        Path table = folder.resolve("stands.csv");
        String text = Files.readString(table);
        assertTrue(text.contains(from));
        Files.writeString(table, text.replace(from, to));
        Run run = refused();
        assertTrue(run.err().contains("stands.csv") && run.err().contains(words), run.err());
    }

    static Stream<Arguments> brokenStands() {
        return Stream.of(
                Arguments.of("\nS02,", "\nS01,", "stands on line 2 already"),
                Arguments.of("S02,8.5", "S02,0", "no area above zero"),
                Arguments.of("S02,8.5", "S02,-1", "no area above zero"),
                Arguments.of("S02,8.5", "S02,NaN", "no area above zero"),
                Arguments.of("S02,8.5", "S02,", "no area above zero"),
                Arguments.of("\nS01,", "\n,", "names no stand"),
                Arguments.of(",region", ",regio", "no column \"region\""),
                Arguments.of("own,region", "region,region", "\"region\" twice"),
                Arguments.of("stand,ha", "stand,area", "no column \"ha\""),
                Arguments.of("S02,8.5", "S02,8.5,1", "fields"));
    }

    @Test
    void namesOfStandsMayHoldAnything() throws IOException {
        String expected = numbers();
        String odd = "\"Höhe \"\"Süd\"\", 1\"";
        Files.write(folder.resolve("t.csv"), utf(CLEAN.replace("S03,", odd + ",")));
        Path table = folder.resolve("stands.csv");
        Files.writeString(
                table,
                Files.readString(table).replace("\nS03,", "\n" + odd + ",").replace(",S03,", ",x,"));
        assertEquals(expected, numbers());
    }

    @Test
    void morePlotsThanHaveRoomAreRefused() throws IOException {
        Path design = folder.resolve("estate.toml");
        Files.writeString(design, Files.readString(design) + "[selection]\nfinite_population = \"correct\"\n");
        Path table = folder.resolve("stands.csv");
        Files.writeString(table, Files.readString(table).replace("S02,8.5", "S02,0.1"));
        assertTrue(refused().err().contains("room for 2.5"));
    }
}
