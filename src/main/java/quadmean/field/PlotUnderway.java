package quadmean.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.model.CountedTrees;
import quadmean.model.Plot;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tree;

/** A plot while its rows come in. */
final class PlotUnderway {
    private final String id;
    private final String stratum;
    private final List<Tree> trees = new ArrayList<>();
    private final List<CountedTrees> counted = new ArrayList<>();
    private final Map<String, Row> firstByNumber = new HashMap<>();
    private final Map<String, Map<List<String>, Row>> repeated = new HashMap<>();
    private @Nullable Row emptyRow;
    private @Nullable Row ownRow;

    PlotUnderway(String id, String stratum) {
        this.id = id;
        this.stratum = stratum;
    }

    String stratum() {
        return stratum;
    }

    void add(Tree tree) {
        trees.add(tree);
    }

    void add(CountedTrees row) {
        counted.add(row);
    }

    boolean hasTrees() {
        return !trees.isEmpty() || !counted.isEmpty();
    }

    void noteEmpty(Row row, RowProblems problems) {
        if (emptyRow != null) {
            problems.add(
                    Rule.ROW_REPEATED,
                    ColumnRole.PLOT,
                    "plot " + id + " is noted as empty on line " + emptyRow.line() + " already");
            return;
        }
        emptyRow = row;
    }

    /** What is wrong with the row that noted the plot as empty, once it is known that the plot has trees. */
    Optional<Problem> emptyRowProblem(Design design) {
        return Optional.ofNullable(emptyRow)
                .map(row -> new Problem(
                        row.fileName(),
                        row.line(),
                        row.column(ColumnRole.PLOT),
                        id,
                        Rule.EMPTY_PLOT_HAS_TREES,
                        design.policy(Rule.EMPTY_PLOT_HAS_TREES),
                        "plot " + id + " has trees on other rows"));
    }

    /** Takes the plot's row on a sheet of plots; a second one is noted. */
    void announce(Row row, RowProblems problems) {
        if (ownRow != null) {
            String detail = "plot " + id + " has a row of its own already, " + place(ownRow, row);
            problems.add(Rule.ROW_REPEATED, ColumnRole.PLOT, detail);
            return;
        }
        ownRow = row;
    }

    /** Finds exact copies and repeated numbers; trees without numbers cannot be told apart and are not compared. */
    void checkRepeats(Row row, RowProblems problems) {
        String number = row.text(ColumnRole.TREE);
        if (number.isEmpty()) {
            return;
        }
        Row first = firstByNumber.putIfAbsent(number, row);
        if (first == null) {
            return;
        }
        Map<List<String>, Row> before =
                repeated.computeIfAbsent(number, k -> new HashMap<>(Map.of(trimmed(first), first)));
        Row copy = before.putIfAbsent(trimmed(row), row);
        String tree = id + "-" + number;
        if (copy != null) {
            problems.add(Rule.ROW_REPEATED, ColumnRole.TREE, tree + " is an exact copy of " + place(copy, row));
        } else {
            String detail = tree + " stands on " + place(first, row) + " as another tree";
            problems.add(Rule.TREE_REPEATED, ColumnRole.TREE, detail);
        }
    }

    /** Blanks around a field make no other tree. */
    private static List<String> trimmed(Row row) {
        return row.fields().stream().map(String::strip).toList();
    }

    private static String place(Row row, Row seenFrom) {
        String line = "line " + row.line();
        return row.file().equals(seenFrom.file()) ? line : line + " of " + row.fileName();
    }

    Plot plot() {
        return new Plot(id, stratum, trees, counted);
    }
}
