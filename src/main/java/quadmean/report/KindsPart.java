package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quadmean.chart.KindsChart;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.design.KindInput;
import quadmean.plan.KindComparison;
import quadmean.plan.KindName;
import quadmean.plan.KindOption;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Kinds of plot compared, on a page and on the console. */
public final class KindsPart {
    private static final String WHAT =
            "The plots that the target takes with each kind, and the hours that one crew takes for them.";

    private KindsPart() {}

    /** A section of a page: chart, table, the times and what to know. */
    public static String html(Design design, KindComparison kinds) {
        UnitSystem units = design.units();
        Html html = new Html().section("kinds", "Kinds of plot compared");
        html.element("p", WHAT + " " + best(kinds, units));
        html.raw("<div class=\"charts\">\n")
                .raw(ChartSection.figure(KindsChart.picture(kinds, units)))
                .raw("</div>\n");
        html.raw(table(kinds, units)).raw(times(kinds, units)).raw("<ul>\n");
        kinds.notes().forEach(n -> html.element("li", n));
        return html.raw("</ul>\n").endSection().toString();
    }

    private static String table(KindComparison kinds, UnitSystem units) {
        List<Cell> header =
                new ArrayList<>(List.of(Cell.text("Kind"), Cell.number("Trees a plot"), Cell.number("CV by rule")));
        if (kinds.study().isPresent()) {
            header.add(Cell.number("CV by map"));
        }
        if (kinds.pilotPlots() > 0) {
            header.add(Cell.number("CV by pilot"));
        }
        header.addAll(List.of(
                Cell.number("Plots"),
                Cell.number("Walk (" + distance(units) + ")"),
                Cell.number("Walking (h)"),
                Cell.number("Setting up (h)"),
                Cell.number("Trees (h)"),
                Cell.number("In all (h)"),
                Cell.text("Remark")));
        HtmlTable table = HtmlTable.of("Hours to the target by kind of plot", header);
        kinds.options().forEach(o -> table.row(row(kinds, o, units)));
        return table.markup();
    }

    private static List<Cell> row(KindComparison kinds, KindOption o, UnitSystem units) {
        List<Cell> row = new ArrayList<>(List.of(
                Cell.text(KindName.of(o.plot(), units).replace(' ', '\u00a0')),
                Cell.number(one(o.treesPerPlot())),
                Cell.number(Rounding.percent(o.cvByRulePercent()))));
        if (kinds.study().isPresent()) {
            row.add(Cell.number(Rounding.percent(o.cvByMapPercent())));
        }
        if (kinds.pilotPlots() > 0) {
            row.add(Cell.number(Rounding.percent(o.cvByPilotPercent())));
        }
        KindOption.Work work = o.work();
        row.addAll(List.of(
                Cell.number(o.plots().isPresent() ? Rounding.count(o.plots().getAsInt()) : Rounding.UNKNOWN),
                Cell.number(one(inDistance(work.walkM(), units))),
                Cell.number(one(work.walkingHours())),
                Cell.number(one(work.setUpHours())),
                Cell.number(one(work.treeHours())),
                Cell.number(one(work.hours())),
                Cell.text(remark(o))));
        return row;
    }

    private static String times(KindComparison kinds, UnitSystem units) {
        HtmlTable table = HtmlTable.of(
                "What the work takes", List.of(Cell.text("Item"), Cell.number("Value"), Cell.text("From")));
        for (KindInput input : KindInput.values()) {
            table.row(List.of(
                    Cell.text(Wording.capital(input.label())),
                    Cell.number(time(kinds, input, units)),
                    Cell.text(source(kinds, input))));
        }
        return table.markup();
    }

    private static String time(KindComparison kinds, KindInput input, UnitSystem units) {
        double value = kinds.settings().times().of(input);
        double shown = input == KindInput.WALKING ? inDistance(value, units) : value;
        return Wording.plain(shown) + "\u00a0" + input.unit(units);
    }

    /** Where a value comes from: the design, or what its default goes by. */
    static String source(KindComparison kinds, KindInput input) {
        return kinds.settings().times().given().containsKey(input) ? "the design" : input.source();
    }

    /** Lines for the console. */
    public static List<String> lines(Design design, KindComparison kinds) {
        UnitSystem units = design.units();
        List<String> lines = new ArrayList<>(List.of("Kinds of plot, hours of one crew:"));
        kinds.options().forEach(o -> lines.add("  " + line(o, units)));
        lines.add("  " + best(kinds, units));
        lines.add("  Times: " + String.join("; ", timesInWords(kinds, units)));
        kinds.notes().forEach(n -> lines.add("  " + n));
        return lines;
    }

    private static String line(KindOption o, UnitSystem units) {
        String start = String.format(
                Locale.ROOT,
                "%s: %.1f trees, CV %.1f %%, ",
                KindName.of(o.plot(), units),
                o.treesPerPlot(),
                o.cvPercent());
        if (o.plots().isEmpty()) {
            return start + remark(o);
        }
        KindOption.Work w = o.work();
        return start
                + String.format(
                        Locale.ROOT,
                        "%d plots, %.1f h (walking %.1f, setting up %.1f, trees %.1f)%s",
                        o.plots().getAsInt(),
                        w.hours(),
                        w.walkingHours(),
                        w.setUpHours(),
                        w.treeHours(),
                        remark(o).isEmpty() ? "" : "; " + remark(o));
    }

    private static List<String> timesInWords(KindComparison kinds, UnitSystem units) {
        List<String> words = new ArrayList<>();
        for (KindInput input : KindInput.values()) {
            words.add(input.label() + " " + time(kinds, input, units) + " (" + source(kinds, input) + ")");
        }
        return words;
    }

    private static String best(KindComparison kinds, UnitSystem units) {
        String all = kinds.quickest()
                .map(o -> "Fewest hours: " + hours(o, units) + ".")
                .orElse("No kind reaches the target.");
        return kinds.quickestUsual()
                .filter(o -> !kinds.quickest().equals(Optional.of(o)))
                .map(o -> all + " Among points with 4 to 8 trees: " + hours(o, units) + ".")
                .orElse(all);
    }

    private static String hours(KindOption o, UnitSystem units) {
        return KindName.of(o.plot(), units) + ", " + one(o.work().hours()) + " h";
    }

    /** What is to be said of a kind; empty if nothing. */
    static String remark(KindOption o) {
        if (o.plots().isEmpty()) {
            return "no number of plots reaches the target";
        }
        return switch (o.treeCount()) {
            case TOO_FEW -> "fewer than 4 trees a point";
            case TOO_MANY -> "more than 8 trees a point";
            case USUAL, NOT_JUDGED -> "";
        };
    }

    private static String distance(UnitSystem units) {
        return units == UnitSystem.US ? "mi" : "km";
    }

    /** Metres in miles or kilometres. */
    private static double inDistance(double metres, UnitSystem units) {
        return units == UnitSystem.US ? Unit.METRE.convert(metres, Unit.CHAIN) / 80 : metres / 1000;
    }

    private static String one(double value) {
        return Rounding.decimals(1).text(value);
    }
}
