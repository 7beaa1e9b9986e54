package quadmean.report;

import java.util.List;
import quadmean.cruise.EstateResult;
import quadmean.estimate.EstateEstimate.Extent;
import quadmean.estimate.EstateEstimate.StratumExtent;
import quadmean.estimate.EstimateRow;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** How much ground is behind the estimates of an estate. */
final class EstateExtent {
    private EstateExtent() {}

    static String markup(EstateResult result) {
        Html html = new Html().section("extent", "Stands and plots");
        sentences(result).forEach(s -> html.element("p", s));
        UnitSystem units = result.design().units();
        String unit = units.area().label();
        HtmlTable table = HtmlTable.of(
                "Stands, their area and their plots",
                List.of(
                        Cell.text("Stratum"),
                        Cell.number("Stands with plots"),
                        Cell.number("Area (" + unit + ")"),
                        Cell.number("Plots"),
                        Cell.number("With one plot"),
                        Cell.number("Stands without plots"),
                        Cell.number("Their area (" + unit + ")")));
        for (StratumExtent stratum : result.estimate().strata()) {
            table.row(row(Names.stratum(result.design(), stratum.code()), stratum.extent(), units));
        }
        table.total(row(
                Names.stratum(result.design(), EstimateRow.ALL),
                result.estimate().stands(),
                units));
        return html.raw(table.markup()).endSection().toString();
    }

    /** The same in sentences, for the console too. */
    static List<String> sentences(EstateResult result) {
        Extent all = result.estimate().stands();
        UnitSystem units = result.design().units();
        String without = all.withoutPlots() == 0
                ? "Every stand of the table has plots."
                : Headline.count(all.withoutPlots(), "stand") + " of " + EstateHeadline.area(all.areaWithoutHa(), units)
                        + (all.withoutPlots() == 1 ? " has" : " have") + " no plots: no estimate is given for "
                        + (all.withoutPlots() == 1 ? "it" : "them") + ", and no total holds "
                        + (all.withoutPlots() == 1 ? "its" : "their") + " area.";
        String one = all.onePlot() == 0
                ? ""
                : Headline.count(all.onePlot(), "stand") + (all.onePlot() == 1 ? " has" : " have")
                        + " a single plot, which shows no variation: an estimate without an error of its own.";
        return one.isEmpty() ? List.of(without) : List.of(without, one);
    }

    private static List<Cell> row(String name, Extent extent, UnitSystem units) {
        return List.of(
                Cell.text(name),
                Cell.number(Rounding.count(extent.stands())),
                Cell.number(area(extent.areaHa(), units)),
                Cell.number(Rounding.count(extent.plots())),
                Cell.number(Rounding.count(extent.onePlot())),
                Cell.number(Rounding.count(extent.withoutPlots())),
                Cell.number(area(extent.areaWithoutHa(), units)));
    }

    private static String area(double areaHa, UnitSystem units) {
        return Rounding.decimals(1).text(Unit.HECTARE.convert(areaHa, units.area()));
    }
}
