package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import quadmean.chart.SpreadChart;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.model.IntervalRule;
import quadmean.simulate.AttributeOutcome;
import quadmean.simulate.SimulationResult;
import quadmean.simulate.SimulationStudy;

/** What many cruises of a known forest came to, on one page that needs nothing else. */
final class SimulationPage {
    private static final List<String> METHOD = List.of(
            "Each cruise lays out plots anew by the design's own layout, takes the trees that are on them, writes a tally, and"
                    + " works it through by the same code as a real cruise: height curves, volumes, estimates, limits. Checks for mistakes"
                    + " are left out: trees are measured without any.",
            "The truth is a complete tally of the forest by that code.",
            "Shares of limits are of the cruises that had any; how many had stands beside them.",
            "Behind ± stands one Monte Carlo standard error: what the number of cruises leaves to chance. Twice of it is no"
                    + " difference worth a word.",
            "The true standard error is the standard deviation of the estimates over all cruises; the estimated one is the mean of"
                    + " those that cruises work out for themselves. Limits can only be right where the two agree.",
            "Cruises on paper are no estimate of any real stand, no appraisal and no scale. Where local rules ask for a licensed or"
                    + " registered forester, their judgement and those rules come first.",
            "A known forest is one forest. What holds in it is a warning or an encouragement for yours, no proof.",
            "The walk starts and ends at the south-west corner, on the way that plan would draw; hours are the walk, the time on"
                    + " each plot, and what [simulate] says of trees.");

    private final SimulationStudy study;
    private final SimulationTables tables;
    private final Design design;

    private SimulationPage(SimulationStudy study) {
        this.study = study;
        this.design = study.first().design();
        this.tables = new SimulationTables(design.units());
    }

    static Content of(SimulationStudy study) {
        SimulationPage page = new SimulationPage(study);
        return out -> out.write(page.markup().getBytes(StandardCharsets.UTF_8));
    }

    private String markup() throws IOException {
        SimulationResult first = study.first();
        Html html = HtmlReport.begin("Cruises on paper: " + design.name());
        html.raw("<header class=\"head\">\n");
        html.element("p", "kind", "A known forest cruised on paper");
        html.element("h1", design.name());
        html.element(
                "p",
                "where",
                Rounding.count(first.cruises()) + " cruises of " + study.words() + "; seed " + first.seed());
        html.raw("</header>\n");
        first.target().ifPresent(t -> answers(html, t));
        html.section("verdict", "What it means").raw("<ul>\n");
        study.verdict().forEach(v -> html.element("li", v));
        html.raw("</ul>\n").endSection();
        html.section("spread", "How estimates were spread").raw("<div class=\"charts\">\n");
        first.attributes().forEach(a -> html.raw(ChartSection.figure(SpreadChart.picture(a, design.units()))));
        html.raw("</div>\n").endSection();
        html.section("estimates", "Estimates").raw(tables.estimates(first)).endSection();
        html.section("coverage", "Limits").raw(tables.coverage(first));
        if (!study.ladder().isEmpty()) {
            html.raw(tables.ladder(study.ladder()));
        }
        html.endSection();
        designs(html);
        notes(html);
        html.raw("</main>\n<footer>")
                .text("Quadmean cruises on paper. Every number here stands unrounded in simulate.json.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }

    private void answers(Html html, AttributeOutcome target) {
        html.raw("<div class=\"answers\">\n<div class=\"answer\">\n");
        html.element("h2", "Limits that held the truth");
        IntervalRule own = design.estimation().interval();
        target.coverage(own).or(() -> target.coverage(IntervalRule.STUDENT_T)).ifPresent(c -> {
            html.element("p", "mid", Rounding.percent(100 * c.share()));
            html.element(
                    "p",
                    "small",
                    "of " + Wording.confidence(design.confidence()) + " limits by "
                            + c.rule().label() + ", " + target.attribute().label());
        });
        html.raw("</div>\n<div class=\"answer\">\n").element("h2", "Bias");
        html.element("p", "mid", Rounding.decimals(2).text(target.biasPercent()) + "\u00a0%");
        html.element(
                "p",
                "small",
                "± " + Rounding.decimals(2).text(100 * target.biasError() / target.truth())
                        + "\u00a0% by the number of cruises");
        html.raw("</div>\n<div class=\"answer\">\n").element("h2", "True standard error");
        html.element("p", "mid", Rounding.percent(100 * target.sd() / target.truth()));
        html.element(
                "p",
                "small",
                "cruises estimate it at " + Rounding.percent(100 * target.meanSe() / target.truth()) + " on average");
        html.raw("</div>\n</div>\n");
    }

    private void designs(Html html) {
        List<SimulationResult> all = new ArrayList<>(List.of(study.first()));
        all.addAll(study.beside());
        html.section("cost", study.beside().isEmpty() ? "What a cruise takes" : "Designs that take as long");
        html.raw(tables.designs(all));
        if (!study.beside().isEmpty()) {
            html.element(
                    "p",
                    "notes",
                    "The number of plots of the other designs was set so that a cruise takes about as many hours as by the"
                            + " first; a complete tally takes what it takes.");
        }
        html.endSection();
    }

    private void notes(Html html) {
        html.section("method", "How it was done").raw("<ul>\n");
        study.first().notes().forEach(n -> html.element("li", n));
        study.beside()
                .forEach(r -> r.notes().stream()
                        .filter(n -> !study.first().notes().contains(n))
                        .forEach(n -> html.element("li", r.design().name() + ": " + n)));
        METHOD.forEach(m -> html.element("li", m));
        html.raw("</ul>\n").endSection();
    }
}
