package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quadmean.chart.Wording;
import quadmean.cruise.EstateResult;
import quadmean.design.EstateSettings;
import quadmean.height.FillingCurves;
import quadmean.height.SpeciesCurve;
import quadmean.model.FillingCurve;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The height curves of an estate, region by region. */
final class EstateCurvesSection {
    /** More curves than this are left to {@code curves.csv}. */
    private static final int MOST_CURVES = 200;

    private EstateCurvesSection() {}

    static String markup(EstateResult result) {
        Html html = new Html().section("heights-section", "Heights");
        html.element("p", origin(result));
        UnitSystem units = result.design().units();
        String length = units.length().label();
        HtmlTable table = HtmlTable.of(
                "Height curves in use: d dbh, bh breast height",
                List.of(
                        Cell.text("Region"),
                        Cell.text("Species"),
                        Cell.text("Form"),
                        Cell.text("Curve"),
                        Cell.number("Heights behind it"),
                        Cell.number("Scatter (" + length + ")"),
                        Cell.number("Dbh from, to (" + units.diameter().label() + ")")));
        int curves = 0;
        for (Map.Entry<String, FillingCurves> region : result.curves().entrySet()) {
            for (FillingCurve curve : region.getValue().curves()) {
                curves++;
                if (curves <= MOST_CURVES) {
                    table.row(row(result, region.getKey(), curve));
                }
            }
        }
        html.raw(table.isEmpty() ? "" : table.markup());
        if (curves > MOST_CURVES) {
            html.element(
                    "p",
                    "notes",
                    "The first " + MOST_CURVES + " of " + Rounding.count(curves) + " curves; all are in curves.csv.");
        }
        return html.endSection().toString();
    }

    private static String origin(EstateResult result) {
        EstateSettings settings = result.design().estate().orElseThrow();
        String region =
                "Stands of a region share the curves of its species; a species without one of its own takes that of all"
                        + " species of the region together. ";
        return switch (result.fitted()) {
            case FITTED ->
                region + "The curves are fitted to heights drawn at random from the tally, at most "
                        + Rounding.count(settings.heightsPerCurve()) + " of a species in a region (seed "
                        + result.design().seed()
                        + "); the scatter is the robust standard deviation of those heights about"
                        + " their curve. Another run can fill heights from curves.csv: name it as curves under [estate].";
            case GIVEN ->
                region + "The curves are those of the file "
                        + settings.curves()
                                .map(p -> String.valueOf(p.getFileName()))
                                .orElse("")
                        + ", whatever heights they were fitted to.";
            case NONE -> "The tally has no heights, and no curves are given: nothing could be filled.";
        };
    }

    private static List<Cell> row(EstateResult result, String region, FillingCurve c) {
        UnitSystem units = result.design().units();
        return List.of(
                Cell.text(region.isEmpty() ? "all" : region),
                Cell.text(
                        c.species().equals(SpeciesCurve.POOLED)
                                ? "All others"
                                : Names.species(result.design(), c.species())),
                Cell.text(c.form().id() + (c.ratio() == 1 ? "" : ", × " + Rounding.constant(c.ratio()))),
                Cell.text(c.form().formula() + "; " + parameters(c)),
                Cell.number(Rounding.count(c.heights())),
                Cell.number(Rounding.decimals(2).text(Unit.METRE.convert(c.scatterM(), units.length()))),
                Cell.number(dbh(c.minDbhCm(), units) + ", " + dbh(c.maxDbhCm(), units)));
    }

    private static String parameters(FillingCurve c) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < c.parameters().length; i++) {
            parts.add("abc".charAt(i) + "\u00a0=\u00a0" + Rounding.constant(c.parameters()[i]));
        }
        return String.join(", ", parts) + " (" + c.units().length().label() + ", "
                + c.units().diameter().label() + ", breast height " + Wording.plain(c.breastHeight()) + ")";
    }

    private static String dbh(double cm, UnitSystem units) {
        return Rounding.decimals(1).text(Unit.CENTIMETRE.convert(cm, units.diameter()));
    }
}
