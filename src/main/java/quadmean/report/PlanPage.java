package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import quadmean.chart.ChartSet;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.layout.FieldPlan;
import quadmean.layout.SheetSet;
import quadmean.plan.CruisePlan;
import quadmean.plan.KindComparison;
import quadmean.plan.PilotEffect;
import quadmean.plan.PlanOption;
import quadmean.plan.PlanOption.Size;
import quadmean.plan.PlanOption.Surer;
import quadmean.plan.PlanOption.TargetResult;
import quadmean.plan.StratumOutlook;
import quadmean.plan.TargetOutlook;
import quadmean.report.HtmlTable.Cell;
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
        html.raw(options()).raw(chances());
        html.raw("<ul>\n");
        plan.options().stream()
                .filter(o -> !o.notes().isEmpty())
                .forEach(o -> html.element("li", Wording.capital(o.name()) + ": " + String.join(" ", o.notes())));
        html.raw("</ul>\n");
        html.endSection();
        plan.costs().budget().ifPresent(b -> budget(html, b));
        html.raw(ChartSection.markup(charts));
        field.ifPresent(f -> layout(html, f));
        kinds.ifPresent(k -> html.raw(KindsPart.html(design, k)));
        expected(html);
        plan.pilot().ifPresent(p -> pilot(html, p));
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

    private String options() {
        boolean costs = plan.costs().areStated();
        List<Cell> header = new ArrayList<>(List.of(Cell.text("Sample"), Cell.number("Plots"), Cell.text("Parts")));
        plan.targets().forEach(t -> {
            header.add(Cell.number("Error of " + t.target().attribute().label() + " (%)"));
            header.add(Cell.number("Chance of its target"));
        });
        if (costs) {
            header.add(Cell.number("Cost (" + plan.costs().unit() + ")"));
        }
        HtmlTable table = HtmlTable.of("Smallest samples expected to reach the targets", header);
        for (PlanOption o : plan.options()) {
            List<Cell> row = new ArrayList<>(List.of(Cell.text(Wording.capital(o.name()))));
            Size size = o.atTarget().orElse(null);
            row.add(Cell.number(size == null ? Rounding.UNKNOWN : Rounding.count(size.plots())));
            row.add(Cell.text(size == null ? PlanWords.outOfReach(o) : PlanWords.parts(o, size)));
            for (int i = 0; i < plan.targets().size(); i++) {
                boolean served = i < o.results().size();
                row.add(Cell.number(served ? percent(o.results().get(i).expectedErrorPercent()) : Rounding.UNKNOWN));
                row.add(Cell.number(served ? chance(o.results().get(i)) : Rounding.UNKNOWN));
            }
            if (costs) {
                row.add(Cell.number(size == null ? Rounding.UNKNOWN : PlanWords.cost(size)));
            }
            table.row(row);
        }
        return table.markup();
    }

    private static String chance(TargetResult r) {
        double best = Double.isNaN(r.chanceAfterPilot()) ? r.chance() : r.chanceAfterPilot();
        return Rounding.percent(100 * best);
    }

    private static String percent(double value) {
        return Rounding.decimals(2).text(value);
    }

    /** One row an option: samples by chance, with the spread known and as its pilot leaves it. */
    private String chances() {
        boolean pilot = plan.pilot().isPresent();
        List<Cell> header = new ArrayList<>(List.of(Cell.text("Sample")));
        header.add(Cell.number("Plots for 80\u00a0%", "variation known"));
        header.add(Cell.number("Plots for 90\u00a0%", "variation known"));
        if (pilot) {
            header.add(Cell.number("Plots for 80\u00a0%", "as the pilot leaves it"));
            header.add(Cell.number("Plots for 90\u00a0%", "as the pilot leaves it"));
        }
        HtmlTable table = HtmlTable.of("Samples that reach each target more surely", header);
        for (PlanOption o : plan.options()) {
            List<Cell> row = new ArrayList<>(List.of(Cell.text(Wording.capital(o.name()))));
            o.surer()
                    .forEach(s -> row.add(s.size()
                            .map(z -> Cell.number(Rounding.count(z.plots()), PlanWords.shortParts(o, z)))
                            .orElse(Cell.number(Rounding.UNKNOWN, "out of reach"))));
            table.row(row);
        }
        return table.markup();
    }

    private void budget(Html html, double budget) {
        html.section("budget", "What the budget pays for");
        HtmlTable table = HtmlTable.of(
                "The largest samples for " + Wording.plain(budget) + " "
                        + plan.costs().unit(),
                List.of(
                        Cell.text("Sample"),
                        Cell.number("Plots"),
                        Cell.text("Parts"),
                        Cell.number("Cost (" + plan.costs().unit() + ")"),
                        Cell.number("Error of " + plan.target().attribute().label() + " (%)")));
        for (PlanOption o : plan.options()) {
            Size s = o.inBudget().orElse(null);
            table.row(List.of(
                    Cell.text(Wording.capital(o.name())),
                    Cell.number(s == null ? Rounding.UNKNOWN : Rounding.count(s.plots())),
                    Cell.text(s == null ? "does not pay for the smallest sample" : PlanWords.parts(o, s)),
                    Cell.number(s == null ? Rounding.UNKNOWN : PlanWords.cost(s)),
                    Cell.number(s == null ? Rounding.UNKNOWN : percent(s.errorPercent()))));
        }
        html.raw(table.markup()).endSection();
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

    private void expected(Html html) {
        html.section("expected", "What is expected");
        html.element("p", "Variation " + plan.variation() + ".");
        HtmlTable table = HtmlTable.of(
                "Expected variation between plots",
                List.of(
                        Cell.text("Attribute"),
                        Cell.text("Stratum"),
                        Cell.number("Area (" + design.units().area().label() + ")"),
                        Cell.number("CV (%)"),
                        Cell.number("Plots behind it")));
        for (TargetOutlook t : plan.targets()) {
            for (StratumOutlook s : t.strata()) {
                double area = Unit.HECTARE.convert(s.areaHa(), design.units().area());
                table.row(List.of(
                        Cell.text(Wording.capital(t.target().attribute().label())),
                        Cell.text(s.code()),
                        Cell.number(Rounding.significant(area, 4).text(area)),
                        Cell.number(Rounding.decimals(1).text(s.cvPercent())),
                        Cell.number(s.plots() == 0 ? "stated" : Rounding.count(s.plots()))));
            }
        }
        html.raw(table.markup()).endSection();
    }

    private void pilot(Html html, PilotEffect pilot) {
        html.section("pilot", "How sure the variation itself is");
        html.element("p", PlanWords.pilot(pilot));
        HtmlTable table = HtmlTable.of(
                "If plots vary more than the pilot showed",
                List.of(
                        Cell.text("The true CV is below"),
                        Cell.number("with confidence"),
                        Cell.number("Plots that it would take")));
        pilot.limits()
                .forEach(l -> table.row(List.of(
                        Cell.text(Rounding.percent(l.cvPercent())),
                        Cell.number(Wording.percent(100 * l.confidence())),
                        Cell.number(count(l.plots())))));
        html.raw(table.markup()).endSection();
    }

    private static String count(OptionalInt n) {
        return n.isPresent() ? Rounding.count(n.getAsInt()) : Rounding.UNKNOWN;
    }
}
