package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.height.CurveFit;
import quadmean.height.HeightCurve;
import quadmean.height.HeightedTree;
import quadmean.height.SpeciesCurve;
import quadmean.model.HeightSource;
import quadmean.report.HtmlTable.Cell;
import quadmean.stats.LeastSquaresFit;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Where heights came from: counts, curves in use, every form tried, trees beyond the curves. */
final class HeightSection {
    private final CruiseResult result;
    private final UnitSystem units;

    private HeightSection(CruiseResult result) {
        this.result = result;
        this.units = result.design().units();
    }

    static String markup(CruiseResult result) {
        HeightSection section = new HeightSection(result);
        Html html = new Html().section("heights-section", "Heights");
        html.raw(section.sources()).raw(section.chosen());
        html.printedDetails("Every curve form tried").raw(section.tried()).endDetails();
        section.extrapolated(html);
        return html.endSection().toString();
    }

    private String sources() {
        HtmlTable table =
                HtmlTable.of("Where tree heights came from", List.of(Cell.text("Source"), Cell.number("Trees")));
        for (Map.Entry<HeightSource, Long> entry : Facts.heightSources(result).entrySet()) {
            table.row(List.of(Cell.text(words(entry.getKey())), Cell.number(Rounding.count(entry.getValue()))));
        }
        return table.markup();
    }

    private static String words(HeightSource source) {
        return switch (source) {
            case MEASURED -> "Height written in the tally";
            case READING -> "Worked out from clinometer readings";
            case SPECIES_CURVE -> "Filled from the curve of the species";
            case CALIBRATED_CURVE -> "Filled from the curve of the species, moved to the level of the plot";
            case GROUP_CURVE -> "Filled from the curve of the species group";
            case POOLED_CURVE -> "Filled from the curve of all species";
            case NONE -> "No height and no curve";
        };
    }

    private String chosen() {
        HtmlTable table = HtmlTable.of(
                "Height curves in use: d dbh (" + units.diameter().label() + "), bh breast height, heights ("
                        + units.length().label() + ")",
                List.of(
                        Cell.text("Species"),
                        Cell.number("Heights"),
                        Cell.text("Form"),
                        Cell.text("Parameters"),
                        Cell.number("Fitted to dbh"),
                        Cell.text("Why")));
        for (SpeciesCurve search : Facts.searches(result)) {
            HeightCurve curve = search.chosen();
            boolean isPooled = curve != null && curve.species().equals(SpeciesCurve.POOLED);
            table.row(List.of(
                    Cell.text(name(search)),
                    Cell.number(Rounding.count(search.heights())),
                    Cell.text(
                            curve == null
                                    ? Rounding.UNKNOWN
                                    : isPooled && !search.species().equals(SpeciesCurve.POOLED)
                                            ? "as all species"
                                            : curve.form().label() + ": "
                                                    + curve.form().formula()),
                    Cell.text(curve == null ? Rounding.UNKNOWN : parameters(curve.parameters())),
                    Cell.number(curve == null ? Rounding.UNKNOWN : range(curve)),
                    Cell.text(Wording.capital(search.reason()))));
        }
        return table.markup();
    }

    private String tried() {
        HtmlTable table = HtmlTable.of(
                "Curve forms tried: least squares, dbh (" + units.diameter().label() + "), heights ("
                        + units.length().label() + ")",
                List.of(
                        Cell.text("Species"),
                        Cell.text("Form"),
                        Cell.text("Status"),
                        Cell.text("Parameters (standard error)"),
                        Cell.number("RSS (" + units.length().label() + "²)"),
                        Cell.number("Sigma (" + units.length().label() + ")"),
                        Cell.number("AICc"),
                        Cell.number("n"),
                        Cell.text("Remark")));
        for (SpeciesCurve search : Facts.searches(result)) {
            if (search.fits().isEmpty()) {
                table.row(List.of(
                        Cell.text(name(search)),
                        Cell.text("none"),
                        Cell.text("not tried"),
                        Cell.text(""),
                        Cell.number(""),
                        Cell.number(""),
                        Cell.number(""),
                        Cell.number(Rounding.count(search.heights())),
                        Cell.text(search.reason())));
            }
            search.fits().forEach(tried -> table.row(row(search, tried)));
        }
        return table.markup();
    }

