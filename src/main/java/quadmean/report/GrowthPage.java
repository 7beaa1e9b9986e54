package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.audit.AttributeGrowth;
import quadmean.audit.Component;
import quadmean.audit.Growth;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.report.HtmlTable.Cell;

/** Growth between two dates on one page that needs nothing else. */
final class GrowthPage {
    private static final List<String> METHOD = List.of(
            "Components after Beers 1962 (names from memory). Survivors live at both dates; ingrowth has passed the smallest dbh"
                    + " since; mortality and removals count with their value at the earlier date.",
            "Errors are those of the sampling design for the values of plots, each value being a difference on the same plot."
                    + " Var(V2 - V1) = Var(V1) + Var(V2) - 2·Cov(V1, V2).",
            "This is what was, on these plots, between these dates. It is no projection.");

    private final Growth growth;
    private final List<Problem> problems;
    private final GrowthText text;
    private final Design design;

    private GrowthPage(Growth growth, List<Problem> problems) {
        this.problems = problems;
        this.growth = growth;
        this.text = new GrowthText(growth);
        this.design = growth.after().design();
    }

    static Content of(Growth growth, List<Problem> problems) {
        GrowthPage page = new GrowthPage(growth, problems);
        return out -> out.write(page.markup().getBytes(StandardCharsets.UTF_8));
    }

    private String markup() throws IOException {
        Html html = HtmlReport.begin("Growth: " + design.name());
        html.raw("<header class=\"head\">\n").element("p", "kind", "Permanent plots at two dates");
        html.element("h1", design.name());
        html.element(
                "p",
                "where",
                Headline.count(growth.plots(), "plot") + ", "
                        + Wording.plain(growth.settings().years()) + " years between the dates");
        answers(html, growth.attributes().get(0));
        html.raw("</header>\n");
        for (AttributeGrowth g : growth.attributes()) {
            html.section(
                    "growth-" + g.attribute().id(),
                    Wording.capital(g.attribute().label()));
            html.raw(table(g));
            html.element("p", text.pairing(g));
            html.element("p", "notes", text.standing(g)).endSection();
        }
        html.section("again", "Trees to look at again");
        if (growth.findings().isEmpty()) {
            html.element("p", "None.");
        } else {
            html.raw("<ul>\n");
            growth.findings().forEach(f -> html.element("li", f + "."));
            html.raw("</ul>\n");
        }
        html.endSection();
        html.section("method", "Methods").raw("<ul>\n");
        growth.notes().forEach(n -> html.element("li", n));
        METHOD.forEach(n -> html.element("li", n));
        html.raw("</ul>\n").endSection();
        html.raw(rows());
        html.raw(Cautions.markup());
        html.raw("</main>\n<footer>").text("Quadmean growth. Every number here stands unrounded in growth.json.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }

    private String rows() {
        Map<String, RowCount> tallies = new LinkedHashMap<>();
        tallies.put("Earlier date", growth.before().tally().rows());
        tallies.put("Later date", growth.after().tally().rows());
        return ProblemSection.markup(tallies, problems);
    }

    private void answers(Html html, AttributeGrowth g) {
        html.raw("<div class=\"answers\">\n");
        answer(html, g, "Gross growth", Component.GROSS);
        answer(html, g, "Mortality", Component.MORTALITY);
        answer(html, g, "Net growth", Component.NET);
        html.raw("</div>\n");
    }

    private void answer(Html html, AttributeGrowth g, String heading, Component c) {
        html.raw("<div class=\"answer\">\n").element("h2", heading);
        html.element("p", "mid", text.yearly(g, c) + " " + text.unitLabel(g.attribute()) + " a year");
        html.element(
                "p",
                "small",
                Wording.capital(g.attribute().label()) + ", " + c.label() + ": " + text.mean(g, c) + " in all, "
                        + Wording.confidence(design.confidence()) + " limits " + text.limits(g, c));
        html.raw("</div>\n");
    }

    private String table(AttributeGrowth g) {
        HtmlTable table = HtmlTable.of(
                Wording.capital(g.attribute().label()) + " (" + text.unitLabel(g.attribute()) + ")",
                List.of(
                        Cell.text("Component"),
                        Cell.number("Mean"),
                        Cell.number("Standard error"),
                        Cell.number(Wording.confidence(design.confidence()) + " limits"),
                        Cell.number("A year")));
        for (Component c : text.components()) {
            table.row(List.of(
                    Cell.text(Wording.capital(c.label())),
                    Cell.number(text.mean(g, c)),
                    Cell.number(text.se(g, c)),
                    Cell.number(text.limits(g, c)),
                    Cell.number(text.yearly(g, c))));
        }
        return table.markup();
    }
}
