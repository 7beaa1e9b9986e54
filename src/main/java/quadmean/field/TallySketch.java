package quadmean.field;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import quadmean.design.TallyFile;
import quadmean.design.TallyFormat;
import quadmean.design.TomlText;
import quadmean.model.Problem;
import quadmean.model.Rule;

/**
 * Header and first rows of a tally that has no design yet.
 *
 * @param header names of its columns; empty if the file cannot be read
 * @param rows first rows, as texts without spaces around
 * @param settings keys of {@code [[tally]]} that the file shows, with their values in quotes
 * @param problems what was found of its form, and why it cannot be read
 */
record TallySketch(List<String> header, List<List<String>> rows, List<String> settings, List<Problem> problems) {
    private static final int MOST_ROWS = 2_000;

    /** Looks at a tally. */
    static TallySketch of(Path path) throws IOException {
        TallyFile file = new TallyFile(path, String.valueOf(path.getFileName()), TallyFormat.OPEN, Map.of());
        List<Problem> problems = new ArrayList<>();
        FileProblems log = new FileProblems(Rule::defaultPolicy, file.name(), problems::add);
        Optional<String> refused = TallyRows.refused(file);
        refused.ifPresent(log::unreadable);
        if (refused.isPresent()) {
            return new TallySketch(List.of(), List.of(), List.of(), problems);
        }
        TallySketch sketch =
                TallyRows.isNamedWorkbook(file) ? ofWorkbook(path, log, problems) : ofText(path, log, problems);
        sketch.title().ifPresent(said -> log.add(Rule.COLUMN_MISSING, 1, "", "", said));
        return sketch;
    }

    /** What to say where a title stands above the header: one name, and wider rows below. */
    private Optional<String> title() {
        boolean alone = filled(header) == 1;
        return alone && rows.stream().limit(5).anyMatch(r -> filled(r) > 2)
                ? Optional.of(
                        "its first row, \"" + String.join(" ", header).strip()
                                + "\", looks like a title and not like the names of columns; delete what stands above the names, in a copy")
                : Optional.empty();
    }

    private static long filled(List<String> fields) {
        return fields.stream().filter(f -> !f.isEmpty()).count();
    }

    private static TallySketch ofText(Path path, FileProblems log, List<Problem> problems) throws IOException {
        Optional<Charset> charset = new EncodingFinder(path, log).find(null);
        if (charset.isEmpty()) {
            return new TallySketch(List.of(), List.of(), List.of(), problems);
        }
        TextSample sample;
        try (BufferedReader reader = CsvRows.open(path, charset.get())) {
            sample = TextSample.take(reader);
        }
        char separator = sample.separator(List::size);
        List<List<String>> rows = new ArrayList<>();
        DecimalMarks marks = new DecimalMarks();
        for (TextSample.Line line : sample.rows(separator)) {
            rows.add(line.fields());
            if (separator != ',') {
                line.fields().forEach(text -> marks.see(line.line(), text));
            }
        }
        List<String> settings = new ArrayList<>();
        if (problems.stream().anyMatch(p -> p.column().equals("encoding"))) {
            String name = charset.get().name().toLowerCase(Locale.ROOT);
            settings.add("encoding = \"" + (name.startsWith("utf-16") ? "utf-16" : name) + "\"");
        }
        settings.add("separator = \"" + (separator == '\t' ? "tab" : separator) + "\"");
        settings.add("decimal = \"" + marks.settle(log) + "\"");
        List<String> header = sample.header(separator).orElse(List.of());
        if (header.isEmpty()) {
            log.unreadable("the file is empty");
        }
        return new TallySketch(header, rows, settings, problems);
    }

    private static TallySketch ofWorkbook(Path path, FileProblems log, List<Problem> problems) {
        List<List<String>> rows = new ArrayList<>();
        List<String> settings = new ArrayList<>();
        try (Workbook workbook = new Workbook(path)) {
            String sheet = workbook.sheets().stream().findFirst().orElse("");
            settings.add("sheet = " + TomlText.quoted(sheet));
            SheetReader reader = new SheetReader(workbook, sheet, '.');
            SheetRow row = reader.next();
            while (row != null && rows.size() <= MOST_ROWS) {
                rows.add(row.texts());
                row = reader.next();
            }
        } catch (IOException | XMLStreamException | RuntimeException e) {
            log.unreadable(WorkbookException.explain(e));
            return new TallySketch(List.of(), List.of(), List.of(), problems);
        }
        if (rows.isEmpty()) {
            log.unreadable("the sheet is empty");
            return new TallySketch(List.of(), List.of(), List.of(), problems);
        }
        return new TallySketch(rows.get(0), rows.subList(1, rows.size()), settings, problems);
    }

    /** The entries of a column, empty ones left out. */
    List<String> entries(String column) {
        int at = header.indexOf(column);
        return rows.stream()
                .filter(r -> at >= 0 && at < r.size())
                .map(r -> r.get(at))
                .filter(text -> !text.isEmpty())
                .toList();
    }
}
