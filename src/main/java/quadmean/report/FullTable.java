package quadmean.report;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import quadmean.chart.Wording;
import quadmean.estimate.EstimateRow;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.UnitSystem;

/** A table with every number of its rows, in both unit systems. */
final class FullTable {
    private FullTable() {}

    /**
     * The table.
     *
     * @param chosen which rows
     * @param prefix what to put before the attribute; empty for nothing
     */
    static String markup(
            ShownRows shown, String caption, Predicate<EstimateRow> chosen, Function<EstimateRow, String> prefix) {
        UnitSystem units = shown.design().units();
        String level = Wording.confidence(shown.confidence());
        HtmlTable table = HtmlTable.of(
                caption,
                List.of(
                        Cell.text("What"),
                        Cell.number("Estimate"),
                        Cell.number(level + " limits"),
                        Cell.number("Standard error"),
                        Cell.number("Sampling error"),
                        Cell.number("CV between plots"),
                        Cell.number("Plots"),
                        Cell.number("df"),
                        Cell.number((units == UnitSystem.US ? "Metric" : "US") + ", limits below")));
        Footnotes notes = new Footnotes();
        for (EstimateRow row : shown.rows()) {
            if (chosen.test(row)) {
                table.row(row(shown, row, prefix.apply(row), notes));
            }
        }
        return table.isEmpty() ? "" : table.markup() + notes.markup();
    }

    private static List<Cell> row(ShownRows shown, EstimateRow row, String first, Footnotes notes) {
        UnitSystem units = shown.design().units();
        RowText ours = RowText.of(shown.design(), row, units);
        RowText theirs = RowText.of(shown.design(), row, RowText.other(units));
        String what =
                first.isEmpty() ? Wording.capital(RowText.what(row, units)) : first + ": " + RowText.what(row, units);
        return List.of(
                Cell.markup(Html.escape(what + notes.mark(row.reason())) + tag(shown, row)),
                Cell.number(ours.estimate()),
                Cell.number(ours.limits()),
                Cell.number(ours.standardError()),
                Cell.number(RowText.error(row)),
                Cell.number(Rounding.percent(row.cvPercent())),
                Cell.number(Rounding.count(row.n())),
                Cell.number(df(row)),
                Cell.number(theirs.estimate(), theirs.limits()));
    }

    private static String df(EstimateRow row) {
        if (Double.isInfinite(row.df())) {
            return "∞";
        }
        return row.df() > 0 ? Wording.plain(Math.round(row.df() * 10) / 10.0) : Rounding.UNKNOWN;
    }

    private static String tag(ShownRows shown, EstimateRow row) {
        String standing = shown.standing(row);
        return standing.isEmpty() ? "" : " <span class=\"tag\">" + Html.escape(standing) + "</span>";
    }
}
