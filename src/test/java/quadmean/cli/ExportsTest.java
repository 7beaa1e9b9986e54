package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.support.SmallDesign;

/** Tables read back by Apache Commons CSV and Apache POI, which share no code with what wrote them. */
class ExportsTest {
    private static final String NASTY = "=CMD|'/C calc'!A0";

    @TempDir
    Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    private static List<List<String>> csv(Path file) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
            for (CSVRecord row : parser) {
                rows.add(row.toList());
            }
        }
        return rows;
    }

    private List<Path> tables() throws IOException {
        try (Stream<Path> files = Files.list(out())) {
            return files.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
        }
    }

    /** Each sheet holds the table of its name cell by cell: numbers to the last digit as numbers, all else as text. */
    private void workbookHoldsTheTables() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(out().resolve("tables.xlsx")))) {
            assertEquals(tables().size(), book.getNumberOfSheets());
            for (Path file : tables()) {
                String name = file.getFileName().toString().replace(".csv", "").replace('-', ' ');
                XSSFSheet sheet = book.getSheet(name);
                assertEquals(1, sheet.getPaneInformation().getHorizontalSplitPosition(), "frozen headings of " + name);
                List<List<String>> rows = csv(file);
                assertEquals(rows.size() - 1, sheet.getLastRowNum(), name);
                for (int r = 0; r < rows.size(); r++) {
                    for (int c = 0; c < rows.get(r).size(); c++) {
                        assertSame(rows.get(r).get(c), sheet.getRow(r), c, name + " " + r);
                    }
                }
            }
        }
    }

    private static void assertSame(String expected, Row row, int column, String where) {
        Cell cell = row == null ? null : row.getCell(column);
        if (cell == null) {
            assertEquals("", expected, where);
        } else if (cell.getCellType() == CellType.NUMERIC) {
            assertEquals(Double.parseDouble(expected), cell.getNumericCellValue(), 0, where);
        } else {
            assertEquals(CellType.STRING, cell.getCellType(), where);
            String text = cell.getStringCellValue();
            assertTrue(expected.equals(text) || expected.equals("'" + text), where + ": " + expected + " and " + text);
        }
    }

    @Test
    void tablesOfTheDemonstrationComeBackWhole() throws IOException {
        Run.of("estimate", "designs/demo.toml", "--out", out()).assertCode(0);
        workbookHoldsTheTables();
        List<List<String>> trees = csv(out().resolve("trees.csv"));
        List<String> numbers = List.of("dbh_cm", "height_m", "volume_ft3", "green_kg");
        for (List<String> row : trees.subList(1, trees.size())) {
            for (String column : numbers) {
                String cell = row.get(trees.get(0).indexOf(column));
                assertTrue(cell.isEmpty() || Double.isFinite(Double.parseDouble(cell)), column + " is " + cell);
            }
        }
    }

    /** Species, stratum, plot and a broken cell that a spreadsheet would run. */
    @Test
    void noCellIsAFormula() throws IOException {
        String tally =
                Run.TALLY.replace("PSME", NASTY).replace("3,1,", "+3,1,") + "+3,2," + NASTY + ",\"@SUM(1,2)\",9\n";
        SmallDesign design = new SmallDesign()
                .with("[species.PSME]", "[species.\"" + NASTY + "\"]")
                .plus("[policy]\nnumber-unreadable = \"drop\"\n");
        Run.of("estimate", Run.cruise(folder, design, tally), "--out", out()).assertCode(0);
        int guarded = 0;
        for (Path file : tables()) {
            for (List<String> row : csv(file)) {
                for (String cell : row) {
                    assertFalse(
                            cell.matches("(?s)[=+@\t\r].*") || (cell.startsWith("-") && !isNumber(cell)),
                            file.getFileName() + ": " + cell);
                    guarded += cell.startsWith("'") ? 1 : 0;
                }
            }
        }
        assertTrue(guarded > 10, guarded + " guarded cells");
        assertTrue(csv(out().resolve("problems.csv")).get(1).contains("'@SUM(1,2)"));
        assertTrue(csv(out().resolve("trees.csv")).get(1).contains("'" + NASTY));
        workbookHoldsTheTables();
        assertTrue(
                Files.readString(out().resolve("estimate.json")).contains("\"" + NASTY + "\""), "JSON needs no guard");
    }

    private static boolean isNumber(String cell) {
        try {
            Double.parseDouble(cell);
            return true;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    /** A number below zero stays one, and what the program reads again is never changed. */
    @Test
    void numbersAndFilesToReadAgainStayAsTheyAre() throws IOException {
        String tally = Run.TALLY.replace("PSME", NASTY) + "3,2," + NASTY + ",-5,9\n";
        SmallDesign design = new SmallDesign().with("[species.PSME]", "[species.\"" + NASTY + "\"]");
        Run run = Run.of("check", Run.cruise(folder, design, tally), "--copy", "--out", out());
        assertTrue(csv(out().resolve("problems.csv")).get(1).contains("-5"), run.err());
        assertTrue(csv(out().resolve("to-mend-tally.csv")).get(1).contains(NASTY), run.err());
    }
}
