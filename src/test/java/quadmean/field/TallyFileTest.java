package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.design.Design;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tally;
import quadmean.support.SmallDesign;

/** Tally files in other encodings, with other line ends, of other sizes, or no files at all. */
class TallyFileTest {
    private static final String HEADER = "plot,tree,species,dbh,height\n";
    private static final String GOOD = HEADER + "1,1,PSME,30,20\n2,1,PSME,25,\n";
    private static final Duration QUICK = Duration.ofSeconds(20);

    @TempDir
    Path folder;

    private Tally read(byte[] content) throws IOException {
        Files.write(folder.resolve("tally.csv"), content);
        return TallyReader.read(new SmallDesign().valid(folder));
    }

    private Tally read(String content) throws IOException {
        return read(content.getBytes(StandardCharsets.UTF_8));
    }

    private static void assertUnreadable(String words, Tally tally) {
        assertEquals(1, tally.problems().size(), tally.problems().toString());
        Problem p = tally.problems().get(0);
        assertEquals(Rule.FILE_UNREADABLE, p.rule());
        assertEquals("tally.csv", p.file());
        assertTrue(p.detail().contains(words), p.detail());
        assertTrue(tally.isRefused());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r", "\n"})
    void lineEndsDoNotMatter(String end) throws IOException {
        Tally tally = read((GOOD + "3,1,PSME,x,\n").replace("\n", end));
        assertEquals(3, tally.rows().in());
        assertEquals(4, tally.problems().get(0).row());
    }

    @Test
    void lastLineNeedsNoEnd() throws IOException {
        assertEquals(2, read(GOOD.stripTrailing()).rows().used());
    }

    @ParameterizedTest
    @ValueSource(strings = {"plot,tree,species,dbh,height\n", "\"plot\",\"tree\",\"species\",\"dbh\",\"height\"\n"})
    void byteOrderMarkIsSkippedAlsoBeforeAQuote(String header) throws IOException {
        Tally tally = read("\uFEFF" + header + "1,1,PSME,30,20\n");
        assertEquals(List.of(), tally.problems());
        assertEquals(1, tally.rows().used());
    }

    @Test
    void emptyFileIsRefused() throws IOException {
        assertUnreadable("empty", read(""));
        assertUnreadable("empty", read("\n\n"));
    }

    @Test
    void folderInPlaceOfAFileIsRefused() throws IOException {
        Files.createDirectory(folder.resolve("tally.csv"));
        assertUnreadable("folder", TallyReader.read(new SmallDesign().valid(folder)));
    }

    @Test
    void missingFileIsAnIoException() {
        Design design = new SmallDesign().valid(folder);
        assertThrows(NoSuchFileException.class, () -> TallyReader.read(design));
    }

    @Test
    void lineOfTwentyMegabytesEndsInAMessage() {
        assertTimeout(
                QUICK, () -> assertUnreadable("16 million", read(HEADER + "1,1," + "A".repeat(20_000_000) + ",30,\n")));
    }

    @Test
    void longFieldIsShortenedInMessagesAndQuickToCompare() {
        assertTimeout(QUICK, () -> {
            Tally tally = read(HEADER + "1,1," + "A".repeat(5_000_000) + ",30,\n");
            Problem p = tally.problems().get(0);
            assertEquals(Rule.SPECIES_UNKNOWN, p.rule());
            assertTrue(p.message().length() < 1000, "length " + p.message().length());
        });
    }

    @Test
    void manyRowsOfOneTreeNumberAreQuick() {
        StringBuilder csv = new StringBuilder(HEADER);
        for (int i = 0; i < 60_000; i++) {
            csv.append("1,1,PSME,30.").append(i).append(",\n");
        }
        assertTimeout(
                QUICK,
                () -> assertEquals(59_999, read(csv.toString()).problems().size()));
    }

    @Test
    void lineOfAMillionFieldsEndsInAMessage() {
        String fields = "x,".repeat(1_000_000);
        assertTimeout(QUICK, () -> {
            Problem row = read(HEADER + fields + "\n").problems().get(0);
            assertTrue(row.message().length() < 1_000, "length " + row.message().length());
            Tally header = read(fields + "\n1,1,PSME,30,20\n");
            assertTrue(header.isRefused());
            assertTrue(header.problems().get(0).message().length() < 1_000);
        });
    }

    @Test
    void signsThatSteerAScreenDoNotReachIt() throws IOException {
        Problem p = read(HEADER + "1,1,PSME,\u001B[31m3\u0007,\n").problems().get(0);
        assertEquals("\uFFFD[31m3\uFFFD", p.value());
        assertTrue(p.message().codePoints().noneMatch(Character::isISOControl), p.message());
    }

    @Test
    void rowsOfTalliesThatShareANameAreToldApart() throws IOException {
        String tally =
                SmallDesign.TEXT.substring(SmallDesign.TEXT.indexOf("[[tally]]"), SmallDesign.TEXT.indexOf("[species"));
        Design design = new SmallDesign()
                .with("tally.csv", "n/tally.csv")
                .plus(tally.replace("tally.csv", "s/tally.csv")
                        + "[policy]\nrow-repeated = \"keep\"\ntree-repeated = \"drop\"")
                .valid(folder);
        for (String name : List.of("n", "s")) {
            Files.createDirectory(folder.resolve(name));
            String last = name.equals("n") ? "3,1,PSME,40,\n" : "3,1,PSME,41,\n";
            Files.writeString(folder.resolve(name + "/tally.csv"), HEADER + "1,1,PSME,30,20\n" + last);
        }
        Tally read = TallyReader.read(design);
        assertEquals(
                List.of("s/tally.csv:2 row-repeated", "s/tally.csv:3 tree-repeated"),
                read.problems().stream()
                        .map(p -> p.file() + ":" + p.row() + " " + p.rule().code())
                        .toList());
        assertTrue(read.problems().get(0).detail().contains("line 2 of n/tally.csv"));
        assertEquals(4, read.rows().in());
        assertEquals(1, read.rows().dropped());
        assertEquals(1, read.rows().kept());
    }
}
