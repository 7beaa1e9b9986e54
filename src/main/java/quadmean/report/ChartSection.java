package quadmean.report;

import java.util.List;
import quadmean.chart.ChartSet;
import quadmean.chart.Picture;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.DiameterClass;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The charts, and the numbers behind the last of them. */
final class ChartSection {
    private ChartSection() {}

    static String markup(CruiseResult result, ChartSet charts) {
        Html html = new Html().section("charts", "Charts");
        if (!charts.missing().isEmpty()) {
            html.element("p", "warn", charts.missing());
        } else if (charts.pictures().isEmpty()) {
            html.element("p", "There is nothing to draw.");
        }
        html.raw("<div class=\"charts\">\n");
        for (Picture picture : charts.pictures()) {
            html.raw("<figure id=\"" + Html.escape(picture.id()) + "\"><div role=\"img\" aria-label=\""
                            + Html.escape(picture.altText()) + "\">")
                    .raw(picture.svg())
                    .raw("</div>\n")
                    .element("figcaption", picture.title())
                    .raw("</figure>\n");
        }
        html.raw("</div>\n");
        if (!result.estimate().diameters().isEmpty()) {
            html.details("Diameter classes in numbers").raw(diameters(result)).endDetails();
        }
        return html.endSection().toString();
    }

    private static String diameters(CruiseResult result) {
        UnitSystem units = result.design().units();
        Unit dbh = units.diameter();
        HtmlTable table = HtmlTable.of(
                "Trees by dbh class and species",
                List.of(
                        Cell.text("Dbh class (" + dbh.label() + ")"),
                        Cell.text("Species"),
                        Cell.number(Unit.TREES_PER_ACRE.label()),
                        Cell.number(Unit.TREES_PER_HECTARE.label())));
        for (DiameterClass c : result.estimate().diameters()) {
            double perAcre = Unit.TREES_PER_HECTARE.convert(c.treesPerHa(), Unit.TREES_PER_ACRE);
            table.row(List.of(
                    Cell.text(limit(c.lowerCm(), dbh) + " to " + limit(c.upperCm(), dbh)),
                    Cell.text(c.species()),
                    Cell.number(Rounding.decimals(1).text(perAcre)),
                    Cell.number(Rounding.decimals(1).text(c.treesPerHa()))));
        }
        return table.markup();
    }

    private static String limit(double cm, Unit dbh) {
        return Rounding.decimals(1).text(Unit.CENTIMETRE.convert(cm, dbh));
    }
}
