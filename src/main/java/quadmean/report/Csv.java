package quadmean.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** CSV files in UTF-8, comma-separated, with a header line; numbers unrounded, empty where unknown. */
final class Csv {
    private Csv() {}

    /** A table that writes itself as CSV, and that a workbook takes as a sheet. */
    record Table(List<String> header, List<List<String>> rows) implements Content {
        @Override
        public void writeTo(OutputStream out) throws IOException {
            // left open: the stream belongs to the caller
            CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out, StandardCharsets.UTF_8);
            csv.writeRecord(header);
            rows.forEach(csv::writeRecord);
            csv.flush();
        }
    }

    static Content of(List<String> header, Stream<List<String>> rows) {
        return new Table(List.copyOf(header), rows.toList());
    }

    /** All digits of a number; empty for NaN. */
    static String number(double value) {
        return Double.isNaN(value) ? "" : Double.toString(value);
    }
}
