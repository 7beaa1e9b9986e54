package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import quadmean.audit.CrewDifference;
import quadmean.audit.PlotState.State;
import quadmean.audit.ProgressReport;
import quadmean.audit.Stopping.Decision;
import quadmean.audit.StoppingCoverage;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.design.ProgressSettings.Assigned;
import quadmean.estimate.PlotShares;
import quadmean.estimate.StratumPlots;
import quadmean.model.Stratum;
import quadmean.report.HtmlTable.Cell;

/** A cruise under way on one page that needs nothing else. */
final class ProgressPage {
    private static final int TREES = 20;

    private final ProgressReport report;
    private final ProgressText text;
    private final Design design;

    private ProgressPage(ProgressReport report) {
        this.report = report;
        this.text = new ProgressText(report);
        this.design = report.design();
    }

    static Content of(ProgressReport report) {
        ProgressPage page = new ProgressPage(report);
        return out -> out.write(page.markup().getBytes(StandardCharsets.UTF_8));
    }

    private String markup() throws IOException {
        Html html = HtmlReport.begin("Progress: " + design.name());
        html.raw("<header class=\"head\">\n").element("p", "kind", "Cruise under way");
        html.element("h1", design.name()).element("p", "where", text.plots());
        answers(html);
        html.raw("</header>\n");
        plots(html);
        more(html);
        coverage(html);
        crews(html);
        html.section("again", "Trees to measure again first");
        if (report.cruise().remeasure().isEmpty()) {
            html.element("p", "None.");
        } else {
            html.raw(RemeasureTable.markup(report.cruise(), TREES, "Most harmful first", List.of()));
            html.raw(RemeasureTable.legend(report.cruise(), TREES));
        }
        html.endSection();
        html.raw(ProblemSection.markup(report.cruise()));
        html.raw(Cautions.markup());
        html.raw("</main>\n<footer>")
                .text("Quadmean progress of a cruise. Every number here stands unrounded in progress.json.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }

    private void answers(Html html) {
        Decision decision = report.stopping().decision();
        html.raw("<div class=\"answers\">\n<div class=\"answer\">\n").element("h2", "How far");
        html.element("p", "big", report.count(State.DONE) + " plots");
        html.element("p", "small", report.stopping().state().label() + ". " + text.plots() + ".");
        html.raw("</div>\n<div class=\"answer\">\n").element("h2", "So far");
        html.element("p", "mid", Wording.capital(text.estimate()));
        html.element("p", "small", text.target());
        html.raw("</div>\n<div class=\"answer\">\n").element("h2", "May it stop");
        boolean may = decision == Decision.MAY_STOP || decision == Decision.DONE;
        html.element(
                "p",
                "verdict " + (may ? "met" : decision == Decision.CANNOT_TELL ? "unknown" : "missed"),
                switch (decision) {
                    case MAY_STOP -> "Yes";
                    case DONE -> "Done";
                    case CANNOT_TELL -> "Cannot tell";
                    default -> "Not yet";
                });
        text.stopping().forEach(line -> html.element("p", "small", line));
        html.raw("</div>\n</div>\n");
        html.element("p", "notes", text.standing());
        if (!text.caution().isEmpty()) {
            html.element("p", "warn", text.caution());
        }
    }

    private void plots(Html html) {
        html.section("plots", "Plots");
        HtmlTable strata = HtmlTable.of(
                "By stratum",
                List.of(
                        Cell.text("Stratum"),
                        Cell.number("Run"),
                        Cell.number("Missing"),
                        Cell.number("Not reached"),
                        Cell.text("Which are missing")));
        for (Stratum s : design.stratumList()) {
            strata.row(List.of(
                    Cell.text(s.name()),
                    count(s, State.DONE),
                    count(s, State.MISSING),
                    count(s, State.NOT_REACHED),
                    Cell.text(String.join(", ", text.missing(s.code())))));
        }
        html.raw(strata.markup());
        if (!report.subsets().isEmpty()) {
            HtmlTable subsets = HtmlTable.of(
                    "Subsets of the plan, each a sample of the whole tract",
                    List.of(Cell.text("Subset"), Cell.number("Plots"), Cell.number("Run"), Cell.text("State")));
            report.subsets()
                    .forEach(s -> subsets.row(List.of(
                            Cell.text(s.name()),
                            Cell.number(Rounding.count(s.plots())),
                            Cell.number(Rounding.count(s.done())),
                            Cell.text(s.isWhole() ? "whole" : s.isPart() ? "part walked" : "not begun"))));
            html.raw(subsets.markup());
        }
        html.endSection();
    }

    private Cell count(Stratum s, State state) {
        return Cell.number(Rounding.count(report.plots().stream()
                .filter(p -> p.stratum().equals(s.code()) && p.state() == state)
                .count()));
    }

    private void more(Html html) {
        List<PlotShares> shares = report.cruise().estimate().needed().get(0).shares();
        if (shares.isEmpty()) {
            return;
        }
        html.section("more", "How many more, and where");
        HtmlTable table = HtmlTable.of(
                "Plots still to run for the target, shared by area",
                List.of(Cell.text("Stratum"), Cell.number("Run"), Cell.number("Needed"), Cell.number("More")));
        for (StratumPlots s : shares.get(0).strata()) {
            table.row(List.of(
                    Cell.text(Names.stratum(report.cruise().design(), s.stratum())),
                    Cell.number(Rounding.count(s.run())),
                    Cell.number(Rounding.count(s.needed())),
                    Cell.number(Rounding.count(s.more()))));
        }
        html.raw(table.markup()).endSection();
    }

    /** What looking costs: simulated, beside what the limits say of themselves. */
    private void coverage(Html html) {
        html.section("coverage", "What stopping early does to the limits");
        List<StoppingCoverage.Row> rows = StoppingCoverage.near(design.confidence(), design.targetErrorPercent());
        StoppingCoverage.Row any = rows.get(0);
        html.element(
                "p",
                "Limits say how often they hold on the footing that the number of plots was fixed beforehand. Whoever looks at"
                        + " them to decide when to stop gets limits that hold less often. Simulated on two completely mapped"
                        + " stands: plots in subsets of " + any.subset() + ", " + Rounding.count(any.runs())
                        + " cruises a line, target ±" + Wording.percent(any.targetPercent())
                        + "; your stand will differ.");
        HtmlTable table = HtmlTable.of(
                "How often limits held that say " + Wording.confidence(any.confidence()),
                List.of(
                        Cell.text("Stand"),
                        Cell.text("When to stop"),
                        Cell.number("Plots before the first look"),
                        Cell.number("Limits held"),
                        Cell.number("Plots on average")));
        for (StoppingCoverage.Row r : rows) {
            boolean naive = r.rule().equals("sequential") && r.minimum() == r.subset();
            table.row(List.of(
                    Cell.text(r.stand() + ", CV " + Rounding.percent(r.cvPercent())),
                    Cell.text(naive ? "naive: at the first narrow limits" : rule(r.rule())),
                    Cell.number(r.minimum() == 0 ? Rounding.UNKNOWN : Rounding.count(r.minimum())),
                    Cell.number(Rounding.percent(r.coveragePercent())),
                    Cell.number(Rounding.decimals(1).text(r.meanPlots()))));
        }
        html.raw(table.markup()).endSection();
    }

    private static String rule(String rule) {
        return switch (rule) {
            case "sequential" -> "sequential";
            case "two_stage" -> "two stages";
            default -> "number fixed beforehand";
        };
    }

    private void crews(Html html) {
        if (report.crews().isEmpty()) {
            return;
        }
        boolean random = design.followUp().progress().assigned() == Assigned.RANDOM;
        html.section("crews", "Crews");
        html.element(
                "p",
                random
                        ? "Plots were given to crews at random: a difference larger than chance is one between crews."
                        : "Plots were not given to crews at random (progress.crews_assigned): differences describe the plots, and"
                                + " may be those of the ground. A check cruise tells crews apart.");
        HtmlTable table = HtmlTable.of(
                Wording.capital(design.targetAttribute().label()) + " of their plots, less the mean of the stratum",
                List.of(
                        Cell.text("Crew"),
                        Cell.number("Plots"),
                        Cell.number("In percent of the mean"),
                        Cell.number("Against the others (Welch's t test)")));
        for (CrewDifference c : report.crews()) {
            table.row(List.of(
                    Cell.text(c.crew()),
                    Cell.number(Rounding.count(c.plots())),
                    Cell.number(AuditText.signedPercent(c.percent())),
                    Cell.number(random ? AuditText.p(c.pValue()) : "not tested")));
        }
        html.raw(table.markup()).endSection();
    }
}
