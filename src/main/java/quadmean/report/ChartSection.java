package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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
            html.raw(figure(picture));
        }
        html.raw("</div>\n");
        if (!result.estimate().diameters().isEmpty()) {
            html.details("Diameter classes in numbers").raw(diameters(result)).endDetails();
        }
        return html.endSection().toString();
    }

    static String figure(Picture picture) {
        return new Html()
                .raw("<figure id=\"" + Html.escape(picture.id()) + "\"><div role=\"img\" aria-label=\""
                        + Html.escape(picture.altText()) + "\">")
                .raw(picture.svg())
                .raw("</div>\n")
                .element("figcaption", picture.title())
                .raw("</figure>\n")
                .toString();
    }

    /** One line for each class, one column for each species, in both unit systems. */
    private static String diameters(CruiseResult result) {
        UnitSystem units = result.design().units();
        List<DiameterClass> classes = result.estimate().diameters();
        Set<String> species = new TreeSet<>();
        Map<Double, String> limits = new TreeMap<>();
        for (DiameterClass c : classes) {
            species.add(c.species());
            limits.put(
                    c.lowerCm(), limit(c.lowerCm(), units.diameter()) + " to " + limit(c.upperCm(), units.diameter()));
        }
        List<Cell> header = new ArrayList<>(
                List.of(Cell.text("Dbh class (" + units.diameter().label() + ")")));
        species.forEach(code -> header.add(Cell.number(code)));
        HtmlTable table = HtmlTable.of(
                "Trees by dbh class and species: " + perArea(units).label() + ", below it "
                        + perArea(RowText.other(units)).label(),
                header);
        limits.forEach((lower, label) -> {
            List<Cell> row = new ArrayList<>(List.of(Cell.text(label)));
            species.forEach(code -> row.add(classes.stream()
                    .filter(c -> c.lowerCm() == lower && c.species().equals(code))
                    .findFirst()
                    .map(c -> Cell.number(trees(c, units), trees(c, RowText.other(units))))
                    .orElse(Cell.number("0.0", "0.0"))));
            table.row(row);
        });
        return table.markup();
    }

    private static Unit perArea(UnitSystem units) {
        return units == UnitSystem.METRIC ? Unit.TREES_PER_HECTARE : Unit.TREES_PER_ACRE;
    }

    private static String trees(DiameterClass c, UnitSystem units) {
        return Rounding.decimals(1).text(Unit.TREES_PER_HECTARE.convert(c.treesPerHa(), perArea(units)));
    }

    private static String limit(double cm, Unit dbh) {
        return Rounding.decimals(1).text(Unit.CENTIMETRE.convert(cm, dbh));
    }
}
