package quadmean.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import quadmean.chart.Wording;
import quadmean.estimate.EstimateRow;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.UnitSystem;

/** One line for each species or stratum, one column for each attribute, in the design's units. */
final class CompactTable {
    private final ShownRows shown;
    private final UnitSystem units;
    private final By by;

    private CompactTable(ShownRows shown, By by) {
        this.shown = shown;
        this.units = shown.design().units();
        this.by = by;
    }

    /** What the lines stand for. */
    enum By {
        SPECIES("Species"),
        STRATUM("Stratum"),
        PRODUCT("Product"),
        LOG("Log, from the butt");

        private final String title;

        By(String title) {
            this.title = title;
        }

        private String code(EstimateRow row) {
            return switch (this) {
                case SPECIES -> row.species();
                case STRATUM -> row.stratum();
                case PRODUCT -> row.part().product();
                case LOG -> row.part().place();
            };
        }

        private String name(ShownRows shown, String code) {
            return switch (this) {
                case SPECIES -> Names.species(shown.design(), code);
                case STRATUM -> Names.stratum(shown.design(), code);
                case PRODUCT -> Names.product(shown.design(), code);
                case LOG -> code.equals(EstimateRow.ALL) ? "All logs" : code;
            };
        }
    }

    static String markup(ShownRows shown, String caption, Predicate<EstimateRow> chosen, By by) {
        return withoutStandings(shown, caption, chosen, by) + standings(shown, chosen);
    }

    /** The table without the note that its daggers lead to, where one note serves several tables. */
    static String withoutStandings(ShownRows shown, String caption, Predicate<EstimateRow> chosen, By by) {
        return new CompactTable(shown, by).markup(caption, chosen);
    }

    /** What the dagger means: how far what stands behind the rows can be trusted; empty if nothing needs saying. */
    static String standings(ShownRows shown, Predicate<EstimateRow> chosen) {
        Set<String> said = new LinkedHashSet<>();
        shown.rows().stream()
                .filter(chosen)
                .filter(r -> !shown.standing(r).isEmpty())
                .forEach(r -> said.add(Wording.standsBehind(r.attribute()) + ": "
                        + Wording.standing(shown.used(), r.attribute(), EstimateRow.ALL)));
        return said.isEmpty() ? "" : "<p class=\"notes\">† " + Html.escape(String.join("; ", said)) + ".</p>\n";
    }

    private String markup(String caption, Predicate<EstimateRow> chosen) {
        List<EstimateRow> rows = shown.rows().stream().filter(chosen).toList();
        Set<String> codes = new LinkedHashSet<>();
        rows.forEach(row -> codes.add(by.code(row)));
        List<EstimateRow> columns = columns(rows);
        List<Cell> header = new ArrayList<>(List.of(Cell.text(by.title)));
        columns.forEach(c -> header.add(Cell.number(Wording.capital(RowText.what(c, units)) + " ("
                + Wording.units(shown.design(), c.attribute(), c.basis(), units) + ")")));
        HtmlTable table = HtmlTable.of(caption, header);
        Footnotes notes = new Footnotes();
        for (String one : lastAll(codes)) {
            List<Cell> cells = new ArrayList<>(List.of(Cell.markup(swatch(one) + Html.escape(by.name(shown, one)))));
            for (EstimateRow column : columns) {
                cells.add(rows.stream()
                        .filter(r -> by.code(r).equals(one) && isSameKind(r, column))
                        .findFirst()
                        .map(r -> compactCell(r, notes))
                        .orElseGet(() -> Cell.number(
                                Rounding.UNKNOWN, notes.mark("not estimated").strip())));
            }
            if (one.equals(EstimateRow.ALL)) {
                table.total(cells);
            } else {
                table.row(cells);
            }
        }
        return codes.isEmpty() ? "" : table.markup() + notes.markup();
    }

    /** One row of each kind, in the order in which they come. */
    private static List<EstimateRow> columns(List<EstimateRow> rows) {
        List<EstimateRow> columns = new ArrayList<>();
        for (EstimateRow row : rows) {
            if (columns.stream().noneMatch(c -> isSameKind(c, row))) {
                columns.add(row);
            }
        }
        return columns;
    }

    private Cell compactCell(EstimateRow row, Footnotes notes) {
        String standing = shown.standing(row);
        String below = RowText.error(row) + notes.mark(row.reason()) + (standing.isEmpty() ? "" : " †");
        return Cell.number(RowText.of(shown.design(), row, units).mean(), below);
    }

    private static boolean isSameKind(EstimateRow a, EstimateRow b) {
        return a.attribute() == b.attribute() && a.basis() == b.basis();
    }

    /** The line for all comes last. */
    private static List<String> lastAll(Set<String> keys) {
        List<String> sorted = new ArrayList<>(keys);
        if (sorted.remove(EstimateRow.ALL)) {
            sorted.add(EstimateRow.ALL);
        }
        return sorted;
    }

    private String swatch(String code) {
        return by == By.SPECIES && !code.equals(EstimateRow.ALL)
                ? "<span class=\"swatch\" style=\"background:" + shown.colours().hex(code) + "\"></span>"
                : "";
    }
}