    private List<Cell> row(SpeciesCurve search, CurveFit tried) {
        LeastSquaresFit fit = tried.fit();
        String status = tried.status().label() + (Facts.isChosen(search, tried) ? ", chosen" : "");
        String form = tried.form().label() + " (" + tried.form().source() + ")";
        return List.of(
                Cell.text(name(search)),
                Cell.text(form),
                Cell.text(status),
                Cell.text(fit == null ? Rounding.UNKNOWN : parameters(fit)),
                Cell.number(fit == null ? Rounding.UNKNOWN : Rounding.constant(fit.rss())),
                Cell.number(fit == null ? Rounding.UNKNOWN : Rounding.constant(fit.sigma())),
                Cell.number(
                        fit == null ? Rounding.UNKNOWN : Rounding.decimals(2).text(fit.aicc())),
                Cell.number(Rounding.count(search.heights())),
                Cell.text(tried.remark()));
    }

    private void extrapolated(Html html) {
        List<HeightedTree> trees = Facts.extrapolated(result);
        if (trees.isEmpty()) {
            html.element("p", "No height was filled outside the diameters that its curve was fitted to.");
            return;
        }
        html.element(
                "p",
                "warn",
                trees.size() == 1
                        ? "1 height is extrapolated: the tree's dbh lies outside the diameters that its curve was fitted to."
                        : Rounding.count(trees.size())
                                + " heights are extrapolated: their dbh lies outside the diameters that the curve was fitted to.");
        HtmlTable table = HtmlTable.of(
                "Extrapolated heights"
                        + (trees.size() > JsonHeights.MOST_TREES
                                ? ", the first " + JsonHeights.MOST_TREES + "; all are in trees.csv"
                                : ""),
                List.of(
                        Cell.text("Tree"),
                        Cell.text("Species"),
                        Cell.number("Dbh (" + units.diameter().label() + ")"),
                        Cell.number("Height (" + units.length().label() + ")")));
        trees.stream()
                .limit(JsonHeights.MOST_TREES)
                .forEach(t -> table.row(List.of(
                        Cell.text(t.tree().label()),
                        Cell.text(t.tree().species()),
                        Cell.number(Rounding.decimals(1)
                                .text(Unit.CENTIMETRE.convert(t.tree().dbhCm(), units.diameter()))),
                        Cell.number(Rounding.decimals(1).text(Unit.METRE.convert(t.heightM(), units.length()))))));
        html.details("List of extrapolated heights").raw(table.markup()).endDetails();
    }

    private String name(SpeciesCurve search) {
        return search.species().equals(SpeciesCurve.POOLED) ? "All species" : search.species();
    }

    private String range(HeightCurve curve) {
        Rounding one = Rounding.decimals(1);
        return one.text(Unit.CENTIMETRE.convert(curve.minDbhCm(), units.diameter())) + " to "
                + one.text(Unit.CENTIMETRE.convert(curve.maxDbhCm(), units.diameter())) + " "
                + units.diameter().label();
    }

    private static String parameters(double[] values) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            parts.add((char) ('a' + i) + "\u00a0=\u00a0" + Rounding.constant(values[i]));
        }
        return String.join(", ", parts);
    }

    private static String parameters(LeastSquaresFit fit) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < fit.parameters().length; i++) {
            String error = fit.hasFullRank() ? Rounding.constant(fit.standardError(i)) : "unknown";
            parts.add((char) ('a' + i) + "\u00a0=\u00a0" + Rounding.constant(fit.parameters()[i]) + " (" + error + ")");
        }
        return String.join(", ", parts);
    }
}
