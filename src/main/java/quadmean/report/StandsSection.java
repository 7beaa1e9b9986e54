package quadmean.report;

import java.util.List;
import quadmean.chart.Wording;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.estimate.EstateSpread;
import quadmean.estimate.EstateSpread.StandLine;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** How well the stands of an estate are known one by one: in a few numbers, and those that matter most. */
final class StandsSection {
    private final EstateResult result;
    private final EstateSpread spread;
    private final Design design;
    private final UnitSystem units;

    private StandsSection(EstateResult result, EstateSpread spread) {
        this.result = result;
        this.spread = spread;
        this.design = result.design();
        this.units = design.units();
    }

    static String markup(EstateResult result, EstateSpread spread) {
        return new StandsSection(result, spread).markup();
    }

    private String markup() {
        Html html = new Html().section("stands", "Stand by stand");
        html.element("p", summary());
        html.raw(table(
                "The " + Headline.count(spread.largest().size(), "stand") + " with the largest totals of "
                        + spread.attribute().label(),
                spread.largest()));
        html.raw(table(
                "The " + Headline.count(spread.worst().size(), "stand") + " with the largest sampling errors of "
                        + spread.attribute().label(),
                spread.worst()));
        html.element(
                "p",
                "notes",
                "All stands are in stands.csv, with every attribute, its error and its limits; stand-species.csv has the"
                        + " species of each.");
        return html.endSection().toString();
    }

    private String summary() {
        if (spread.known() == 0) {
            return "No stand has a sampling error of its own.";
        }
        return Rounding.count(spread.known()) + " of " + Headline.count(spread.stands(), "stand")
                + " with plots have a sampling error of " + spread.attribute().label() + " at "
                + Wording.confidence(result.estimate().confidence()) + " confidence. Half of them lie below "
                + Rounding.percent(spread.medianErrorPercent()) + "; " + Rounding.count(spread.withinTarget())
                + (spread.withinTarget() == 1 ? " is" : " are") + " within the ±"
                + Wording.percent(design.targetErrorPercent())
                + " that is set for the estate. A few plots tell little of one stand: use its limits, not its mean alone.";
    }

    private String table(String caption, List<StandLine> lines) {
        String perArea = Wording.units(design, spread.attribute(), Basis.PER_AREA, units);
        String total = Wording.units(design, spread.attribute(), Basis.TOTAL, units);
        HtmlTable table = HtmlTable.of(
                caption,
                List.of(
                        Cell.text("Stand"),
                        Cell.text("Stratum"),
                        Cell.text("Region"),
                        Cell.number("Area (" + units.area().label() + ")"),
                        Cell.number("Plots"),
                        Cell.number(Wording.capital(Wording.perArea(spread.attribute(), units)) + " (" + perArea + ")"),
                        Cell.number("Total (" + total + ")"),
                        Cell.number("Sampling error")));
        Footnotes notes = new Footnotes();
        for (StandLine line : lines) {
            table.row(List.of(
                    Cell.text(line.stand().code()),
                    Cell.text(line.stand().stratum()),
                    Cell.text(line.stand().region()),
                    Cell.number(Rounding.decimals(1)
                            .text(Unit.HECTARE.convert(line.stand().areaHa(), units.area()))),
                    Cell.number(Rounding.count(line.plots())),
                    Cell.number(RowText.of(design, line.perArea(), units).mean()),
                    Cell.number(RowText.of(design, line.total(), units).mean()),
                    Cell.number(RowText.error(line.perArea())
                            + notes.mark(line.perArea().reason()))));
        }
        return table.isEmpty() ? "" : table.markup() + notes.markup();
    }
}
