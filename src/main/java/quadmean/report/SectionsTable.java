package quadmean.report;

import java.util.List;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.FelledSections;
import quadmean.volume.SummedStem;

/** How volumes of measured stems came about, and what they are. */
final class SectionsTable {
    private SectionsTable() {}

    static void section(Html html, FelledSections sections, UnitSystem units) {
        html.section("volumes", "How the volumes came about");
        html.element("p", "Volumes were " + sections.data().volumes() + ".");
        html.element(
                "p",
                "Between points diameters lie on straight lines (common practice, no source). Every section stands in"
                        + " sections.csv.");
        String length = units.length().label();
        HtmlTable table = HtmlTable.of(
                "Volumes of the trees",
                List.of(
                        Cell.text("Tree"),
                        Cell.number("Row"),
                        Cell.number("Dbh (" + units.diameter().label() + ")"),
                        Cell.number("Height (" + length + ")"),
                        Cell.number("From (" + length + ")"),
                        Cell.number("To (" + length + ")"),
                        Cell.number("Sections"),
                        Cell.number("Volume (" + units.volume().label() + ")")));
        sections.stems().forEach(s -> table.row(row(s, units)));
        if (!table.isEmpty()) {
            html.raw(table.markup());
        }
        html.endSection();
    }

    private static List<Cell> row(SummedStem s, UnitSystem units) {
        return List.of(
                Cell.text(s.stem().id()),
                Cell.number(Rounding.count(s.stem().row())),
                number(s.stem().dbhCm(), Unit.CENTIMETRE, units.diameter()),
                number(s.stem().heightM(), Unit.METRE, units.length()),
                number(s.volume().fromM(), Unit.METRE, units.length()),
                number(s.volume().toM(), Unit.METRE, units.length()),
                Cell.number(Rounding.count(s.volume().sections().size())),
                number(s.volume().volumeM3(), Unit.CUBIC_METRE, units.volume()));
    }

    private static Cell number(double inside, Unit from, Unit to) {
        double value = from.convert(inside, to);
        return Cell.number(value == 0 ? "0" : Rounding.significant(value, 3).text(value));
    }
}
