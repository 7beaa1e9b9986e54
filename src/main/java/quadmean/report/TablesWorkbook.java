package quadmean.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.zip.Deflater;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** All tables of a run in one workbook, a sheet each: numbers as numbers, names as text, headings that stay in view. */
final class TablesWorkbook {
    /** Columns of names, which stay text even where each of them looks like a number. */
    private static final Set<String> NAMES =
            Set.of("plot", "number", "tree", "stratum", "species", "product", "log", "grade");

    /** The sheet that repeats what stands in the tally, which stays text but for the number of the row. */
    private static final String PROBLEMS = "problems";

    private static final int LONGEST_SHEET_NAME = 31;
    private static final int WIDEST = 40;

    private TablesWorkbook() {}

    /**
     * The tables among some files.
     *
     * @param title title of the workbook
     * @param files content by file name; what is no table is left out
     */
    static Content of(String title, Map<String, Content> files) {
        Map<String, Csv.Table> tables = new LinkedHashMap<>();
        files.forEach((name, content) -> {
            if (content instanceof Csv.Table table) {
                tables.put(sheetName(name), table);
            }
        });
        return out -> {
            // the writer's zip has no sizes ahead of its parts, so that it can only be read back from a file
            Path temporary = Files.createTempFile("quadmean", ".xlsx");
            try {
                write(title, tables, temporary);
                Timeless.copy(temporary, out);
            } finally {
                Files.delete(temporary);
            }
        };
    }

    private static void write(String title, Map<String, Csv.Table> tables, Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                Workbook book = new Workbook(out, "Quadmean", null)) {
            // read back at once, and compressed as it is copied
            book.setCompressionLevel(Deflater.NO_COMPRESSION);
            book.properties().setTitle(title);
            for (Map.Entry<String, Csv.Table> table : tables.entrySet()) {
                fill(book.newWorksheet(table.getKey()), table.getKey(), table.getValue());
            }
        }
    }

    private static String sheetName(String file) {
        String plain = file.replaceAll("\\.csv$", "").replace('-', ' ');
        return plain.substring(0, Math.min(plain.length(), LONGEST_SHEET_NAME));
    }

    private static void fill(Worksheet sheet, String name, Csv.Table table) {
        for (int c = 0; c < table.header().size(); c++) {
            sheet.value(0, c, table.header().get(c));
            sheet.style(0, c).bold().set();
            boolean isNumber = isNumber(name, table, c);
            int width = table.header().get(c).length();
            for (int r = 0; r < table.rows().size(); r++) {
                String cell = table.rows().get(r).get(c);
                if (!cell.isEmpty() && isNumber) {
                    sheet.value(r + 1, c, Double.valueOf(cell));
                } else if (!cell.isEmpty()) {
                    sheet.value(r + 1, c, cell);
                    width = Math.max(width, cell.length());
                }
            }
            sheet.width(c, Math.min(WIDEST, width + 2));
        }
        sheet.freezePane(0, 1);
    }

    private static boolean isNumber(String sheet, Csv.Table table, int column) {
        String header = table.header().get(column);
        if (NAMES.contains(header) || (sheet.equals(PROBLEMS) && !header.equals("row"))) {
            return false;
        }
        return table.rows().stream()
                .map(r -> r.get(column))
                .filter(s -> !s.isEmpty())
                .allMatch(s -> Csv.isNumber(s) && Double.isFinite(Double.parseDouble(s)));
    }
}
