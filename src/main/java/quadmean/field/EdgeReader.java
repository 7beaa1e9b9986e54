package quadmean.field;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import quadmean.design.ColumnRole;
import quadmean.model.Boundary;
import quadmean.model.Rule;

/** How often the trees of a row count for what their plot misses beyond the boundary. */
final class EdgeReader {
    private final Boundary boundary;
    /** Where whole plots are swept inward, what their first row said. */
    private final Map<String, Integer> ofPlot = new HashMap<>();

    EdgeReader(Boundary boundary) {
        this.boundary = boundary;
    }

    /** Forgets all plots: another begins, and none of those before goes on. */
    void forget() {
        ofPlot.clear();
    }

    /** The number of times; once where the row says nothing, or nothing that can be used. */
    int times(Row row, RowProblems problems) {
        OptionalDouble written = Numbers.read(row, ColumnRole.EDGE, problems);
        double times = written.orElse(1);
        if (times != Math.rint(times) || !boundary.times().contains((int) times)) {
            String allowed = among(boundary.times());
            problems.add(
                    Rule.EDGE_UNUSABLE,
                    ColumnRole.EDGE,
                    "a tree counts " + allowed + " times under boundary = \"" + boundary.id() + "\", not "
                            + row.text(ColumnRole.EDGE));
            return 1;
        }
        return boundary == Boundary.INWARD_SWEEP ? asThePlot(row, (int) times, problems) : (int) times;
    }

    private int asThePlot(Row row, int times, RowProblems problems) {
        int first = ofPlot.merge(row.text(ColumnRole.PLOT), times, (before, now) -> before);
        if (first != times) {
            problems.add(
                    Rule.EDGE_UNUSABLE,
                    ColumnRole.EDGE,
                    "the plot counts " + first + " times on its first row, and this tree " + times + " times");
            return 1;
        }
        return times;
    }

    private static String among(List<Integer> numbers) {
        String all = numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
        int last = all.lastIndexOf(", ");
        return last < 0 ? all : all.substring(0, last) + " or " + all.substring(last + 2);
    }
}
