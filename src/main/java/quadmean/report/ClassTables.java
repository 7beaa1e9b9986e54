package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import quadmean.chart.SpeciesColours;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.ClassRow;
import quadmean.estimate.DiameterClass;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.StandStructure;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Stand and stock tables: one line for each diameter class, one column for each species, a table for each attribute. */
final class ClassTables {
    private final CruiseResult result;
    private final StandStructure structure;
    private final UnitSystem units;
    private final SpeciesColours colours;
    private final Footnotes notes = new Footnotes();

    private ClassTables(CruiseResult result) {
        this.result = result;
        this.structure = result.estimate().structure();
        this.units = result.design().units();
        this.colours = SpeciesColours.of(result);
    }

    static String markup(CruiseResult result) {
        return new ClassTables(result).section();
    }

    private String section() {
        if (structure.classes().isEmpty()) {
            return "";
        }
        Html html = new Html().section("tables", "Stand and stock tables");
        List<Attribute> first =
                structure.attributes().stream().filter(this::isFirst).toList();
        List<Attribute> others =
                structure.attributes().stream().filter(a -> !first.contains(a)).toList();
        tables(html, first, Basis.PER_AREA);
        if (!others.isEmpty()) {
            html.details("The other attributes by dbh class: "
                    + others.stream().map(Attribute::label).collect(Collectors.joining("; ")));
            tables(html, others, Basis.PER_AREA);
            html.endDetails();
        }
        html.details("Totals for the whole stand by dbh class");
        tables(html, structure.attributes(), Basis.TOTAL);
        html.endDetails().raw(notes.markup()).raw(standing());
        html.element(
                "p",
                "notes",
                "Below each number stands its sampling error; 0 is a class without a tallied tree. The lower limit of a class belongs to"
                        + " it, the upper to the next. Classes add up to the last line. stand-table.csv and stock-table.csv have"
                        + " every digit in both unit systems.");
        return html.endSection().toString();
    }

    /** The number of trees and what the cruise is about stand open, the rest folds away. */
    private boolean isFirst(Attribute attribute) {
        Attribute target = result.design().targetAttribute();
        Attribute stock =
                structure.attributes().contains(target) && target != Attribute.TREES ? target : Attribute.VOLUME;
        return attribute == Attribute.TREES || attribute == stock;
    }

    private void tables(Html html, List<Attribute> attributes, Basis basis) {
        for (Attribute attribute : attributes) {
            List<ClassRow> rows = structure.rows(attribute, basis);
            if (rows.isEmpty()) {
                continue;
            }
            if (rows.stream().allMatch(c -> Double.isNaN(c.row().mean()))) {
                html.element(
                        "p",
                        "notes",
                        Wording.capital(attribute.label()) + " by diameter class is unknown: "
                                + rows.get(0).row().reason() + ".");
            } else {
                html.raw(table(attribute, basis, rows));
            }
        }
    }

    private String table(Attribute attribute, Basis basis, List<ClassRow> rows) {
        List<String> species =
                rows.stream().map(c -> c.row().species()).distinct().toList();
        List<String> columns = new ArrayList<>(species.subList(1, species.size()));
        if (columns.size() > 1) {
            columns.add(EstimateRow.ALL);
        }
        List<Cell> header =
                new ArrayList<>(List.of(Cell.text("Dbh (" + units.diameter().label() + ")")));
        columns.forEach(code -> header.add(new Cell(head(code), HtmlTable.Kind.NUMBER)));
        HtmlTable table = HtmlTable.of(
                Wording.capital(attribute.label()) + RowText.basis(attribute, basis, units) + " ("
                        + Wording.units(result.design(), attribute, basis, units)
                        + ") by dbh class and species, with sampling error at "
                        + Wording.confidence(result.estimate().confidence()) + " confidence",
                header);
        for (DiameterClass size : structure.sizes()) {
            List<Cell> cells =
                    new ArrayList<>(List.of(Cell.markup("<span class=\"whole\">" + label(size) + "</span>")));
            columns.forEach(code -> cells.add(cell(find(rows, size, code))));
            table.row(cells);
        }
        List<Cell> last = new ArrayList<>(List.of(Cell.text("All")));
        columns.forEach(code -> last.add(cell(result.estimate().row(EstimateRow.ALL, code, attribute, basis))));
        return table.total(last).markup();
    }

    private String head(String code) {
        return code.equals(EstimateRow.ALL)
                ? "All species"
                : "<span class=\"swatch\" style=\"background:" + colours.hex(code) + "\"></span>" + Html.escape(code);
    }

    private static Optional<EstimateRow> find(List<ClassRow> rows, DiameterClass size, String species) {
        return rows.stream()
                .filter(c -> c.size().equals(size) && c.row().species().equals(species))
                .map(ClassRow::row)
                .findFirst();
    }

    private Cell cell(Optional<EstimateRow> found) {
        if (found.isEmpty()) {
            return Cell.number(Rounding.UNKNOWN);
        }
        EstimateRow row = found.get();
        if (row.mean() == 0) {
            return Cell.number("0");
        }
        return Cell.number(
                RowText.of(result.design(), row, units).mean(),
                (RowText.error(row) + notes.mark(row.reason())).strip());
    }

    private String label(DiameterClass size) {
        return limit(size.lowerCm()) + "–" + limit(size.upperCm());
    }

    private String limit(double cm) {
        return Wording.plain(Math.round(Unit.CENTIMETRE.convert(cm, units.diameter()) * 100) / 100.0);
    }

    /** What the stock rests on. */
    private String standing() {
        List<String> said = structure.attributes().stream()
                .filter(a ->
                        !Wording.standing(result.used(), a, EstimateRow.ALL).isEmpty())
                .map(a -> Wording.standsBehind(a) + " " + Wording.standing(result.used(), a, EstimateRow.ALL))
                .distinct()
                .toList();
        return said.isEmpty()
                ? ""
                : "<p class=\"notes\">" + Html.escape(Wording.capital(String.join("; ", said))) + ".</p>\n";
    }
}
