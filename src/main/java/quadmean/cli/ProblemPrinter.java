package quadmean.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;

/** Problems on the console: the gravest twenty, and a count by rule. */
final class ProblemPrinter {
    private static final int SHOWN = 20;

    private ProblemPrinter() {}

    static void print(PrintWriter to, List<Problem> problems) {
        List<Problem> order = problems.stream()
                .sorted((a, b) -> a.policy().compareTo(b.policy()))
                .toList();
        order.stream().limit(SHOWN).forEach(p -> to.println(mark(p.policy()) + p.message()));
        if (problems.size() > SHOWN) {
            to.println("... and " + (problems.size() - SHOWN) + " more");
        }
        Map<String, Integer> byRule = new TreeMap<>();
        problems.forEach(p -> byRule.merge(p.rule().code() + " (" + p.policy().id() + ")", 1, Integer::sum));
        if (!byRule.isEmpty()) {
            to.println("By rule: "
                    + String.join(
                            ", ",
                            byRule.entrySet().stream()
                                    .map(e -> e.getValue() + " " + e.getKey())
                                    .toList()));
        }
    }

    static String rows(RowCount rows) {
        String listed = rows.kept() == 0 ? "" : "; " + rows.kept() + " of those used are listed";
        return String.format(Locale.ROOT, "Rows: %d in = %d used + %d dropped", rows.in(), rows.used(), rows.dropped())
                + listed;
    }

    private static String mark(Policy policy) {
        return switch (policy) {
            case REFUSE -> "error   ";
            case DROP -> "dropped ";
            case KEEP -> "kept    ";
        };
    }
}
