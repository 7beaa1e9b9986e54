package quadmean.report;

import java.util.List;
import java.util.Map;
import quadmean.cruise.CruiseResult;
import quadmean.height.HeightedTree;
import quadmean.model.HeightSource;
import quadmean.report.HtmlTable.Cell;
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
        CurveTables curves = new CurveTables(result.curves(), section.units);
        html.raw(section.sources()).raw(curves.chosen());
        html.details("Every curve form tried (printed when unfolded; also in curves.csv)")
                .raw(curves.tried())
                .endDetails();
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
}
