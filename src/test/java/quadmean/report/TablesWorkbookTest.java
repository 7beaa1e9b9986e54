package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import quadmean.chart.ChartSet;
import quadmean.chart.SampleCruise;

/** The workbook, read by Apache POI, which shares no code with its writer. */
class TablesWorkbookTest {
    private static byte[] bytes(Content content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        content.writeTo(out);
        return out.toByteArray();
    }

    private static byte[] small(List<String> header, List<String> row) throws IOException {
        return bytes(TablesWorkbook.of("A cruise", Map.of("a-table.csv", Csv.of(header, Stream.of(row)))));
    }

    @Test
    void everyTableComesBackCellByCell() throws IOException {
        Map<String, Content> files =
                CruiseOutputs.of(SampleCruise.us(), List.of(), new ChartSet(List.of(), "no charts in this test"));
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes(files.get("tables.xlsx"))))) {
            int sheet = 0;
            for (Content content : files.values()) {
                if (content instanceof Csv.Table table) {
                    assertSame(table, book.getSheetAt(sheet++));
                }
            }
            assertEquals(sheet, book.getNumberOfSheets());
            assertTrue(sheet >= 9, sheet + " sheets");
        }
    }

    private static void assertSame(Csv.Table table, XSSFSheet sheet) {
        assertEquals(table.rows().size(), sheet.getLastRowNum(), sheet.getSheetName());
        assertEquals(1, sheet.getPaneInformation().getHorizontalSplitPosition(), "frozen headings");
        for (int c = 0; c < table.header().size(); c++) {
            assertEquals(table.header().get(c), sheet.getRow(0).getCell(c).getStringCellValue());
            for (int r = 0; r < table.rows().size(); r++) {
                assertSame(table.rows().get(r).get(c), sheet.getRow(r + 1), c);
            }
        }
    }

    private static void assertSame(String expected, Row row, int column) {
        Cell cell = row == null ? null : row.getCell(column);
        if (cell == null) {
            assertEquals("", expected);
        } else if (cell.getCellType() == CellType.NUMERIC) {
            assertEquals(Double.parseDouble(expected), cell.getNumericCellValue(), 0);
        } else {
            assertEquals(expected, cell.getStringCellValue());
        }
    }

    @Test
    void plotsThatLookLikeNumbersStayText() throws IOException {
        byte[] book = small(List.of("plot", "mean_ft3", "reason"), List.of("007", "1.5E-4", "=1+1"));
        try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(book))) {
            Row row = read.getSheet("a table").getRow(1);
            assertEquals("007", row.getCell(0).getStringCellValue());
            assertEquals(1.5e-4, row.getCell(1).getNumericCellValue(), 0);
            assertEquals(CellType.STRING, row.getCell(2).getCellType(), "never a formula");
        }
    }

    @Test
    void theSameTablesGiveTheSameBytes() throws IOException, InterruptedException {
        byte[] first = small(List.of("a"), List.of("1"));
        Thread.sleep(5); // a time of writing would differ by now
        assertArrayEquals(first, small(List.of("a"), List.of("1")));
    }
}
