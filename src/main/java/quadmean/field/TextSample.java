package quadmean.field;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;

/** The beginning of a text file, and what it shows of how the file is written. */
final class TextSample {
    private static final int LETTERS = 1 << 16;
    private static final int ROWS = 2_000;
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t', '|');

    private final String text;
    private final boolean whole;

    private TextSample(String text, boolean whole) {
        this.text = text;
        this.whole = whole;
    }

    /** Takes the sample and leaves the reader where it was. */
    static TextSample take(BufferedReader reader) throws IOException {
        reader.mark(LETTERS);
        char[] letters = new char[LETTERS];
        int n = 0;
        int more = 0;
        while (n < LETTERS && more >= 0) {
            more = reader.read(letters, n, LETTERS - n);
            n += Math.max(more, 0);
        }
        reader.reset();
        return new TextSample(new String(letters, 0, n), more < 0);
    }

    /** The separator that makes most of the header, by some measure of it; a comma if none is better. */
    char separator(ToLongFunction<List<String>> merit) {
        char best = ',';
        long most = -1;
        for (char separator : SEPARATORS) {
            long found = header(separator).map(merit::applyAsLong).orElse(0L);
            if (found > most) {
                best = separator;
                most = found;
            }
        }
        return best;
    }

    /** The header as it reads with a separator; empty in an empty file. */
    Optional<List<String>> header(char separator) {
        return lines(separator, 1).stream().map(Line::fields).findFirst();
    }

    /** Data rows of the sample; a row that it cuts off is left out. */
    List<Line> rows(char separator) {
        List<Line> records = lines(separator, ROWS);
        boolean cut = !whole && records.size() < ROWS;
        int end = Math.max(1, records.size() - (cut ? 1 : 0));
        return records.isEmpty() ? records : records.subList(1, end);
    }

    /**
     * A row of the sample.
     *
     * @param line line on which it starts
     * @param fields its fields without spaces around
     */
    record Line(long line, List<String> fields) {}

    private List<Line> lines(char separator, int most) {
        List<Line> records = new ArrayList<>();
        try (CsvReader<CsvRecord> csv = reader(separator)) {
            Iterator<CsvRecord> all = csv.iterator();
            while (records.size() < most && all.hasNext()) {
                CsvRecord r = all.next();
                records.add(new Line(
                        r.getStartingLineNumber(),
                        r.getFields().stream().map(String::strip).toList()));
            }
        } catch (CsvParseException | IOException e) {
            return records; // the reading of the whole file says what is wrong
        }
        return records;
    }

    private CsvReader<CsvRecord> reader(char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .detectBomHeader(false)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(text);
    }
}
