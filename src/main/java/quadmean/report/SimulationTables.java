package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.chart.Wording;
import quadmean.model.IntervalRule;
import quadmean.report.HtmlTable.Cell;
import quadmean.simulate.AttributeOutcome;
import quadmean.simulate.Cost;
import quadmean.simulate.Coverage;
import quadmean.simulate.LadderStep;
import quadmean.simulate.SimulationResult;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The tables of many cruises of a known forest. */
final class SimulationTables {
    private final UnitSystem units;

    SimulationTables(UnitSystem units) {
        this.units = units;
    }

    Unit unit(AttributeOutcome o) {
        return o.attribute().unit(o.basis(), units);
    }

    double in(AttributeOutcome o, double metric) {
        return o.attribute().unit(o.basis(), UnitSystem.METRIC).convert(metric, unit(o));
    }

    private String number(AttributeOutcome o, double metric) {
        return Rounding.significant(in(o, o.truth()), 4).text(in(o, metric));
    }

    /** Truth, mean, bias, and true against estimated error. */
    String estimates(SimulationResult result) {
        HtmlTable table = HtmlTable.of(
                "Estimates against the truth",
                List.of(
                        Cell.text("Attribute"),
                        Cell.number("Truth"),
                        Cell.number("Mean estimate"),
                        Cell.number("Bias"),
                        Cell.number("True standard error"),
                        Cell.number("Estimated, on average"),
                        Cell.number("Skewness")));
        for (AttributeOutcome o : result.attributes()) {
            table.row(List.of(
                    Cell.markup(Html.escape(
                            Wording.capital(Wording.perArea(o.attribute(), units)) + " (" + unit(o).label() + ")")),
                    Cell.number(number(o, o.truth())),
                    Cell.number(number(o, o.mean()), o.without() > 0 ? "none in " + Rounding.count(o.without()) : ""),
                    Cell.number(signed(o.biasPercent()), "± " + percent2(100 * o.biasError() / o.truth())),
                    Cell.number(percent2(100 * o.sd() / o.truth()), "± " + percent2(100 * o.sdError() / o.truth())),
                    Cell.number(percent2(100 * o.meanSe() / o.truth())),
                    Cell.number(Rounding.decimals(2).text(o.skewness()))));
        }
        return table.markup();
    }

    private static String percent2(double value) {
        return Double.isFinite(value) ? Rounding.decimals(2).text(value) + "\u00a0%" : Rounding.UNKNOWN;
    }

    private static String signed(double percent) {
        return (percent > 0 ? "+" : "") + percent2(percent);
    }

    /** How often limits held the truth, a row for each attribute and way. */
    String coverage(SimulationResult result) {
        HtmlTable table = HtmlTable.of(
                "How often " + Wording.confidence(result.design().confidence()) + " limits held the truth",
                List.of(
                        Cell.text("Attribute"),
                        Cell.text("Limits"),
                        Cell.number("Covered"),
                        Cell.number("Limits below the truth"),
                        Cell.number("Limits above the truth"),
                        Cell.number("Half width"),
                        Cell.number("Cruises")));
        for (AttributeOutcome o : result.attributes()) {
            for (Coverage c : o.coverages()) {
                table.row(List.of(
                        Cell.text(Wording.capital(o.attribute().label())),
                        Cell.text(c.rule().label()),
                        Cell.number(percent2(100 * c.share()), "± " + percent2(100 * c.error())),
                        Cell.number(share(c.below(), c)),
                        Cell.number(share(c.above(), c)),
                        Cell.number(percent2(100 * c.halfWidth() / o.truth())),
                        Cell.number(Rounding.count(c.intervals()))));
            }
        }
        return table.markup();
    }

    private static String share(long misses, Coverage c) {
        return percent2(100.0 * misses / c.intervals());
    }

    /** The same design with more plots. */
    String ladder(List<LadderStep> ladder) {
        HtmlTable table = HtmlTable.of(
                "The same design with more plots",
                List.of(Cell.text("Plots"), Cell.number("Covered"), Cell.number("Cruises")));
        ladder.forEach(s -> table.row(List.of(
                Cell.text(Rounding.count(s.plots())),
                Cell.number(
                        percent2(100 * s.coverage().share()),
                        "± " + percent2(100 * s.coverage().error())),
                Cell.number(Rounding.count(s.coverage().intervals())))));
        return table.markup();
    }

    /** What one cruise takes, a row for each design, with its error where several are compared. */
    String designs(List<SimulationResult> results) {
        List<Cell> header = new ArrayList<>(List.of(
                Cell.text("Design"),
                Cell.number("Plots"),
                Cell.number("Trees measured"),
                Cell.number("Counted"),
                Cell.number("Heights"),
                Cell.number("Walk (" + (units == UnitSystem.METRIC ? "km" : "mi") + ")"),
                Cell.number("Hours"),
                Cell.number("True error"),
                Cell.number("Bias"),
                Cell.number("Covered")));
        HtmlTable table = HtmlTable.of("What one cruise takes and brings, on average", header);
        results.forEach(r -> table.row(row(r)));
        return table.markup();
    }

    private List<Cell> row(SimulationResult r) {
        Cost cost = r.cost();
        Rounding one = Rounding.decimals(1);
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(r.design().name()),
                Cell.number(one.text(cost.plots())),
                Cell.number(one.text(cost.measured())),
                Cell.number(one.text(cost.counted())),
                Cell.number(one.text(cost.heights())),
                Cell.number(Rounding.decimals(2).text(walk(cost.walkM()))),
                Cell.number(one.text(cost.hours()))));
        AttributeOutcome target = r.target().orElse(null);
        if (target == null) {
            cells.addAll(List.of(
                    Cell.number(Rounding.UNKNOWN), Cell.number(Rounding.UNKNOWN), Cell.number(Rounding.UNKNOWN)));
            return cells;
        }
        cells.add(Cell.number(percent2(100 * target.sd() / target.truth())));
        cells.add(Cell.number(signed(target.biasPercent())));
        IntervalRule rule = r.design().estimation().interval();
        cells.add(target.coverage(rule)
                .or(() -> target.coverage(IntervalRule.STUDENT_T))
                .map(c -> Cell.number(percent2(100 * c.share()), c.rule().label()))
                .orElse(Cell.number(Rounding.UNKNOWN)));
        return cells;
    }

    /** Metres as kilometres or miles. */
    private double walk(double metres) {
        return units == UnitSystem.METRIC ? metres / 1000 : Unit.METRE.convert(metres, Unit.CHAIN) / 80;
    }
}
