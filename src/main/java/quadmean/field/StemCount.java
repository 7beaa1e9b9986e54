package quadmean.field;

import java.util.OptionalDouble;
import quadmean.design.ColumnRole;
import quadmean.model.Rule;

/** What a row counts: the trees that it stands for, and their 16-ft logs. */
final class StemCount {
    /** More trees than this on one row is a slip (from memory of no larger tally). */
    private static final double MOST_TREES = 1_000_000;

    private static final double MOST_LOGS = 24;

    private StemCount() {}

    /** The number of trees, one where the row says nothing. */
    static int trees(Row row, RowProblems problems) {
        OptionalDouble count = Numbers.read(row, ColumnRole.COUNT, problems);
        if (count.isEmpty()) {
            return 1;
        }
        double n = count.getAsDouble();
        if (n < 1 || n > MOST_TREES || n != Math.rint(n)) {
            String detail = row.text(ColumnRole.COUNT) + " is no number of trees from 1 to 1 million";
            problems.add(Rule.COUNT_UNUSABLE, ColumnRole.COUNT, detail);
            return 1;
        }
        return (int) n;
    }

    /** The number of logs of each tree, if the row tells. */
    static OptionalDouble logs(Row row, RowProblems problems) {
        OptionalDouble logs = Numbers.read(row, ColumnRole.LOGS, problems);
        if (logs.isPresent() && !isLogs(logs.getAsDouble())) {
            String detail = row.text(ColumnRole.LOGS) + " is no number of 16-ft logs in halves, from 0 to 24";
            problems.add(Rule.LOGS_UNUSABLE, ColumnRole.LOGS, detail);
            return OptionalDouble.empty();
        }
        return logs;
    }

    private static boolean isLogs(double logs) {
        return logs >= 0 && logs <= MOST_LOGS && 2 * logs == Math.rint(2 * logs);
    }
}
