package quadmean.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** CSV files in UTF-8, comma-separated, with a header line; numbers unrounded, empty where unknown. */
final class Csv {
    private Csv() {}

    static Content of(List<String> header, Stream<List<String>> rows) {
        List<List<String>> all = rows.toList();
        return out -> {
            // left open: the stream belongs to the caller
            CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out, StandardCharsets.UTF_8);
            csv.writeRecord(header);
            all.forEach(csv::writeRecord);
            csv.flush();
        };
    }

    /** All digits of a number; empty for NaN. */
    static String number(double value) {
        return Double.isNaN(value) ? "" : Double.toString(value);
    }
}
