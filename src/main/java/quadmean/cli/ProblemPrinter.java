package quadmean.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;

/** Problems on the console: the gravest twenty, and a count by rule. */
final class ProblemPrinter {
    private static final int SHOWN = 20;
    private static final int EXAMPLES = 5;

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

    /**
     * The problems of an estate, of which there may be millions: those that refuse it as above, of the others a few examples, and all
     * of them by rule.
     *
     * @param some the first problems of each policy
     * @param all number of problems by rule and policy
     */
    static void print(PrintWriter to, List<Problem> some, Map<Rule, Map<Policy, Long>> all) {
        List<String> byRule = new ArrayList<>();
        for (Policy policy : Policy.values()) {
            int most = policy == Policy.REFUSE ? SHOWN : EXAMPLES;
            List<Problem> shown =
                    some.stream().filter(p -> p.policy() == policy).limit(most).toList();
            shown.forEach(p -> to.println(mark(policy) + p.message()));
            long count = all.values().stream()
                    .mapToLong(m -> m.getOrDefault(policy, 0L))
                    .sum();
            if (count > shown.size()) {
                to.println(String.format(
                        Locale.ROOT,
                        "... and %,d more %s",
                        count - shown.size(),
                        mark(policy).strip()));
            }
            all.forEach((rule, counts) -> {
                if (counts.containsKey(policy)) {
                    byRule.add(String.format(Locale.ROOT, "%,d %s (%s)", counts.get(policy), rule.code(), policy.id()));
                }
            });
        }
        if (!byRule.isEmpty()) {
            to.println("By rule: " + String.join(", ", byRule));
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
