package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.support.SmallDesign;

/** Tallies in workbooks. */
@Isolated("exchanges the output of the whole process")
class TallyWorkbookTest {
    private static final String HEADER = "plot,tree,species,dbh,height\n";
    private static final SmallDesign DESIGN = new SmallDesign().with("tally.csv", "tally.xlsx");
    private static final Duration QUICK = Duration.ofSeconds(20);

    @TempDir
    Path folder;

    private Tally read(SmallDesign design, byte[] workbook) throws IOException {
        Files.write(folder.resolve("tally.xlsx"), workbook);
        return TallyReader.read(design.valid(folder));
    }

    private Tally read(String csv, String moreRows) throws IOException {
        return read(DESIGN, Workbooks.of(Map.of("Trees", Workbooks.sheet(HEADER + csv) + moreRows)));
    }

    private static String only(Tally tally) {
        assertEquals(1, tally.problems().size(), tally.problems().toString());
        return tally.problems().get(0).detail();
    }

    private static List<Tree> trees(Tally tally) {
        return tally.plots().stream().flatMap(p -> p.trees().stream()).toList();
    }

    private static List<String> problems(Tally tally) {
        return tally.problems().stream()
                .map(p -> p.file() + ":" + p.row() + " " + p.rule().code() + " "
                        + p.policy().id() + " [" + p.column() + "] " + p.value())
                .toList();
    }

    @Test
    void numbersAndTextsAreRead() throws IOException {
        Tally tally = read("1,1,PSME,30.5,20\n2,1,PSME,25,", "");
        assertEquals(List.of(), tally.problems());
        assertEquals(List.of(30.5, 25.0), trees(tally).stream().map(Tree::dbhCm).toList());
        assertEquals("1", tally.plots().get(0).id());
    }

    @Test
    void sharedTextsOfSeveralRunsAreOneText() throws IOException {
        String row = "<row r='2'><c r='A2'><v>1</v></c><c r='C2' t='s'><v>0</v></c><c r='D2'><v>30</v></c></row>";
        Tally tally = read(
                DESIGN,
                Workbooks.of(
                        Map.of("Trees", Workbooks.sheet(HEADER.strip()) + row),
                        "<si><r><rPr/><t>PS</t></r> <r><t>ME</t></r><rPh sb='0' eb='1'><t>x</t></rPh></si>"));
        assertEquals(List.of(), tally.problems());
        assertEquals("PSME", trees(tally).get(0).species());
    }

    @Test
    void numbersSavedInBinaryReadAsShown() throws IOException {
        // 0.1 + 0.2 in binary; and 25.4 as spreadsheets save it at times
        Tally tally = read(
                "",
                "<row r='3'><c r='A3'><v>1</v></c><c r='B3'><v>3.0E+0</v></c><c r='C3' t='str'><v>PSME</v></c>"
                        + "<c r='D3'><v>30.000000000000004</v></c><c r='E3' s='3'><v>25.399999999999999</v></c></row>");
        assertEquals(List.of(), tally.problems());
        assertEquals(30, trees(tally).get(0).dbhCm());
        assertEquals(25.4, trees(tally).get(0).height().metres());
        assertEquals("3", trees(tally).get(0).number());
    }

