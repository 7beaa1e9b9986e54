package quadmean.field;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import quadmean.design.TallyFile;
import quadmean.model.Rule;

/** Streams the rows of a CSV tally; nothing of the file is kept. */
final class CsvRows {
    private final TallyFile declared;
    private final FileProblems problems;

    CsvRows(TallyFile declared, FileProblems problems) {
        this.declared = declared;
        this.problems = problems;
    }

    /**
     * Hands each data row to a consumer, in file order.
     *
     * @throws IOException if the file is missing or cannot be read
     */
    void forEach(Consumer<Row> rows) throws IOException {
        Optional<Charset> charset = new EncodingFinder(declared.path(), problems)
                .find(declared.format().encoding());
        if (charset.isEmpty()) {
            return;
        }
        String notText = "the file is not text in " + charset.get();
        try (BufferedReader reader = open(declared.path(), charset.get())) {
            Optional<TallyFile> file = CsvFormat.settle(declared, TextSample.take(reader), problems);
            if (file.isPresent()) {
                read(file.get(), new QuoteWatch(reader, file.get().separator()), rows);
            }
        } catch (CharacterCodingException e) {
            problems.unreadable(notText);
        } catch (UncheckedIOException e) {
            if (!(e.getCause() instanceof CharacterCodingException)) {
                throw e.getCause();
            }
            problems.unreadable(notText);
        } catch (CsvParseException e) {
            problems.unreadable(explain(e));
        }
    }

    /** Opens the file behind its byte order mark; letters that are none of the character set end the reading. */
    static BufferedReader open(Path file, Charset charset) throws IOException {
        BufferedReader reader =
                new BufferedReader(new InputStreamReader(Files.newInputStream(file), charset.newDecoder()));
        try {
            reader.mark(1);
            if (reader.read() != '\uFEFF') {
                reader.reset();
            }
        } catch (IOException e) {
            reader.close();
            throw e;
        }
        return reader;
    }

    private void read(TallyFile file, QuoteWatch reader, Consumer<Row> rows) throws IOException {
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(file.separator())
                .detectBomHeader(false)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(reader)) {
            Iterator<CsvRecord> records = csv.iterator();
            if (!records.hasNext()) {
                problems.unreadable("the file is empty");
                return;
            }
            CsvRecord first = records.next();
            if (isCutOff(records, reader, first)) {
                return;
            }
            List<String> names = first.getFields().stream().map(String::strip).toList();
            Optional<Header> header = Header.match(file, names, first.getStartingLineNumber(), problems);
            while (header.isPresent() && records.hasNext()) {
                CsvRecord r = records.next();
                if (!isCutOff(records, reader, r)) {
                    rows.accept(row(header.get(), r));
                }
            }
        }
    }

    private static Row row(Header header, CsvRecord r) {
        boolean whole = r.getFieldCount() == header.size();
        return new Row(
                header.file(),
                r.getStartingLineNumber(),
                r.getFields(),
                whole ? header.position() : Map.of(),
                List.of(),
                header.names());
    }

    /** Whether a record is the last and its quotes are open at the end, which is then noted. */
    private boolean isCutOff(Iterator<CsvRecord> records, QuoteWatch reader, CsvRecord record) {
        boolean open = !records.hasNext() && reader.isOpen();
        if (open) {
            String detail =
                    "a quote opened in this row is never closed, and takes in the rest of the file; close it, or"
                            + " take it out";
            problems.add(Rule.FILE_UNREADABLE, record.getStartingLineNumber(), "", "", detail);
        }
        return open;
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
