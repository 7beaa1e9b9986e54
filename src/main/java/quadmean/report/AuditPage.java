package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import quadmean.audit.AuditRun;
import quadmean.audit.CheckCruise;
import quadmean.audit.CheckCruise.Verdict;
import quadmean.audit.ValueCheck;
import quadmean.design.AuditSettings.Chosen;
import quadmean.design.Design;
import quadmean.model.RowCount;

/** A check cruise on one page that needs nothing else. */
final class AuditPage {
    private final AuditRun run;
    private final CheckCruise check;
    private final AuditText text;
    private final AuditTables tables;

    private AuditPage(AuditRun run, CheckCruise check) {
        this.run = run;
        this.check = check;
        this.text = new AuditText(check);
        this.tables = new AuditTables(check);
    }

    static Content of(AuditRun run, CheckCruise check) {
        AuditPage page = new AuditPage(run, check);
        return out -> out.write(page.markup().getBytes(StandardCharsets.UTF_8));
    }

    private String markup() throws IOException {
        Design design = check.cruise().design();
        Html html = HtmlReport.begin("Check cruise: " + design.name());
        html.raw("<header class=\"head\">\n").element("p", "kind", "Check cruise");
        html.element("h1", design.name());
        html.element(
                "p",
                "where",
                check.plots().size() + " of "
                        + Headline.count(run.cruise().plots().size(), "plot") + " measured a second time, chosen "
                        + (check.settings().chosen() == Chosen.RANDOM ? "at random" : "by judgement"));
        answers(html);
        html.raw("</header>\n");
        html.section("findings", "What was found").raw(tables.findings()).endSection();
        html.section("limits", "Readings against their limits").raw(tables.judgements());
        html.raw(tables.readings()).endSection();
        html.section("crews", "Crews").raw(tables.crews()).endSection();
        html.section("plots", "Plots").raw(tables.plots());
        html.element("p", text.valueSentence());
        html.element("p", text.equivalenceSentence());
        html.element("p", text.standSentence());
        html.element("p", "notes", text.standing()).endSection();
        html.section("trees", "Trees").raw(tables.trees()).endSection();
        html.raw(rows());
        html.section("method", "Methods").raw("<ul>\n");
        check.notes().forEach(n -> html.element("li", n));
        AuditTables.METHOD.forEach(n -> html.element("li", n));
        html.raw("</ul>\n").endSection();
        html.raw(Cautions.markup().replace("id=\"limits\"", "id=\"cautions\""));
        html.raw("</main>\n<footer>").text("Quadmean check cruise. Every number here stands unrounded in audit.json.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }

    private void answers(Html html) {
        html.raw("<div class=\"answers\">\n<div class=\"answer\">\n").element("h2", "Within the limits");
        String cssClass = switch (check.verdict()) {
            case PASSED -> "verdict met";
            case FAILED -> "verdict missed";
            case NOT_JUDGED -> "verdict unknown";
        };
        html.element("p", cssClass, check.verdict().label());
        check.reasons().forEach(r -> html.element("p", "small", r + "."));
        if (check.verdict() == Verdict.NOT_JUDGED) {
            html.element("p", "small", "The design states no limits under [audit].");
        }
        html.raw("</div>\n<div class=\"answer\">\n").element("h2", "What it does to the value of plots");
        ValueCheck v = check.value();
        html.element("p", "big", v.reason().isEmpty() ? AuditText.signedPercent(v.percent()) : Rounding.UNKNOWN);
        html.element("p", "small", text.valueSentence());
        html.raw("</div>\n<div class=\"answer\">\n").element("h2", "Shown to agree");
        boolean shown = v.equivalence().map(e -> e.isShown()).orElse(false);
        boolean tested = v.equivalence().isPresent() && v.paired().isTestable();
        html.element(
                "p",
                "verdict " + (shown ? "met" : tested ? "missed" : "unknown"),
                shown ? "Yes" : tested ? "No" : v.equivalence().isPresent() ? "Not tested" : "Not asked");
        html.element("p", "small", text.equivalenceSentence());
        html.raw("</div>\n</div>\n");
    }

    private String rows() {
        Map<String, RowCount> tallies = new LinkedHashMap<>();
        tallies.put("Cruise", run.cruise().rows());
        tallies.put("Check", run.check().rows());
        return ProblemSection.markup(tallies, run.problems());
    }
}
