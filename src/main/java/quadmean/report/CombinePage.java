package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.audit.Combined;
import quadmean.audit.StandTotal;
import quadmean.chart.Wording;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.report.HtmlTable.Cell;

/** Combined stands on one page that needs nothing else. */
final class CombinePage {
    private final Combined combined;
    private final List<Problem> problems;
    private final CombineText text;

    private CombinePage(Combined combined, List<Problem> problems) {
        this.problems = problems;
        this.combined = combined;
        this.text = new CombineText(combined);
    }

    static Content of(Combined combined, List<Problem> problems) {
        CombinePage page = new CombinePage(combined, problems);
        return out -> out.write(page.markup().getBytes(StandardCharsets.UTF_8));
    }

    private String markup() throws IOException {
        String what = Wording.capital(combined.attribute().label());
        Html html = HtmlReport.begin(
                what + " of " + Headline.count(combined.totals().size(), "stand"));
        html.raw("<header class=\"head\">\n").element("p", "kind", "Stands together");
        html.element("h1", what + " of " + Headline.count(combined.totals().size(), "stand"));
        html.element(
                "p",
                "where",
                text.area(combined.all()) + ", " + Headline.count(combined.all().plots(), "plot"));
        answers(html);
        html.raw("</header>\n");
        html.section("stands", "Stands").raw(table("By stand", combined.totals()));
        html.element("p", "notes", text.standing()).endSection();
        if (!combined.groups().isEmpty()) {
            html.section("groups", "Groups")
                    .raw(table("By group of the list", combined.groups()))
                    .endSection();
        }
        if (!combined.strata().isEmpty()) {
            html.section("strata", "Strata across stands");
            html.raw(table("By code of the stratum, with sampling errors alone", combined.strata()))
                    .endSection();
        }
        html.section("shared", "What the errors share").raw(shared());
        html.element("p", text.sharing());
        html.endSection();
        html.section("method", "Methods").raw("<ul>\n");
        combined.notes().forEach(n -> html.element("li", n));
        html.raw("</ul>\n").endSection();
        html.raw(rows());
        html.raw(Cautions.markup());
        html.raw("</main>\n<footer>")
                .text("Quadmean stands together. Every number here stands unrounded in combine.json.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }

    private String rows() {
        Map<String, RowCount> tallies = new LinkedHashMap<>();
        combined.stands().forEach(s -> tallies.put(s.name(), s.cruise().tally().rows()));
        return ProblemSection.markup(tallies, problems);
    }

    private void answers(Html html) {
        StandTotal all = combined.all();
        html.raw("<div class=\"answers\">\n<div class=\"answer\">\n").element("h2", "How much");
        html.element("p", "big", text.total(all) + " " + text.unitLabel());
        html.element("p", "small", combined.attribute().label() + " of all stands");
        html.raw("</div>\n<div class=\"answer\">\n").element("h2", "How sure");
        html.element("p", "mid", text.limits(all));
        html.element(
                "p",
                "small",
                Wording.confidence(combined.confidence()) + " limits with all errors known, "
                        + text.error(all.withAll()));
        html.raw("</div>\n<div class=\"answer\">\n").element("h2", "Of it by chance of the plots");
        html.element("p", "mid", text.error(all.sampling()));
        html.element("p", "small", "sampling errors alone, which average out over stands");
        html.raw("</div>\n</div>\n");
    }

    private String table(String caption, List<StandTotal> totals) {
        HtmlTable table = HtmlTable.of(
                caption,
                List.of(
                        Cell.text("Name"),
                        Cell.number("Area"),
                        Cell.number("Plots"),
                        Cell.number("Total (" + text.unitLabel() + ")"),
                        Cell.number("Sampling error"),
                        Cell.number("With all errors known"),
                        Cell.number("Limits")));
        totals.forEach(t -> table.row(List.of(
                Cell.text(t.name()),
                Cell.number(text.area(t)),
                Cell.number(Rounding.count(t.plots())),
                Cell.number(text.total(t)),
                Cell.number(text.error(t.sampling())),
                Cell.number(text.error(t.withAll())),
                Cell.number(text.limits(t)))));
        return table.markup();
    }

    private String shared() {
        HtmlTable table = HtmlTable.of(
                "Standard errors of the sum (" + text.unitLabel() + ")",
                List.of(Cell.text("Part"), Cell.number("Standard error")));
        StandTotal all = combined.all();
        table.row(List.of(
                Cell.text("between plots"),
                Cell.number(text.se(all, all.sampling().se()))));
        all.shared()
                .forEach((source, se) -> table.row(List.of(Cell.text(source.label()), Cell.number(text.se(all, se)))));
        table.row(List.of(
                Cell.text("what each stand has for itself besides"),
                Cell.number(text.se(all, Math.sqrt(Math.max(0, all.otherVariance()))))));
        return table.markup();
    }
}
