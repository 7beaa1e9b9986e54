package quadmean.report;

import java.util.List;
import java.util.Objects;
import quadmean.model.FelledTree;
import quadmean.report.HtmlTable.Cell;
import quadmean.stats.LinearFit;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.VolumeFit;
import quadmean.volume.VolumeFitGroup;

/** The felled trees that move an equation most. */
final class InfluentialTrees {
    private InfluentialTrees() {}

    /** The trees that move the best equation most, or that there are none; empty without an equation. */
    static String markup(VolumeFitGroup group, UnitSystem units) {
        VolumeFit best = group.best().orElse(null);
        if (best == null) {
            return "";
        }
        String rule = "a Cook's distance above 4/n = " + VolumeFitTables.constant(best.cookLimit())
                + " or a leverage above 3p/n = "
                + VolumeFitTables.constant(best.leverageLimit()) + " (common practice, no source), "
                + best.form().formula();
        if (best.influential().isEmpty()) {
            return new Html().element("p", "No tree has " + rule + ".").toString();
        }
        LinearFit regression = Objects.requireNonNull(best.fit());
        HtmlTable table = HtmlTable.of(
                "Trees with " + rule,
                List.of(
                        Cell.text("Tree"),
                        Cell.number("Row"),
                        Cell.number("Dbh (" + units.diameter().label() + ")"),
                        Cell.number("Height (" + units.length().label() + ")"),
                        Cell.number("Observed (" + units.volume().label() + ")"),
                        Cell.number("Fitted (" + units.volume().label() + ")"),
                        Cell.number("Cook's distance"),
                        Cell.number("Leverage")));
        for (int i : best.influential()) {
            FelledTree tree = best.trees().get(i);
            table.row(List.of(
                    Cell.text(tree.id()),
                    Cell.number(Rounding.count(tree.row())),
                    Cell.number(VolumeFitTables.significant(Unit.CENTIMETRE.convert(tree.dbhCm(), units.diameter()))),
                    Cell.number(VolumeFitTables.significant(Unit.METRE.convert(tree.heightM(), units.length()))),
                    Cell.number(VolumeFitTables.significant(Unit.CUBIC_METRE.convert(tree.volumeM3(), units.volume()))),
                    Cell.number(
                            VolumeFitTables.significant(Unit.CUBIC_METRE.convert(best.fitted()[i], units.volume()))),
                    Cell.number(VolumeFitTables.constant(regression.cook(i))),
                    Cell.number(VolumeFitTables.constant(regression.leverages()[i]))));
        }
        return table.markup();
    }
}
