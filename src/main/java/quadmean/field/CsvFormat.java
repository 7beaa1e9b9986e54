package quadmean.field;

import java.util.List;
import java.util.Optional;
import quadmean.design.ColumnRole;
import quadmean.design.TallyFile;
import quadmean.model.Policy;
import quadmean.model.Rule;

/** Settles separator and decimal mark of a text tally: as the design says, or as the file shows, which is stated. */
final class CsvFormat {
    private CsvFormat() {}

    /** The tally with both known; empty if the file contradicts the design, which is then noted. */
    static Optional<TallyFile> settle(TallyFile declared, TextSample sample, FileProblems problems) {
        Character said = declared.format().separator();
        char found = sample.separator(header -> columnsIn(header, declared));
        if (said == null) {
            if (found != ',') {
                String detail = "the fields are parted by " + word(found);
                problems.add(Rule.FORMAT_DETECTED, 0, "separator", word(found), detail);
            }
        } else if (columns(sample, said, declared) == 0 && columns(sample, found, declared) > 0) {
            String detail =
                    "the header shows its columns when parted by " + word(found) + "; the design says " + word(said);
            if (problems.add(Rule.FORMAT_CONTRADICTS, 0, "separator", word(found), detail) != Policy.KEEP) {
                return Optional.empty();
            }
        }
        char separator = said == null ? found : said;
        return Optional.of(
                declared.with(declared.format().with(separator, decimal(declared, separator, sample, problems))));
    }

    private static long columns(TextSample sample, char separator, TallyFile file) {
        return sample.header(separator).map(h -> columnsIn(h, file)).orElse(0L);
    }

    private static long columnsIn(List<String> header, TallyFile file) {
        return file.columns().values().stream()
                .filter(c -> header.contains(c.name()))
                .count();
    }

    private static char decimal(TallyFile file, char separator, TextSample sample, FileProblems problems) {
        Character said = file.format().decimal();
        if (said != null) {
            return said;
        }
        if (separator == ',') {
            return '.';
        }
        List<String> header = sample.header(separator).orElse(List.of());
        List<Integer> numbers = file.columns().entrySet().stream()
                .filter(c -> c.getKey().measure() != ColumnRole.Measure.TEXT)
                .map(c -> header.indexOf(c.getValue().name()))
                .filter(at -> at >= 0)
                .toList();
        DecimalMarks marks = new DecimalMarks();
        for (TextSample.Line r : sample.rows(separator)) {
            numbers.stream()
                    .filter(at -> at < r.fields().size())
                    .forEach(at -> marks.see(r.line(), r.fields().get(at)));
        }
        return marks.settle(problems);
    }

    private static String word(char separator) {
        return separator == '\t' ? "tab" : String.valueOf(separator);
    }
}
