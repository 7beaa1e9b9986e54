package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.field.DesignDraft;
import quadmean.field.Workbooks;

/** {@code check --init}: a draft that parses but for its marked gaps, and works once they are filled. */
class InitTest {
    @TempDir
    Path folder;

    private String draft(String tally, byte[] content) throws IOException {
        Path file = Files.write(folder.resolve(tally), content);
        Path draft = folder.resolve("draft.toml");
        Files.deleteIfExists(draft);
        Run run = Run.of("check", "--init", file, "--out", draft);
        run.assertCode(0);
        assertTrue(run.out().contains("quadmean check " + draft), run.out());
        String text = Files.readString(draft);
        DesignReading reading = DesignReader.read(draft);
        List<String> lines = text.lines().toList();
        reading.problems()
                .forEach(p ->
                        assertTrue(lines.get((int) p.row() - 1).contains(DesignDraft.GAP), p.message() + "\n" + text));
        long gaps =
                lines.stream().filter(l -> l.contains("   " + DesignDraft.GAP)).count();
        long places = reading.problems().stream().map(p -> p.row()).distinct().count();
        assertEquals(gaps, places, text);
        return text;
    }

    private Run checkFilled(String draft) throws IOException {
        String filled = draft.replace("area = 0 ", "area = 1 ")
                .replace("kind = \"?\"", "area = 1\nkind = \"fixed\"")
                .replace("unit = \"?\"", "unit = \"cm\"")
                .replace("units = \"?\"", "units = \"metric\"");
        return Run.of("check", Files.writeString(folder.resolve("filled.toml"), filled), "--out", folder.resolve("o"));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }

    @Test
    void shippedTalliesDraftTheirDesigns() throws IOException {
        for (String tally : List.of("demo-tally.csv", "idaho-points-1-72.csv")) {
            String text = draft(tally, Files.readAllBytes(Path.of("datasets", tally)));
            assertTrue(text.contains("dbh = { name = \"dbh"), text);
            Run run = checkFilled(text);
            assertTrue(run.code() <= 1, run.err());
            assertTrue(!run.err().contains("column-missing") && !run.err().contains("species-unknown"), run.err());
        }
    }

    @Test
    void whatAWesternSpreadsheetSavesIsFound() throws IOException {
        String csv = "Punkt;Plot No;Species;Girth (cm);Stems;Logs\r\n1;1;Lärche;98,5;2;1,5\r\n2;1;Föhre;77;;\r\n";
        String text = draft("t.csv", csv.getBytes(Charset.forName("windows-1252")));
        for (String line : List.of(
                "encoding = \"windows-1252\"",
                "separator = \";\"",
                "decimal = \",\"",
                "plot = \"Plot No\"",
                "girth = { name = \"Girth (cm)\", unit = \"cm\" }",
                "count = \"Stems\"",
                "logs = \"Logs\"",
                "# not in use: Punkt",
                "[species.\"Lärche\"]   # 1 row")) {
            assertTrue(text.contains(line), line + " in\n" + text);
        }
        checkFilled(text).assertCode(0);
    }

    @Test
    void workbooksAndClassesAreDraftedToo() throws IOException {
        String text = draft(
                "t.xlsx",
                Workbooks.ofCsv("stratum,point,sp,DBH\nN,1,PSME,8-10\nS,2,ABGR,12-14\nN,3,PSME,10\nS,4,ABGR,9"));
        assertTrue(text.contains("sheet = \"Trees\""), text);
        assertTrue(text.contains("dbh = { name = \"DBH\", unit = \"?\", classes = \"midpoint\" }   # FILL IN"), text);
        assertTrue(text.contains("code = \"N\"") && text.contains("code = \"S\""), text);
        checkFilled(text).assertCode(0);
    }

    @Test
    void namesThatAreNoTomlAreQuoted() throws IOException {
        String text = draft("t.csv", bytes("plot,species,\"dbh \"\"in\"\"\",x\n1,\"A\\\"\"B\",9,1\n2,PSME,8,1\n"));
        assertTrue(text.contains("[species.\"A\\\\\\\"B\"]"), text);
        assertTrue(text.contains("not in use: dbh \"in\", x"), text);
    }

    @Test
    void aTitleIsNotTakenForTheHeader() throws IOException {
        Path file = folder.resolve("lot.csv");
        Files.writeString(file, "Old Mill Lot;;;\nPlot;Spp;DBH (in);Height (ft)\n1;DF;14,5;85,5\n");
        Run run = Run.of("check", "--init", file);
        run.assertCode(1);
        assertTrue(run.err().contains("\"Old Mill Lot\", looks like a title"), run.err());
        assertTrue(Files.notExists(folder.resolve("lot.toml")));
    }

    @Test
    void feetAndInchesAreToldHowToBeWritten() throws IOException {
        String text = draft("t.csv", bytes("plot;species;dbh_in;height_ft\n1;PSME;12,5;85'6\"\n1;PSME;9;70'\n"));
        Run run = checkFilled(text);
        run.assertCode(1);
        assertTrue(run.err().contains("6 inches are 0,5"), run.err());
        assertEquals(3, run.err().split("feet with decimals", -1).length, run.err()); // both rows
    }

    @Test
    void columnsThatAreNotThereAreGaps() throws IOException {
        String text = draft("t.csv", bytes("a,b\n1,2\n"));
        assertTrue(text.contains("plot = \"\"   # FILL IN"), text);
    }

    @Test
    void anExistingFileIsNotReplaced() throws IOException {
        Path tally = Files.writeString(folder.resolve("tally.csv"), Run.TALLY);
        Path design = Files.writeString(folder.resolve("tally.toml"), "mine");
        Run run = Run.of("check", "--init", tally);
        run.assertCode(2);
        assertTrue(run.err().contains("stays as it is"), run.err());
        assertEquals("mine", Files.readString(design));
        Run.of("check", "--init", tally, "--out", tally).assertCode(2);
        assertEquals(Run.TALLY, Files.readString(tally));
        Files.delete(design);
        Run.of("check", "--init", tally).assertCode(0);
        assertTrue(Files.readString(design).contains("file = \"tally.csv\""));
    }

    @Test
    void whatIsNoTallyIsRefused() throws IOException {
        Path empty = Files.writeString(folder.resolve("e.csv"), "");
        Run run = Run.of("check", "--init", empty);
        run.assertCode(1);
        assertTrue(run.err().contains("empty"), run.err());
        Run.of("check", "--init", Files.writeString(folder.resolve("x.xlsx"), "no"))
                .assertCode(1);
        assertTrue(Files.notExists(folder.resolve("e.toml")));
        Run.of("check", "--init", folder.resolve("none.csv")).assertCode(2);
    }
}
