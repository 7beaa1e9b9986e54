package quadmean.field;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quadmean.design.ColumnRole;
import quadmean.model.Rule;

/** What is said once of a sheet: which columns in use hold formulas, and which cells are merged. */
final class SheetNotes {
    private final FileProblems problems;
    private final Map<Integer, Long> formulas = new TreeMap<>();
    private final Map<Integer, Long> firstRows = new TreeMap<>();

    SheetNotes(FileProblems problems) {
        this.problems = problems;
    }

    void see(SheetRow row, Header header) {
        for (int column : row.formulas()) {
            if (header.position().containsValue(column)) {
                formulas.merge(column, 1L, Long::sum);
                firstRows.putIfAbsent(column, row.number());
            }
        }
    }

    void state(List<String> merged, Header header) {
        header.position().forEach((role, column) -> {
            Long cells = formulas.get(column);
            if (cells != null) {
                String detail = cells + (cells == 1 ? " cell holds a formula" : " cells hold formulas")
                        + ", the first in row " + firstRows.get(column) + "; the values last saved are used";
                problems.add(Rule.FORMULA_VALUE, 0, name(header, role), "", detail);
            }
        });
        merged.stream().filter(range -> touches(range, header)).forEach(range -> {
            String detail = "the cells " + range + " are merged: only the first of them holds the value";
            problems.add(Rule.CELLS_MERGED, 0, "", range, detail);
        });
    }

    private static String name(Header header, ColumnRole role) {
        var spec = header.file().columns().get(role);
        return spec == null ? role.key() : spec.name();
    }

    private static boolean touches(String range, Header header) {
        String[] corners = range.split(":", 2);
        int from = SheetReader.column(corners[0]);
        int to = corners.length > 1 ? SheetReader.column(corners[1]) : from;
        return header.position().values().stream().anyMatch(c -> c >= from && c <= to);
    }
}
