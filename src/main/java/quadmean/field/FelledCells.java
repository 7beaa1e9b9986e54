package quadmean.field;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import quadmean.field.FelledOptions.Measure;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** Reads the cells of a table of felled trees and notes what is wrong with them. */
final class FelledCells {
    private final Map<Measure, FelledColumns.Column> columns;
    private final Policy badRows;
    private final List<Problem> problems;

    FelledCells(Map<Measure, FelledColumns.Column> columns, Policy badRows, List<Problem> problems) {
        this.columns = columns;
        this.badRows = badRows;
        this.problems = problems;
    }

    Policy badRows() {
        return badRows;
    }

    List<Problem> problems() {
        return problems;
    }

    boolean has(Measure measure) {
        return columns.containsKey(measure);
    }

    /** Name of a column that the table has. */
    String column(Measure measure) {
        return Objects.requireNonNull(columns.get(measure)).name();
    }

    /** Whether the row has the fields of the header; what its cells are beside their text is noted too. */
    boolean isWhole(Row row) {
        if (row.position().isEmpty()) {
            String text = String.join(String.valueOf(row.file().separator()), row.fields());
            String detail = "the row has " + row.fields().size() + " fields";
            problems.add(new Problem(row.fileName(), row.line(), "", text, Rule.ROW_LENGTH, badRows, detail));
            return false;
        }
        for (Measure measure : columns.keySet()) {
            if (row.brokenRoles().contains(measure.role())) {
                add(row, Rule.ROW_LENGTH, measure, "the field runs over several lines; a quote is missing");
            }
            for (CellRemark remark : row.remarks()) {
                if (Objects.equals(row.position().get(measure.role()), remark.column())) {
                    add(row, remark.rule(), measure, remark.detail());
                }
            }
        }
        return true;
    }

    /** A number of its domain, in the unit inside; what is none is noted. */
    double number(Row row, Measure measure) {
        Unit unit = Objects.requireNonNull(
                Objects.requireNonNull(columns.get(measure)).unit());
        String owner = measure.isOfPoint() ? "point" : "tree";
        String text = row.text(measure.role());
        OptionalDouble number = Numbers.plain(text, row.file().decimal());
        double value = unit.convert(number.orElse(Double.NaN), measure.inside());
        if (text.isEmpty()) {
            add(row, Rule.FELLED_VALUE, measure, "the " + owner + " has no " + measure.word());
        } else if (number.isEmpty()) {
            String detail = "\"" + text + "\" is not a plain number with the decimal mark \""
                    + row.file().decimal() + "\"";
            add(row, Rule.FELLED_VALUE, measure, detail);
        } else if (!((value > 0 || (value == 0 && measure.isFromZero())) && value < measure.most())) {
            String detail = text + " " + unit.symbol() + " is no " + measure.word() + " of a " + owner;
            add(row, Rule.FELLED_VALUE, measure, detail);
        }
        return value;
    }

    /** The species; a missing one is noted. */
    String species(Row row) {
        String species = row.text(Measure.SPECIES.role());
        if (species.isEmpty() && has(Measure.SPECIES)) {
            add(row, Rule.SPECIES_MISSING, Measure.SPECIES, "the tree has no species");
        }
        return species;
    }

    void add(Row row, Rule rule, Measure measure, String detail) {
        add(row, rule, measure, badRows, detail);
    }

    void add(Row row, Rule rule, Measure measure, Policy policy, String detail) {
        problems.add(problem(row, rule, measure, policy, detail));
    }

    static Problem problem(Row row, Rule rule, Measure measure, Policy policy, String detail) {
        String column = row.column(measure.role());
        return new Problem(row.fileName(), row.line(), column, row.text(measure.role()), rule, policy, detail);
    }
}
