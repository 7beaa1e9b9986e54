package quadmean.field;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quadmean.field.ForestColumns.Column;
import quadmean.field.ForestColumns.Role;
import quadmean.model.ForestData;
import quadmean.model.ForestData.Kind;
import quadmean.model.MappedTree;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.model.StandClass;

/**
 * Reads a forest in which every tree is known: a map of trees (columns x, y and dbh), or a stand table (dbh and trees per area) from which
 * one is made. CSV with commas and decimal points; units stand in the header, as in {@code x_m}, {@code dbh_in}, {@code trees_per_ac}.
 */
public final class ForestReader {
    private final String file;
    private final ForestColumns columns;
    private final List<Problem> problems;
    private final List<MappedTree> trees = new ArrayList<>();
    private final List<StandClass> classes = new ArrayList<>();
    private final Set<List<Object>> places = new HashSet<>();
    private long in;

    private ForestReader(String file, ForestColumns columns, List<Problem> problems) {
        this.file = file;
        this.columns = columns;
        this.problems = problems;
    }

    /**
     * Reads a forest.
     *
     * @throws IOException if the file is missing or cannot be read
     */
    public static ForestData read(Path path) throws IOException {
        String file = String.valueOf(path.getFileName());
        List<Problem> problems = new ArrayList<>();
        List<CsvRecord> records;
        try {
            String text = Files.readString(path); // strict: a letter that is none in UTF-8 is no letter to guess at
            records = CsvReader.builder()
                    .allowMissingFields(true)
                    .allowExtraFields(true)
                    .ofCsvRecord(text.startsWith("\uFEFF") ? text.substring(1) : text)
                    .stream()
                    .toList();
        } catch (CsvParseException | CharacterCodingException e) {
            return refused(
                    file,
                    "this is no CSV file in UTF-8 with one record a line; a forest is read from such a file alone");
        }
        if (records.size() < 2) {
            return refused(file, "the file has no row below its header");
        }
        List<String> header = records.get(0).getFields();
        if (header.size() == 1 && (header.get(0).contains(";") || header.get(0).contains("\t"))) {
            return refused(file, "the fields are not parted by commas; save it with commas and decimal points");
        }
        ForestColumns columns = ForestColumns.of(file, header, problems);
        ForestReader reader = new ForestReader(file, columns, problems);
        if (problems.isEmpty()) {
            records.stream().skip(1).forEach(reader::take);
        }
        return reader.data();
    }

    private static ForestData refused(String file, String detail) {
        Problem problem = new Problem(file, 0, "", "", Rule.FILE_UNREADABLE, Policy.REFUSE, detail);
        return new ForestData(file, Kind.MAP, List.of(), List.of(), new RowCount(0, 0, 0, 0), List.of(problem));
    }

    private ForestData data() {
        long used = (long) trees.size() + classes.size();
        return new ForestData(file, columns.kind(), trees, classes, new RowCount(in, used, in - used, 0), problems);
    }

    private void take(CsvRecord row) {
        in++;
        int before = problems.size();
        if (row.getFieldCount() != columns.width()) {
            problem(row, "", "", "the row has " + row.getFieldCount() + " fields and the header " + columns.width());
            return;
        }
        String species = text(row, Role.SPECIES);
        double dbh = number(row, Role.DBH, 0, 1200);
        double height = number(row, Role.HEIGHT, 1.3, 130);
        if (columns.kind() == Kind.MAP) {
            double x = number(row, Role.X, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
            double y = number(row, Role.Y, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
            if (problems.size() == before && !places.add(List.of(x, y, species, dbh))) {
                problem(row, "", "", "a tree of the same place, species and dbh stands in the file already");
            }
            if (problems.size() == before) {
                trees.add(new MappedTree(row.getStartingLineNumber(), x, y, species, dbh, height));
            }
        } else {
            double number = number(row, Role.TREES, -Double.MIN_VALUE, 1e6);
            if (problems.size() == before) {
                classes.add(new StandClass(text(row, Role.STRATUM), species, dbh, number, height));
            }
        }
    }

    private String text(CsvRecord row, Role role) {
        Optional<Column> column = columns.find(role);
        if (column.isEmpty()) {
            return "";
        }
        String text = row.getField(column.get().at()).strip();
        if (text.isEmpty()) {
            problem(row, column.get().name(), "", "the row has no " + role.word());
        }
        return text;
    }

    /** A number between two limits, neither of them included, in the unit inside; NaN where the file does not have the column. */
    private double number(CsvRecord row, Role role, double above, double below) {
        Optional<Column> column = columns.find(role);
        if (column.isEmpty()) {
            return Double.NaN;
        }
        String text = row.getField(column.get().at()).strip();
        if (text.isEmpty() && role == Role.HEIGHT) {
            return Double.NaN;
        }
        OptionalDouble read = Numbers.plain(text, '.');
        double value = column.get().toInside(read.orElse(Double.NaN));
        if (!(value > above && value < below)) {
            problem(
                    row,
                    column.get().name(),
                    text,
                    text.isEmpty() ? "the row has no " + role.word() : "\"" + text + "\" is no " + role.word());
        }
        return value;
    }

    private void problem(CsvRecord row, String column, String value, String detail) {
        problems.add(new Problem(
                file, row.getStartingLineNumber(), column, value, Rule.FOREST_VALUE, Policy.REFUSE, detail));
    }
}
