package quadmean.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** The account of the rows of a range, and those among them that belong to no plot. */
final class RowAccount {
    private final Design design;
    private final Header header;
    private final TreeReader trees;
    private final List<Problem> problems = new ArrayList<>();
    private long used;
    private long dropped;
    private long kept;

    RowAccount(Design design, Header header, TreeReader trees) {
        this.design = design;
        this.header = header;
        this.trees = trees;
    }

    /** A row is used, and nothing is wrong with it. */
    void use() {
        used++;
    }

    /** Accounts for a row: out if a problem says so, else used. */
    void add(RowProblems row) {
        problems.addAll(row.list());
        if (row.isOut()) {
            dropped++;
        } else {
            used++;
            kept += row.list().isEmpty() ? 0 : 1;
        }
    }

    /** A row that counted does so no more, unless its problem is kept. */
    void takeBack(Problem problem) {
        problems.add(problem);
        if (problem.policy() == Policy.KEEP) {
            kept++;
        } else {
            used--;
            dropped++;
        }
    }

    EstateRows rows() {
        return new EstateRows(used, dropped, kept, problems);
    }

    /** A row with too many fields, or too few. */
    void wrongLength(Row row) {
        String whole = String.join(String.valueOf(header.file().separator()), row.fields());
        broken(row, whole, "the row has " + row.fields().size() + " fields");
    }

    /** A line whose quotes do not fit. */
    void wrongQuotes(String whole, long line) {
        Row row = new Row(header.file(), line, List.of(whole), Map.of(), List.of(), header.names());
        broken(row, whole, "the quotes of the row do not fit: one is missing, or one too many");
    }

    private void broken(Row row, String whole, String what) {
        RowProblems found = new RowProblems(design, row);
        found.add(Rule.ROW_LENGTH, "", whole, what);
        add(found);
    }

    /** A row that names no stand, or no plot. */
    void nameless(Row row) {
        RowProblems found = new RowProblems(design, row);
        if (row.text(ColumnRole.STAND).isEmpty()) {
            found.add(Rule.STAND_UNKNOWN, ColumnRole.STAND, "the row names no stand");
        }
        if (row.text(ColumnRole.PLOT).isEmpty()) {
            found.add(Rule.PLOT_MISSING, ColumnRole.PLOT, "the row names no plot");
        }
        addInVain(row, found);
    }

    /** A row of a stand that there is not; the plot around it goes on. */
    void unknown(Row row) {
        RowProblems found = new RowProblems(design, row);
        String code = row.text(ColumnRole.STAND);
        found.add(Rule.STAND_UNKNOWN, ColumnRole.STAND, "there is no stand \"" + code + "\" in the table of stands");
        addInVain(row, found);
    }

    /** Looks what else is wrong with a row that is out. */
    private void addInVain(Row row, RowProblems found) {
        if (!row.isEmptyPlot()) {
            trees.read(row, found);
        }
        add(found);
    }

    /** Something wrong with a row that is no {@link Row} yet. */
    record Finding(Rule rule, String column, String value, String detail) {}

    /** Findings as problems of their row. */
    RowProblems problems(List<Finding> findings, Row row) {
        RowProblems found = new RowProblems(design, row);
        findings.forEach(f -> found.add(f.rule(), f.column(), f.value(), f.detail()));
        return found;
    }
}
