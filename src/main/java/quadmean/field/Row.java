package quadmean.field;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quadmean.design.ColumnRole;
import quadmean.design.TallyFile;

/**
 * One data row of a tally.
 *
 * @param file the tally file
 * @param line line on which the row starts, the header being line 1
 * @param fields its fields as written
 * @param position where each column in use stands
 * @param remarks what a spreadsheet says of its cells
 * @param names the names of all columns as the header has them
 */
record Row(
        TallyFile file,
        long line,
        List<String> fields,
        Map<ColumnRole, Integer> position,
        List<CellRemark> remarks,
        List<String> names) {

    /** Whether the row stands on a sheet of plots, which has no trees. */
    boolean isOfPlotsSheet() {
        return !file.columns().containsKey(ColumnRole.SPECIES);
    }

    /** Species and what is measured: a row without any of it notes an empty plot. */
    private static final List<ColumnRole> MEASURED = Stream.of(ColumnRole.values())
            .filter(r -> r == ColumnRole.SPECIES || r.measure() != ColumnRole.Measure.TEXT)
            .filter(r -> r != ColumnRole.COUNT && r != ColumnRole.EDGE)
            .toList();

    /** The trimmed text of a column; empty if the tally does not have it. */
    String text(ColumnRole role) {
        Integer at = position.get(role);
        return at == null || at >= fields.size() ? "" : fields.get(at).strip();
    }

    /** The name of a column as the header has it; the role's key if the tally does not have it. */
    String column(ColumnRole role) {
        var spec = file.columns().get(role);
        return spec == null ? role.key() : spec.name();
    }

    String fileName() {
        return file.name();
    }

    /** Columns in use whose text runs over several lines, as it does when a quote takes in the next row. */
    List<ColumnRole> brokenRoles() {
        return Stream.of(ColumnRole.values())
                .filter(role -> text(role).chars().anyMatch(c -> c == '\n' || c == '\r'))
                .toList();
    }

    boolean isOneLine() {
        for (int at : position.values()) {
            String text = at < fields.size() ? fields.get(at) : "";
            if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
                return brokenRoles().isEmpty();
            }
        }
        return true;
    }

    /** Whether the row notes a plot and nothing on it. */
    boolean isEmptyPlot() {
        for (ColumnRole role : MEASURED) {
            if (!text(role).isEmpty()) {
                return false;
            }
        }
        String count = text(ColumnRole.COUNT);
        return count.isEmpty() || count.equals("0");
    }
}