    @Test
    void rowNumbersAreThoseOfTheSpreadsheetAndEmptyRowsDoNotCount() throws IOException {
        Tally tally = read(
                "1,1,PSME,30,20\n\n",
                "<row r='900'><c r='A900'><v>2</v></c><c r='C900' t='str'><v>PSME</v></c></row>"
                        + "<row r='901'><c r='A901' s='1'/></row><row r='1048576'/>");
        assertEquals(List.of("tally.xlsx:900 dbh-missing refuse [dbh] "), problems(tally));
        assertEquals(2, tally.rows().in());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<c r='D3' s='1'><v>46244</v></c>|a date|2026-08-10",
                "<c r='D3' s='2'><v>46244</v></c>|a date|2026-08-10",
                "<c r='D3' t='d'><v>2026-08-10T00:00:00</v></c>|a date|2026-08-10T00:00:00",
                "<c r='D3' t='e'><v>#N/A</v></c>|error|#N/A",
                "<c r='D3' t='b'><v>1</v></c>|true or false|TRUE",
                "<c r='D3'><f>B3*2</f></c>|without its value|=B3*2",
                "<c r='D3'><f>B3*2</f><v></v></c>|without its value|=B3*2"
            })
    void cellsThatHoldNeitherNumberNorTextAreProblems(String cell, String words, String value) throws IOException {
        Tally tally = read("", "<row r='3'><c r='A3'><v>1</v></c><c r='C3' t='str'><v>PSME</v></c>" + cell + "</row>");
        Problem p = tally.problems().get(0);
        assertEquals(Rule.CELL_UNUSABLE, p.rule());
        assertEquals(3, p.row());
        assertEquals("dbh", p.column());
        assertEquals(value, p.value());
        assertTrue(p.detail().contains(words), p.detail());
        assertEquals(1, tally.rows().dropped());
    }

    @Test
    void cellsNotInUseMayHoldAnything() throws IOException {
        Tally tally = read(
                "",
                "<row r='3'><c r='A3'><v>1</v></c><c r='C3' t='str'><v>PSME</v></c><c r='D3'><v>30</v></c>"
                        + "<c r='G3' s='1'><v>46244</v></c><c r='H3'><f>NOW()</f></c></row>");
        assertEquals(List.of(), tally.problems());
    }

    @Test
    void savedValuesOfFormulasAreUsedAndStatedOnce() throws IOException {
        String rows = "<row r='3'><c r='A3'><v>1</v></c><c r='C3' t='str'><v>PSME</v></c><c r='D3'><f>B2*2.54</f>"
                + "<v>30.48</v></c></row>";
        Tally tally = read("", rows + rows.replace("3'", "4'"));
        assertEquals(List.of("tally.xlsx:0 formula-value keep [dbh] "), problems(tally));
        assertTrue(only(tally).contains("2 cells hold formulas, the first in row 3"), only(tally));
        assertEquals(30.48, trees(tally).get(1).dbhCm());
    }

    @Test
    void mergedCellsInUseAreAProblem() throws IOException {
        String rest = "<!--rest--><mergeCells><mergeCell ref='A2:A3'/><mergeCell ref='G1:H1'/></mergeCells>";
        Tally tally = read(DESIGN, Workbooks.of(Map.of("T", Workbooks.sheet(HEADER + "1,1,PSME,30,20\n,,,,") + rest)));
        assertEquals(List.of("tally.xlsx:0 cells-merged refuse [] A2:A3"), problems(tally));
        Tally kept = read(
                DESIGN.plus("[policy]\ncells-merged = \"keep\"\ncell-unusable = \"drop\""),
                Workbooks.of(Map.of(
                        "T",
                        Workbooks.sheet(HEADER + "1,1,PSME,30,20") + "<row r='5'><c r='A5' t='e'><v>#REF!</v></c></row>"
                                + rest)));
        assertEquals(
                List.of("tally.xlsx:5 cell-unusable drop [plot] #REF!", "tally.xlsx:0 cells-merged keep [] A2:A3"),
                problems(kept));
    }

    @Test
    void theSheetIsChosenByName() throws IOException {
        Map<String, String> sheets = new LinkedHashMap<>();
        sheets.put("Notes", Workbooks.sheet("anything"));
        sheets.put("Trees", Workbooks.sheet(HEADER + "1,1,PSME,30,20"));
        byte[] workbook = Workbooks.of(sheets);
        SmallDesign named = DESIGN.with("tally.xlsx\"", "tally.xlsx\"\nsheet = \"Trees\"");
        assertEquals(1, read(named, workbook).rows().used());
        assertTrue(only(read(named.with("\"Trees\"", "\"Tree\""), workbook)).contains("did you mean \"Trees\"?"));
        assertEquals(
                Rule.COLUMN_MISSING, read(DESIGN, workbook).problems().get(0).rule());
    }

    private static final String TWO_SHEETS = """
            schema = 1
            [cruise]
            name = "Two sheets"
            units = "metric"
            [selection]
            method = "stratified"
            [[stratum]]
            code = "N"
            area = 5
            [[stratum]]
            code = "S"
            area = 5
            [plot]
            kind = "fixed"
            area = 0.1
            [[tally]]
            file = "tally.xlsx"
            plots_sheet = "Plots"
            [tally.columns]
            plot = "plot"
            stratum = "stratum"
            species = "species"
            dbh = { name = "dbh", unit = "cm" }
            """;

    private static byte[] twoSheets(String plots, String trees) {
        Map<String, String> sheets = new LinkedHashMap<>();
        sheets.put("Plots", Workbooks.sheet(plots));
        sheets.put("Trees", Workbooks.sheet(trees));
        return Workbooks.of(sheets);
    }

    @Test
    void plotsWithoutTreesComeFromTheSheetOfPlots() throws IOException {
        Tally tally = read(
                new SmallDesign(TWO_SHEETS),
                twoSheets("plot,stratum,date\n1,N,x\n2,S,\n3,N,", "plot,species,dbh\n1,PSME,30\n2,PSME,20"));
        assertEquals(List.of(), tally.problems());
        assertEquals(
                List.of("1 N 1", "2 S 1", "3 N 0"),
                tally.plots().stream()
                        .map(p -> p.id() + " " + p.stratum() + " " + p.trees().size())
                        .toList());
        assertEquals(5, tally.rows().in(), "rows of both sheets");
    }

    @Test
    void sheetsThatDoNotFitAreProblems() throws IOException {
        Tally tally = read(
                new SmallDesign(TWO_SHEETS),
                twoSheets("plot,stratum\n1,N\n1,N\n2,S\n3,X", "plot,species,dbh\n1,PSME,30\n4,PSME,20"));
        assertEquals(
                List.of(
                        "tally.xlsx [Plots]:3 row-repeated refuse [plot] 1",
                        "tally.xlsx [Plots]:5 stratum-unknown refuse [stratum] X",
                        "tally.xlsx:3 plot-not-listed refuse [plot] 4",
                        "tally.xlsx:3 stratum-unknown refuse [stratum] "),
                problems(tally));
        assertEquals(6, tally.rows().in());
        assertEquals(3, tally.rows().dropped());
    }

    @Test
    void filesThatAreNoWorkbooksSayWhatTheyAre() throws IOException {
        byte[] old = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0};
        assertTrue(only(read(DESIGN, old)).contains("old kind"));
        assertTrue(only(read(DESIGN, new byte[0])).contains("empty"));
        assertTrue(only(read(DESIGN, "plot,dbh\n".getBytes(StandardCharsets.UTF_8)))
                .contains("no workbook"));
        assertTrue(only(read(DESIGN, Workbooks.zip(Map.of("a.txt", "a")))).contains("missing"));
        Files.write(folder.resolve("tally.csv"), Workbooks.ofCsv(HEADER));
        assertTrue(only(TallyReader.read(new SmallDesign().valid(folder))).contains(".xlsx"));
    }

    @Test
    void aTruncatedWorkbookIsDamaged() throws IOException {
        byte[] whole = Workbooks.ofCsv(HEADER + "1,1,PSME,30,20");
        assertTrue(only(read(DESIGN, Arrays.copyOf(whole, whole.length / 2))).contains("damaged"));
    }

    @Test
    void aPartThatUnpacksToFarTooMuchIsRefused() {
        assertTimeout(QUICK, () -> {
            byte[] bomb = Workbooks.ofCsv(HEADER + "1,1,PSME,30," + "A".repeat(60_000_000));
            assertTrue(bomb.length < 200_000, "packed " + bomb.length);
            String detail = only(read(DESIGN, bomb));
            assertTrue(detail.contains("more letters") || detail.contains("unpacks"), detail);
            byte[] rows = Workbooks.of(Map.of("T", Workbooks.sheet(HEADER.strip()) + "<row/>".repeat(10_000_000)));
            detail = only(read(DESIGN, rows));
            assertTrue(detail.contains("unpacks") || detail.contains("damaged"), detail);
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<row r='2'><c r='ZZZZZZ2'><v>1</v></c></row>|out of place",
                "<row r='2'><c r='B2'><v>1</v></c><c r='A2'><v>1</v></c></row>|out of place",
                "<row r='1'/>|behind row 1",
                "<row r='9999999'/>|9999999",
                "<row r='x'/>|damaged",
                "<row r='2'><c r='A2' t='s'><v>7</v></c></row>|not there",
                "<row r='2'><c r='A2'></row>|damaged"
            })
    void sheetsOutOfOrderAreRefused(String row, String words) throws IOException {
        Tally tally = read(DESIGN, Workbooks.of(Map.of("T", Workbooks.sheet(HEADER.strip()) + row)));
        assertTrue(only(tally).contains(words), only(tally));
        assertTrue(tally.isRefused());
    }

    @Test
    void nothingIsPrintedBesideTheProblem() throws IOException {
        java.io.PrintStream screen = System.err;
        java.io.ByteArrayOutputStream printed = new java.io.ByteArrayOutputStream();
        System.setErr(new java.io.PrintStream(printed, true, StandardCharsets.UTF_8));
        try {
            for (String text : List.of("\u00E9", "<", "&x;", "\u0001", "</v>")) {
                Map<String, String> parts = new LinkedHashMap<>();
                parts.put("xl/_rels/workbook.xml.rels", "<Relationships/>");
                parts.put("xl/workbook.xml", "<a>" + text);
                byte[] bytes = Workbooks.zip(parts, StandardCharsets.ISO_8859_1);
                assertTrue(only(read(DESIGN, bytes)).contains("damaged"));
            }
        } finally {
            System.setErr(screen);
        }
        assertEquals("", printed.toString(StandardCharsets.UTF_8));
    }

    @Test
    void entitiesAreNotRead() throws IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("xl/_rels/workbook.xml.rels", "<Relationships/>");
        parts.put("xl/workbook.xml", "<!DOCTYPE a [<!ENTITY x SYSTEM 'file:///etc/hostname'>]><a>&x;</a>");
        assertTrue(read(DESIGN, Workbooks.zip(parts)).isRefused());
    }
}
