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
            read(reader, rows);
        } catch (CharacterCodingException e) {
            unreadable("the file is not text in UTF-8");
        } catch (UncheckedIOException e) {
            if (!(e.getCause() instanceof CharacterCodingException)) {
                throw e.getCause();
            }
            unreadable("the file is not text in UTF-8");
        } catch (CsvParseException e) {
            unreadable("the file is no CSV that can be read: " + causes(e));
        }
    }

    private void read(BufferedReader reader, Consumer<Row> rows) throws IOException {
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
            List<String> header =
                    records.next().getFields().stream().map(CsvRows::clean).toList();
            Map<ColumnRole, Integer> position = locate(header);
            if (position.size() < file.columns().size()) {
                return;
            }
            while (records.hasNext()) {
                CsvRecord r = records.next();
                if (r.getFieldCount() == header.size()) {
                    rows.accept(new Row(file, r.getStartingLineNumber(), r.getFields(), position));
                } else {
                    rows.accept(new Row(file, r.getStartingLineNumber(), r.getFields(), Map.of()));
                }
            }
        }
    }

    /** A header without the byte order mark that some programs put before it. */
    private static String clean(String name) {
        return (name.startsWith("\uFEFF") ? name.substring(1) : name).strip();
    }

    private Map<ColumnRole, Integer> locate(List<String> header) {
        Map<ColumnRole, Integer> position = new EnumMap<>(ColumnRole.class);
        file.columns().forEach((role, spec) -> {
            int at = header.indexOf(spec.name());
            if (at < 0) {
                String hint = Nearest.to(spec.name(), header)
                        .map(n -> "did you mean \"" + n + "\"?")
                        .orElse("the header has " + String.join(", ", header));
                missing(spec.name(), "no column \"" + spec.name() + "\" for " + role.key() + "; " + hint);
            } else if (header.lastIndexOf(spec.name()) != at) {
                missing(spec.name(), "the header has \"" + spec.name() + "\" twice");
            } else {
                position.put(role, at);
            }
        });
        return position;
    }

    private void missing(String column, String detail) {
        problems.accept(new Problem(name(), 1, column, "", Rule.COLUMN_MISSING, Policy.REFUSE, detail));
    }

    private void unreadable(String detail) {
        problems.accept(new Problem(name(), 0, "", "", Rule.FILE_UNREADABLE, Policy.REFUSE, detail));
    }

    private String name() {
        return file.path().getFileName().toString();
    }

    private static String causes(Throwable e) {
        Throwable cause = e.getCause();
        return e.getMessage() + (cause == null ? "" : " (" + cause.getMessage() + ")");
    }
}
