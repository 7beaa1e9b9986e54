package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import quadmean.chart.ChartSet;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.layout.FieldPlan;
import quadmean.layout.SheetSet;
import quadmean.plan.CruisePlan;
import quadmean.plan.KindComparison;
import quadmean.plan.PlanOption;
import quadmean.plan.PlanOption.Size;
import quadmean.plan.PlanOption.Surer;
import quadmean.plan.TargetOutlook;
import quadmean.units.Unit;

/** A plan on one page that needs nothing else. */
final class PlanPage {
    private static final List<String> METHOD = List.of(
            "The number of plots is the smallest that satisfies n ≥ (t·CV/E)²·(1 − n/N), Student's t on the degrees of"
                    + " freedom of that n (n − 1, or plots minus strata). 1 − n/N counts only where plots tile the tract and"
                    + " the design asks for it.",
            "Strata: shares by area; by area and variation (Neyman 1934); or by area, variation and cost (Cochran 1977,"
                    + " section 5.5, number from memory). Several targets take the larger number in each stratum.",
            "Clusters and two stages: the variance of a plot splits into ρ·S² between clusters and (1 − ρ)·S² within"
                    + " (Cochran 1977, chapter 10, and Kish 1965, from memory).",
            "Double sampling: S²·(1 − r²)/n2 + S²·r²/n1, the two samples in the ratio that costs least (Cochran 1977,"
                    + " chapter 12, number from memory). Counts with measured trees, and 3P on plots: squared percent errors"
                    + " add up (Bruce 1961, from memory), Satterthwaite's degrees of freedom.",
            "The chance of reaching a target takes the spread of the sample as chi-square (Kupper and Hafner 1989, from"
                    + " memory); after a pilot, the two spreads over one another as F. Both hold for normal values, and are"
                    + " rough for plots with many zeros.");

    private final Design design;
    private final CruisePlan plan;
    private final ChartSet charts;
    private final PlanTables tables;
    private final Optional<KindComparison> kinds;
    private final Optional<FieldPlan> field;

    private PlanPage(
            Design design,
            CruisePlan plan,
            ChartSet charts,
            Optional<KindComparison> kinds,
            Optional<FieldPlan> field) {
        this.kinds = kinds;
        this.field = field;
        this.design = design;
        this.plan = plan;
        this.charts = charts;
        this.tables = new PlanTables(design, plan);
    }

    static Content of(
            Design design,
            CruisePlan plan,
            ChartSet charts,
            Optional<KindComparison> kinds,
            Optional<FieldPlan> field) {
        PlanPage page = new PlanPage(design, plan, charts, kinds, field);
        return out -> out.write(page.markup().getBytes(StandardCharsets.UTF_8));
    }

    private String markup() throws IOException {
        Html html = HtmlReport.begin("Cruise plan: " + design.name());
        html.raw("<header class=\"head\">\n").element("p", "kind", "Cruise plan");
        html.element("h1", design.name());
        html.element("p", "where", where()).raw("</header>\n");
        answers(html);
        plan.notes().forEach(n -> html.element("p", n));
        html.section("options", "Ways to reach the targets");
        html.raw(tables.options()).raw(tables.chances());
        html.raw("<ul>\n");
        plan.options().stream()
                .filter(o -> !o.notes().isEmpty())
                .forEach(o -> html.element("li", Wording.capital(o.name()) + ": " + String.join(" ", o.notes())));
        html.raw("</ul>\n");
        html.endSection();
        plan.costs().budget().ifPresent(b -> tables.budget(html, b));
        html.raw(ChartSection.markup(charts));
        field.ifPresent(f -> layout(html, f));
        kinds.ifPresent(k -> html.raw(KindsPart.html(design, k)));
        tables.expected(html);
        plan.pilot().ifPresent(p -> tables.pilot(html, p));
        html.section("methods", "Methods").raw("<ul>\n");
        METHOD.forEach(m -> html.element("li", m));
        html.raw("</ul>\n").endSection();
        html.raw(Cautions.safety());
        html.raw("</main>\n<footer>")
                .text("Quadmean cruise plan, seed " + design.seed() + ", design "
                        + design.file().getFileName()
                        + " (SHA-256 " + design.sha256().substring(0, 12)
                        + "…). Every number here stands unrounded in plan.json. A plan is no promise: it is as good as the"
                        + " variation that it expects.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }

    private String where() {
        double area = Unit.HECTARE.convert(
                plan.targets().get(0).areaHa(), design.units().area());
        return Rounding.significant(area, 4).text(area) + " "
                + design.units().area().label() + "; variation " + plan.variation();
    }

    private void answers(Html html) {
        html.raw("<div class=\"answers\">\n");
        Optional<PlanOption> main =
                plan.laidOut().or(() -> plan.options().stream().findFirst());
        for (TargetOutlook t : plan.targets()) {
            html.raw("<div class=\"answer\">\n")
                    .element("h2", "Target for " + t.target().attribute().label());
            html.element("p", "mid", "±" + Wording.percent(t.target().errorPercent()));
            html.element(
                    "p",
                    "small",
                    "at " + Wording.confidence(t.target().confidence()) + " confidence; plots vary by "
                            + Rounding.percent(t.cvPercent()));
            html.raw("</div>\n");
        }
        main.ifPresent(o -> answer(html, o));
        html.raw("</div>\n");
    }

    private static void answer(Html html, PlanOption o) {
        html.raw("<div class=\"answer\">\n").element("h2", "Plots to run");
        if (o.isReachable()) {
            Size size = o.atTarget().orElseThrow();
            html.element("p", "mid", Rounding.count(size.plots()));
            html.element("p", "small", PlanWords.parts(o, size) + "; " + o.name());
        } else {
            html.element("p", "mid", "Out of reach");
            html.element("p", "small", PlanWords.outOfReach(o));
        }
        html.raw("</div>\n");
        Optional<Size> surer = o.surer().stream()
                .filter(s -> s.probability() == 0.9)
                .reduce((a, b) -> b)
                .flatMap(Surer::size);
        surer.ifPresent(s -> {
            html.raw("<div class=\"answer\">\n").element("h2", "To be 90\u00a0% sure of it");
            html.element("p", "mid", Rounding.count(s.plots()));
            html.element("p", "small", PlanWords.parts(o, s));
            html.raw("</div>\n");
        });
    }

    private void layout(Html html, FieldPlan laid) {
        SheetSet set = laid.set();
        if (set == null) {
            return;
        }
        html.section("layout", "Where the plots lie").raw("<div class=\"map\">\n");
        html.raw(ChartSection.figure(SheetMap.picture(laid.areas(), set, design.units(), design.seed())))
                .raw("</div>\n<ul>\n");
        laid.notes().forEach(n -> html.element("li", n));
        html.raw("</ul>\n");
        html.element("p", "The walk leg by leg, and everything else that the crew takes along, is in sheets.html.");
        html.endSection();
    }
}
