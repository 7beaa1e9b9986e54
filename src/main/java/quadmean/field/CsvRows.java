package quadmean.field;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import quadmean.design.ColumnRole;
import quadmean.design.Nearest;
import quadmean.design.TallyFile;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** Streams the rows of a CSV tally; nothing of the file is kept. */
final class CsvRows {
    private final TallyFile file;
    private final Consumer<Problem> problems;

    CsvRows(TallyFile file, Consumer<Problem> problems) {
        this.file = file;
        this.problems = problems;
    }

    /**
     * Hands each data row to a consumer, in file order.
     *
     * @throws IOException if the file is missing or cannot be read
     */
    void forEach(Consumer<Row> rows) throws IOException {
        if (Files.isDirectory(file.path())) {
            unreadable("this is a folder");
            return;
        }
        try (BufferedReader reader = Files.newBufferedReader(file.path())) {
            skipMark(reader);
            read(new QuoteWatch(reader, file.separator()), rows);
        } catch (CharacterCodingException e) {
            unreadable("the file is not text in UTF-8");
        } catch (UncheckedIOException e) {
            if (!(e.getCause() instanceof CharacterCodingException)) {
                throw e.getCause();
            }
            unreadable("the file is not text in UTF-8");
        } catch (CsvParseException e) {
            unreadable(explain(e));
        }
    }

    private void read(QuoteWatch reader, Consumer<Row> rows) throws IOException {
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(file.separator())
                .detectBomHeader(false)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(reader)) {
            Iterator<CsvRecord> records = csv.iterator();
            if (!records.hasNext()) {
                unreadable("the file is empty");
                return;
            }
            CsvRecord first = records.next();
            List<String> header = first.getFields().stream().map(String::strip).toList();
            if (isCutOff(records, reader, first)) {
                return;
            }
            Map<ColumnRole, Integer> position = locate(header, first.getStartingLineNumber());
            if (position.size() < file.columns().size()) {
                return;
            }
            while (records.hasNext()) {
                CsvRecord r = records.next();
                if (!isCutOff(records, reader, r)) {
                    boolean whole = r.getFieldCount() == header.size();
                    rows.accept(new Row(file, r.getStartingLineNumber(), r.getFields(), whole ? position : Map.of()));
                }
            }
        }
    }

    /** Whether a record is the last and its quotes are open at the end, which is then noted. */
    private boolean isCutOff(Iterator<CsvRecord> records, QuoteWatch reader, CsvRecord record) {
        boolean open = !records.hasNext() && reader.isOpen();
        if (open) {
            String detail =
                    "a quote opened in this row is never closed, and takes in the rest of the file; close it, or"
                            + " take it out";
            problems.accept(new Problem(
                    name(), record.getStartingLineNumber(), "", "", Rule.FILE_UNREADABLE, Policy.REFUSE, detail));
        }
        return open;
    }

    /** Skips the byte order mark that some programs put before the header. */
    private static void skipMark(BufferedReader reader) throws IOException {
        reader.mark(1);
        if (reader.read() != '\uFEFF') {
            reader.reset();
        }
    }

    private Map<ColumnRole, Integer> locate(List<String> header, long line) {
        Map<ColumnRole, Integer> position = new EnumMap<>(ColumnRole.class);
        file.columns().forEach((role, spec) -> {
            int at = header.indexOf(spec.name());
            if (at < 0) {
                String hint = Nearest.to(spec.name(), header)
                        .map(n -> "did you mean \"" + n + "\"?")
                        .orElse("the header has " + String.join(", ", header));
                missing(line, spec.name(), "no column \"" + spec.name() + "\" for " + role.key() + "; " + hint);
            } else if (header.lastIndexOf(spec.name()) != at) {
                missing(line, spec.name(), "the header has \"" + spec.name() + "\" twice");
            } else {
                position.put(role, at);
            }
        });
        return position;
    }

    private void missing(long line, String column, String detail) {
        problems.accept(new Problem(name(), line, column, "", Rule.COLUMN_MISSING, Policy.REFUSE, detail));
    }

    private void unreadable(String detail) {
        problems.accept(new Problem(name(), 0, "", "", Rule.FILE_UNREADABLE, Policy.REFUSE, detail));
    }

    private String name() {
        return file.name();
    }

    /** The library's message: it says in which line a record began, and its cause what is wrong there. */
    private static String explain(CsvParseException e) {
        String cause = e.getCause() == null ? "" : String.valueOf(e.getCause().getMessage());
        return cause.contains("buffer size")
                ? "a field is longer than 16 million letters; a quote may have been opened and not closed"
                : "the file is no CSV that can be read: " + e.getMessage()
                        + (cause.isEmpty() ? "" : " (" + cause + ")");
    }
}
