package quadmean.report;

import java.util.List;
import java.util.stream.Stream;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.Remeasure;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Trees worth measuring again, as a table on a page and as a file. */
final class RemeasureTable {
    private static final List<String> HEADER = List.of(
            "plot",
            "number",
            "species",
            "dbh_cm",
            "dbh_in",
            "height_in_use_m",
            "height_in_use_ft",
            "doubt_m",
            "doubt_ft",
            "effect_m3",
            "effect_ft3",
            "effect_percent",
            "why");

    private RemeasureTable() {}

    static Content csv(CruiseResult result) {
        return Csv.of(HEADER, result.remeasure().stream().map(RemeasureTable::csvRow));
    }

    private static List<String> csvRow(Remeasure r) {
        return List.of(
                r.tree().tree().plot(),
                r.tree().tree().number(),
                r.tree().tree().species(),
                Csv.number(r.tree().tree().dbhCm()),
                Csv.number(Unit.CENTIMETRE.convert(r.tree().tree().dbhCm(), Unit.INCH)),
                Csv.number(r.tree().heightM()),
                Csv.number(Unit.METRE.convert(r.tree().heightM(), Unit.FOOT)),
                Csv.number(r.doubtM()),
                Csv.number(Unit.METRE.convert(r.doubtM(), Unit.FOOT)),
                Csv.number(r.effectM3()),
                Csv.number(Unit.CUBIC_METRE.convert(r.effectM3(), Unit.CUBIC_FOOT)),
                Csv.number(r.effectPercent()),
                String.join("; ", why(r)));
    }

    /**
     * The first so many trees.
     *
     * @param further headers of empty columns to write in
     */
    static String markup(CruiseResult result, int most, String caption, List<String> further) {
        UnitSystem units = result.design().units();
        String length = units.length().label();
        List<Cell> header = Stream.concat(
                        Stream.of(
                                Cell.text("Tree"),
                                Cell.text("Why"),
                                Cell.text("Species"),
                                Cell.number("Dbh (" + units.diameter().label() + ")"),
                                Cell.number("Height in use (" + length + ")"),
                                Cell.number("In doubt by (" + length + ")"),
                                Cell.number("Effect on the stand's volume")),
                        further.stream().map(Cell::text))
                .toList();
        HtmlTable table = HtmlTable.of(caption, header);
        result.remeasure().stream().limit(most).forEach(r -> table.row(row(units, r, further.size())));
        return table.markup();
    }

    private static List<Cell> row(UnitSystem units, Remeasure r, int further) {
        double dbh = Unit.CENTIMETRE.convert(r.tree().tree().dbhCm(), units.diameter());
        double height = Unit.METRE.convert(r.tree().heightM(), units.length());
        double doubt = Unit.METRE.convert(r.doubtM(), units.length());
        Stream<Cell> known = Stream.of(
                Cell.markup(
                        "<span class=\"whole\">" + Html.escape(r.tree().tree().label()) + "</span>"),
                Cell.markup("<span class=\"why\">" + Html.escape(String.join("; ", why(r))) + "</span>"),
                Cell.text(r.tree().tree().species()),
                Cell.number(Rounding.decimals(1).text(dbh)),
                Cell.number(Rounding.decimals(1).text(height)),
                Cell.number(Rounding.decimals(1).text(doubt)),
                effect(units, r));
        return Stream.concat(known, Stream.generate(() -> Cell.text("")).limit(further))
                .toList();
    }

    private static Cell effect(UnitSystem units, Remeasure r) {
        double volume = Unit.CUBIC_METRE.convert(r.effectM3(), units.volume());
        return Double.isFinite(volume)
                ? Cell.number(
                        Rounding.significant(volume, 2).text(volume) + " "
                                + units.volume().label(),
                        Rounding.significant(r.effectPercent(), 2).text(r.effectPercent()) + " %")
                : Cell.number(Rounding.UNKNOWN);
    }

    /** Problems in full, remarks by their codes; {@link #legend} explains the codes. */
    private static List<String> why(Remeasure r) {
        return Stream.concat(r.problems().stream(), r.remarks().stream().map(m -> m.split(": ", 2)[0]))
                .toList();
    }

    /** What the codes in a table mean, each once. */
    static String legend(CruiseResult result, int most) {
        List<String[]> codes = result.remeasure().stream()
                .limit(most)
                .flatMap(r -> r.remarks().stream())
                .filter(m -> m.contains(": "))
                .distinct()
                .map(m -> m.split(": ", 2))
                .toList();
        Html html = new Html();
        if (!codes.isEmpty()) {
            html.raw("<dl>\n");
            codes.forEach(c -> html.element("dt", c[0]).element("dd", c[1]));
            html.raw("</dl>\n");
        }
        return html.toString();
    }
}
