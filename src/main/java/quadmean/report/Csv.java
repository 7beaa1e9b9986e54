package quadmean.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** CSV files in UTF-8, comma-separated, with a header line; numbers unrounded, empty where unknown. */
final class Csv {
    /** A text that begins so is taken for a formula by spreadsheets (common practice, no source). */
    private static final String FORMULA = "=+-@\t\r";

    private static final Pattern NUMBER = Pattern.compile("-?(\\d+(\\.\\d+)?(E-?\\d+)?|Infinity)");

    /** Things whose rows one processor makes at a time. */
    private static final int PART = 64;

    /** Texts that are held at the same time. */
    private static final int PARTS = 32;

    private Csv() {}

    /** Who reads a table. */
    enum Reader {
        /** People, in a spreadsheet: a text that would be taken for a formula begins with an apostrophe. */
        SPREADSHEET,
        /** This program, as a tally or a list of plots: every text as it is. */
        PROGRAM
    }

    /** A table that writes itself as CSV, and that a workbook takes as a sheet. */
    record Table(List<String> header, List<List<String>> rows, Reader reader) implements Content {
        @Override
        public void writeTo(OutputStream out) throws IOException {
            // left open: the stream belongs to the caller
            CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out, StandardCharsets.UTF_8);
            csv.writeRecord(header);
            for (List<String> row : rows) {
                csv.writeRecord(
                        reader == Reader.PROGRAM
                                ? row
                                : row.stream().map(Csv::guarded).toList());
            }
            csv.flush();
        }
    }

    static Content of(List<String> header, Stream<List<String>> rows) {
        return new Table(List.copyOf(header), rows.toList(), Reader.SPREADSHEET);
    }

    /** A table that this program reads again. */
    static Content toReadAgain(List<String> header, Stream<List<String>> rows) {
        return new Table(List.copyOf(header), rows.toList(), Reader.PROGRAM);
    }

    /**
     * Writes a table of any length, which is never there as a whole: all processors make the text of some rows each, which then goes out
     * in order.
     *
     * @param out left open: the stream belongs to the caller
     * @param things number of things that rows are of
     * @param rows the rows of a thing
     */
    static void writeTo(OutputStream out, List<String> header, int things, IntFunction<List<List<String>>> rows)
            throws IOException {
        out.write(text(Stream.of(header)));
        for (int from = 0; from < things; from += PARTS * PART) {
            int parts = Math.min(PARTS, (things - from + PART - 1) / PART);
            int first = from;
            List<byte[]> texts = IntStream.range(0, parts)
                    .parallel()
                    .mapToObj(p -> text(ofPart(first + p * PART, things, rows)))
                    .toList();
            for (byte[] text : texts) {
                out.write(text);
            }
        }
    }

    private static Stream<List<String>> ofPart(int from, int things, IntFunction<List<List<String>>> rows) {
        return IntStream.range(from, Math.min(things, from + PART))
                .mapToObj(rows)
                .flatMap(List::stream);
    }

    private static byte[] text(Stream<List<String>> rows) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 15);
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(bytes, StandardCharsets.UTF_8);
        rows.forEach(csv::writeRecord);
        try {
            csv.flush();
        } catch (IOException e) {
            throw new UncheckedIOException("memory takes all that is written to it", e);
        }
        return bytes.toByteArray();
    }

    /** A cell that no spreadsheet takes for a formula; numbers stay as they are. */
    static String guarded(String cell) {
        boolean isFormula = !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0 && !isNumber(cell);
        return isFormula ? "'" + cell : cell;
    }

    /** Whether a cell is a number as {@link #number} writes it. */
    static boolean isNumber(String cell) {
        return NUMBER.matcher(cell).matches();
    }

    /** The same table with the seed of everything random in a last column. */
    static Content seeded(Content table, long seed) {
        Table t = (Table) table;
        return new Table(
                with(t.header(), "seed"),
                t.rows().stream().map(r -> with(r, Long.toString(seed))).toList(),
                t.reader());
    }

    private static List<String> with(List<String> cells, String last) {
        return Stream.concat(cells.stream(), Stream.of(last)).toList();
    }

    /** All digits of a number; empty for NaN. */
    static String number(double value) {
        return Double.isNaN(value) ? "" : Double.toString(value);
    }
}
