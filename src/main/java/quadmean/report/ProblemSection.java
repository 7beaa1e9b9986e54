package quadmean.report;

import java.util.List;
import java.util.Map;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.EstateResult;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.report.HtmlTable.Cell;

/** The account of rows, and what was wrong with them. */
final class ProblemSection {
    private ProblemSection() {}

    static String markup(CruiseResult result) {
        Html html = new Html().section("rows", "Rows and problems");
        RowCount rows = result.tally().rows();
        html.element(
                "p",
                Rounding.count(rows.in()) + " rows read = " + Rounding.count(rows.used()) + " used + "
                        + Rounding.count(rows.dropped()) + " dropped. Of the rows used, " + Rounding.count(rows.kept())
                        + (rows.kept() == 1 ? " is" : " are") + " listed below in spite of a problem.");
        List<Problem> problems = result.tally().problems();
        if (problems.isEmpty()) {
            return html.element("p", "No problems were found.").endSection().toString();
        }
        HtmlTable counts = HtmlTable.of(
                "Problems by rule", List.of(Cell.text("Rule"), Cell.text("What it says"), Cell.number("Problems")));
        for (Map.Entry<Rule, Long> entry : Facts.problemsByRule(result).entrySet()) {
            counts.row(List.of(
                    Cell.text(entry.getKey().code()),
                    Cell.text(entry.getKey().sentence()),
                    Cell.number(Rounding.count(entry.getValue()))));
        }
        html.raw(counts.markup());
        html.printedDetails("List of problems").raw(list(problems)).endDetails();
        return html.endSection().toString();
    }

    /** The account of several tallies, each under its name, and all of their problems. */
    static String markup(Map<String, RowCount> tallies, List<Problem> problems) {
        Html html = new Html().section("rows", "Rows and problems");
        tallies.forEach((name, rows) -> html.element(
                "p",
                name + ": " + Rounding.count(rows.in()) + " rows read = " + Rounding.count(rows.used()) + " used + "
                        + Rounding.count(rows.dropped()) + " dropped."));
        html.raw(problems.isEmpty() ? "<p>No problems were found.</p>\n" : list(problems));
        return html.endSection().toString();
    }

    /** The account of an estate: problems counted and not listed, for there may be millions. */
    static String counts(EstateResult result) {
        Html html = new Html().section("rows", "Rows and problems");
        RowCount rows = result.rows();
        html.element(
                "p",
                Rounding.count(rows.in()) + " rows read = " + Rounding.count(rows.used()) + " used + "
                        + Rounding.count(rows.dropped()) + " dropped. Of the rows used, " + Rounding.count(rows.kept())
                        + (rows.kept() == 1 ? " is" : " are") + " listed in spite of a problem.");
        html.element(
                "p",
                result.files().size() == 1
                        ? "Tally: " + result.files().get(0) + "."
                        : "Tally: " + Rounding.count(result.files().size()) + " files, from "
                                + result.files().get(0) + " to "
                                + result.files().get(result.files().size() - 1) + ".");
        HtmlTable table = HtmlTable.of(
                "Problems by rule; problems.csv has them one by one",
                List.of(Cell.text("Rule"), Cell.text("What it says"), Cell.text("Done"), Cell.number("Problems")));
        result.problems()
                .forEach((rule, policies) -> policies.forEach((policy, count) -> table.row(List.of(
                        Cell.text(rule.code()),
                        Cell.text(rule.sentence()),
                        Cell.text(policy.id()),
                        Cell.number(Rounding.count(count))))));
        return html.raw(table.isEmpty() ? "<p>No problems were found.</p>\n" : table.markup())
                .endSection()
                .toString();
    }

    /** The problems, one a row. */
    static String list(List<Problem> problems) {
        boolean isLong = problems.size() > JsonInputs.MOST_PROBLEMS;
        HtmlTable table = HtmlTable.of(
                isLong
                        ? "The first " + JsonInputs.MOST_PROBLEMS + " of " + Rounding.count(problems.size())
                                + " problems; all are in problems.csv"
                        : "Problems in the order of the rows; also in problems.csv",
                List.of(
                        Cell.text("Place"),
                        Cell.text("Column"),
                        Cell.text("Value"),
                        Cell.text("Problem"),
                        Cell.text("Done"),
                        Cell.text("To do")));
        problems.stream()
                .limit(JsonInputs.MOST_PROBLEMS)
                .forEach(p -> table.row(List.of(
                        Cell.text(p.row() > 0 ? p.file() + ":" + p.row() : p.file()),
                        Cell.text(p.column()),
                        Cell.text(p.value()),
                        Cell.text(p.detail() + " (" + p.rule().code() + ")"),
                        Cell.text(p.policy().id()),
                        Cell.text(p.rule().remedy()))));
        return table.markup();
    }
}
