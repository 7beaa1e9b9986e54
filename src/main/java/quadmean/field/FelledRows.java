package quadmean.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import quadmean.design.ColumnRole;
import quadmean.model.FelledTree;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.units.BasalArea;
import quadmean.units.Unit;

/** Turns rows into felled trees and keeps account of them. */
final class FelledRows {
    /** No tree is thicker, taller or larger (from memory). */
    private static final double THICKEST_CM = 1_200;

    private static final double TALLEST_M = 130;
    private static final double LARGEST_M3 = 2_000;

    /** Volume over that of the cylinder of dbh and height (common practice, no source). */
    private static final double SLENDEREST = 0.1;

    private static final double FULLEST = 1;

    /** So much less or more is no stem at all (common practice, no source). */
    private static final double FAR_OFF = 0.02;

    private static final double FAR_OVER = 2;

    private final Policy badRows;
    private final Unit volumeUnit;
    private final List<Problem> problems;
    private final List<FelledTree> trees = new ArrayList<>();
    private final Map<String, Long> lines = new HashMap<>();
    private long in;
    private long read;
    private long unlikely;
    private long kept;

    FelledRows(Policy badRows, Unit volumeUnit, List<Problem> problems) {
        this.badRows = badRows;
        this.volumeUnit = volumeUnit;
        this.problems = problems;
    }

    List<FelledTree> trees() {
        return trees;
    }

    RowCount count() {
        return new RowCount(in, trees.size(), in - trees.size(), kept);
    }

    /** Every problem of the row is noted; one without any is a tree. */
    void take(Row row) {
        in++;
        int before = problems.size();
        if (row.position().isEmpty()) {
            String text = String.join(String.valueOf(row.file().separator()), row.fields());
            add(row, Rule.ROW_LENGTH, "", text, "the row has " + row.fields().size() + " fields");
            return;
        }
        row.brokenRoles()
                .forEach(role ->
                        add(row, Rule.ROW_LENGTH, role, "the field runs over several lines; a quote is missing"));
        for (CellRemark remark : row.remarks()) {
            row.position().forEach((role, at) -> {
                if (at == remark.column()) {
                    add(row, remark.rule(), role, remark.detail());
                }
            });
        }
        Unit dbhUnit = unit(row, ColumnRole.DBH);
        Unit heightUnit = unit(row, ColumnRole.HEIGHT);
        double dbh =
                dbhUnit.convert(number(row, ColumnRole.DBH, dbhUnit, THICKEST_CM, Unit.CENTIMETRE), Unit.CENTIMETRE);
        double height =
                heightUnit.convert(number(row, ColumnRole.HEIGHT, heightUnit, TALLEST_M, Unit.METRE), Unit.METRE);
        double volume = volumeUnit.convert(
                number(row, FelledReader.VOLUME, volumeUnit, LARGEST_M3, Unit.CUBIC_METRE), Unit.CUBIC_METRE);
        String id = id(row);
        String species = row.text(ColumnRole.SPECIES);
        if (species.isEmpty() && row.position().containsKey(ColumnRole.SPECIES)) {
            add(row, Rule.SPECIES_MISSING, ColumnRole.SPECIES, "the tree has no species");
        }
        if (problems.size() == before) {
            accept(row, new FelledTree(id, row.line(), species, dbh, height, volume));
        }
    }

    private static Unit unit(Row row, ColumnRole role) {
        return Objects.requireNonNull(
                Objects.requireNonNull(row.file().columns().get(role)).unit());
    }

    private String id(Row row) {
        String id = row.text(ColumnRole.TREE);
        if (id.isEmpty()) {
            return "row " + row.line();
        }
        Long earlier = lines.putIfAbsent(row.text(ColumnRole.SPECIES) + "\n" + id, row.line());
        if (earlier != null) {
            add(row, Rule.FELLED_REPEATED, ColumnRole.TREE, "tree " + id + " stands in row " + earlier + " already");
        }
        return id;
    }

    private void accept(Row row, FelledTree tree) {
        double full = tree.volumeM3() / (BasalArea.ofTree(tree.dbhCm()) * tree.heightM());
        boolean farOff = full < FAR_OFF || full > FAR_OVER;
        boolean isUnlikely = full < SLENDEREST || full > FULLEST;
        if (isUnlikely) {
            String detail = "the volume is " + percent(full) + " of the cylinder of dbh and height"
                    + (farOff ? ", as of no stem" : "");
            Policy policy = farOff ? badRows : Policy.KEEP;
            problems.add(problem(row, Rule.FELLED_UNLIKELY, FelledReader.VOLUME, policy, detail));
            unlikely++;
        }
        if (!farOff) {
            trees.add(tree);
            kept += isUnlikely ? 1 : 0;
        }
        read++;
    }

    private static String percent(double share) {
        return share < 0.001 ? "below 0.1 %" : String.format(java.util.Locale.ROOT, "%.3g %%", 100 * share);
    }

    /** Where most trees are unlikely, a unit is wrong and no equation would be right. */
    void judge(FileProblems log) {
        if (2 * unlikely > read) {
            problems.removeIf(p -> p.rule() == Rule.FELLED_UNLIKELY);
            String detail = "the volume of " + unlikely + " of " + read
                    + " trees is below 10 or above 100 % of the cylinder of dbh and height: a unit is wrong";
            log.add(Rule.FELLED_UNLIKELY, 0, "", "", detail);
            kept = 0;
        }
    }

    /** A number above zero and below a limit; NaN if there is none, which is noted. */
    private double number(Row row, ColumnRole role, Unit unit, double largest, Unit of) {
        String text = row.text(role);
        OptionalDouble number = Numbers.plain(text, row.file().decimal());
        double value = number.orElse(Double.NaN);
        double most = of.convert(largest, unit);
        if (text.isEmpty()) {
            add(row, Rule.FELLED_VALUE, role, "the tree has no " + word(role));
        } else if (number.isEmpty()) {
            String detail = "\"" + text + "\" is not a plain number with the decimal mark \""
                    + row.file().decimal() + "\"";
            add(row, Rule.FELLED_VALUE, role, detail);
        } else if (!(value > 0 && value < most)) {
            add(row, Rule.FELLED_VALUE, role, text + " " + unit.symbol() + " is no " + word(role) + " of a tree");
        }
        return value;
    }

    private static String word(ColumnRole role) {
        return role == FelledReader.VOLUME ? "volume" : role.key();
    }

    private void add(Row row, Rule rule, ColumnRole role, String detail) {
        problems.add(problem(row, rule, role, badRows, detail));
    }

    private void add(Row row, Rule rule, String column, String value, String detail) {
        problems.add(new Problem(row.fileName(), row.line(), column, value, rule, badRows, detail));
    }

    private static Problem problem(Row row, Rule rule, ColumnRole role, Policy policy, String detail) {
        return new Problem(row.fileName(), row.line(), row.column(role), row.text(role), rule, policy, detail);
    }
}
