package quadmean.field;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** Reads a sheet row by row; only the row in hand is kept. */
final class SheetReader {
    /** What a sheet holds at most. */
    private static final long MOST_ROWS = 1_048_576;

    private static final int MOST_COLUMNS = 16_384;
    private static final int MOST_MERGED = 1_000;
    private static final double MOST_PLAIN = 1e15;
    /** Numbers are saved in binary; fifteen digits are what the spreadsheet shows at most. */
    private static final MathContext DIGITS = new MathContext(15);

    private final Workbook workbook;
    private final XMLStreamReader xml;
    private final char decimal;
    private final List<String> merged = new ArrayList<>();
    private long last;

    SheetReader(Workbook workbook, String sheet, char decimal) throws IOException, XMLStreamException {
        this.workbook = workbook;
        this.xml = workbook.open(sheet);
        this.decimal = decimal;
    }

    /** Ranges of merged cells, such as A2:A9; known when all rows are read. */
    List<String> merged() {
        return merged;
    }

    /** The next row that holds anything; null behind the last. */
    @Nullable
    SheetRow next() throws WorkbookException, XMLStreamException {
        while (xml.hasNext()) {
            if (xml.next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            if (xml.getLocalName().equals("row")) {
                SheetRow row = row();
                if (!row.isBlank()) {
                    return row;
                }
            } else if (xml.getLocalName().equals("mergeCell") && merged.size() < MOST_MERGED) {
                String range = WorkbookZip.attribute(xml, "ref");
                merged.add(range == null ? "" : range);
            }
        }
        return null;
    }

    private SheetRow row() throws WorkbookException, XMLStreamException {
        String written = WorkbookZip.attribute(xml, "r");
        long number = written == null ? last + 1 : Workbook.number(written);
        if (number <= last || number > MOST_ROWS) {
            throw new WorkbookException("row " + written + " comes behind row " + last + "; the sheet is damaged");
        }
        last = number;
        SheetRow row = new SheetRow(number);
        int column = -1;
        while (!isEnd("row")) {
            if (xml.isStartElement() && xml.getLocalName().equals("c")) {
                String place = WorkbookZip.attribute(xml, "r");
                int next = place == null ? column + 1 : column(place);
                if (next <= column || next >= MOST_COLUMNS) {
                    throw new WorkbookException("row " + number + " has a cell " + place + " out of place");
                }
                column = next;
                cell(row, column);
            }
        }
        return row;
    }

    private boolean isEnd(String element) throws XMLStreamException {
        return xml.next() == XMLStreamConstants.END_ELEMENT
                && xml.getLocalName().equals(element);
    }

    private void cell(SheetRow row, int column) throws WorkbookException, XMLStreamException {
        String type = WorkbookZip.attribute(xml, "t");
        String style = WorkbookZip.attribute(xml, "s");
        boolean date = style != null && workbook.isDate(Workbook.number(style));
        String value = "";
        String formula = null;
        while (!isEnd("c")) {
            if (xml.isStartElement()) {
                switch (xml.getLocalName()) {
                    case "v", "is" -> value = CellText.read(xml, xml.getLocalName());
                    case "f" -> formula = CellText.read(xml, "f");
                    default -> {
                        // extensions hold no value
                    }
                }
            }
        }
        if (formula != null && value.isBlank()) {
            row.put(column, "=" + formula);
            row.remark(column, "the formula was saved without its value; open the workbook, save it again");
            return;
        }
        if (formula != null) {
            row.formula(column);
        }
        put(row, column, type == null ? "n" : type, value, date);
    }

    private void put(SheetRow row, int column, String type, String value, boolean date) throws WorkbookException {
        switch (type) {
            case "s" -> row.put(column, workbook.text(Workbook.number(value.strip())));
            case "str", "inlineStr" -> row.put(column, value);
            case "e" -> {
                row.put(column, value);
                row.remark(column, "the cell shows the error " + value);
            }
            case "b" -> {
                row.put(column, value.strip().equals("1") ? "TRUE" : "FALSE");
                row.remark(column, "the cell holds true or false");
            }
            default -> number(row, column, value.strip(), date || type.equals("d"));
        }
    }

    private void number(SheetRow row, int column, String value, boolean date) {
        if (date && !value.isEmpty()) {
            row.put(column, day(value));
            row.remark(
                    column, "the cell is a date; spreadsheets make dates of entries such as 8-10, format it as text");
        } else {
            row.put(column, plain(value).replace('.', decimal));
        }
    }

    private static String day(String value) {
        try {
            double days = Double.parseDouble(value);
            return Math.abs(days) < 1e6
                    ? LocalDate.of(1899, 12, 30).plusDays((long) days).toString()
                    : value;
        } catch (NumberFormatException e) {
            return value;
        }
    }

    private static String plain(String value) {
        try {
            double number = Double.parseDouble(value);
            boolean isPlain = Math.abs(number) < MOST_PLAIN && (number == 0 || Math.abs(number) > 1 / MOST_PLAIN);
            return isPlain
                    ? new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString()
                    : value;
        } catch (NumberFormatException e) {
            return value;
        }
    }

    /** The number of a column from 0, of a cell such as AB12; beyond all columns if it is none. */
    static int column(String cell) {
        int column = 0;
        int i = 0;
        while (i < cell.length() && cell.charAt(i) >= 'A' && cell.charAt(i) <= 'Z' && column < MOST_COLUMNS) {
            column = 26 * column + cell.charAt(i) - 'A' + 1;
            i++;
        }
        return i == 0 ? MOST_COLUMNS : column - 1;
    }
}
