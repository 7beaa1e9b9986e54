package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.plan.CruisePlan;
import quadmean.plan.PilotEffect;
import quadmean.plan.PlanOption;
import quadmean.plan.PlanOption.Size;
import quadmean.plan.PlanOption.TargetResult;
import quadmean.plan.StratumOutlook;
import quadmean.plan.TargetOutlook;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;

/** The tables of a plan's page. */
final class PlanTables {
    private final Design design;
    private final CruisePlan plan;

    PlanTables(Design design, CruisePlan plan) {
        this.design = design;
        this.plan = plan;
    }

    String options() {
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
    String chances() {
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

    void budget(Html html, double budget) {
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

    void expected(Html html) {
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

    void pilot(Html html, PilotEffect pilot) {
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
