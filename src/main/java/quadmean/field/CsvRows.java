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
            Map<ColumnRole, Integer> position = locate(header, first.getStartingLineNumber());
            if (position.size() < file.columns().size()) {
                return;
            }
            long line = first.getStartingLineNumber();
            while (records.hasNext()) {
                CsvRecord r = records.next();
                line = r.getStartingLineNumber();
                rows.accept(
                        new Row(file, line, r.getFields(), r.getFieldCount() == header.size() ? position : Map.of()));
            }
            if (reader.isOpen()) {
                unreadable(
                        line,
                        "a quote opened in this row is never closed, and takes in the rest of the file; close"
                                + " it, or take it out");
            }
        }
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
        unreadable(0, detail);
    }

    private void unreadable(long line, String detail) {
        problems.accept(new Problem(name(), line, "", "", Rule.FILE_UNREADABLE, Policy.REFUSE, detail));
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
