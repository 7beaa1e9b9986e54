package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.design.Paper;
import quadmean.layout.FieldTables;
import quadmean.layout.HeightSubsample;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;

/** Forms to write trees on, one for each way in which plots of this design are tallied; copy as many as there are plots. */
final class TallyForms {
    /** More columns than this stand on the long side of the paper. */
    private static final int MOST_UPRIGHT = 9;

    /** Heads of so many columns need smaller letters. */
    private static final int MANY = 12;

    private static final double UPRIGHT_ROW_MM = 7.4;
    private static final double WIDE_ROW_MM = 7.2;
    /** What head, notes and foot of a form take of a page, and its margins (mm). */
    private static final double UPRIGHT_FRAME_MM = 90;

    private static final double WIDE_FRAME_MM = 88;

    /** As many as two or three lines hold. */
    private static final int MOST_SPECIES = 12;

    private final Design design;
    private final FieldTables tables;
    private final TallyColumns columns;

    private TallyForms(Design design, FieldTables tables) {
        this.design = design;
        this.tables = tables;
        this.columns = TallyColumns.of(design, tables.clinometer().scale());
    }

    static String markup(Design design, FieldTables tables) {
        TallyForms forms = new TallyForms(design, tables);
        if (design.plot().measuring() instanceof Measuring.SomePoints some) {
            String which = some.points().isEmpty() ? "" : ": " + inOrder(some);
            return forms.form(
                            "Tally, measured point",
                            forms.columns.without(ColumnRole.COUNT),
                            "Measured points" + which + ".")
                    + forms.form(
                            "Tally, count point",
                            new TallyColumns(forms.columns.columns().stream()
                                    .filter(c -> c.role() == ColumnRole.SPECIES || c.role() == ColumnRole.COUNT)
                                    .toList()),
                            "All points but the measured ones: count the trees that are in, by species; measure none.");
        }
        return forms.form("Tally", forms.columns, forms.what());
    }

    private static String inOrder(Measuring.SomePoints some) {
        return some.points().stream()
                .sorted(java.util.Comparator.comparing(String::length)
                        .thenComparing(java.util.Comparator.naturalOrder()))
                .collect(Collectors.joining(", "));
    }

    private String what() {
        if (design.plot().measuring() instanceof Measuring.LargerFactor) {
            return "Every tree that the first factor chooses gets a line with its species; those that the larger factor chooses"
                    + " are measured on the same line.";
        }
        if (design.plot().measuring() instanceof Measuring.ThreeP) {
            return "Every tree gets its prediction before the random number is drawn; those that are chosen are measured on"
                    + " the same line.";
        }
        return "";
    }

    private String form(String heading, TallyColumns some, String note) {
        List<TallyColumns.Column> shown = some.columns();
        boolean wide = shown.size() > MOST_UPRIGHT;
        Html html = new Html()
                .raw("<section class=\"sheet" + (wide ? " wide" : "") + "\" id=\""
                        + heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-") + "\">\n")
                .element("h2", heading + " – " + design.name());
        blanks(html);
        html.element("p", "small", String.join(" ", notes(some, note)));
        if (!design.species().isEmpty()) {
            html.element("p", "small", "Species: " + species() + ".");
        }
        html.raw(String.format(
                Locale.ROOT,
                "<table class=\"form%s\" style=\"--row: %.1fmm\">\n",
                shown.size() > MANY ? " many" : "",
                wide ? WIDE_ROW_MM : UPRIGHT_ROW_MM));
        widths(html, shown);
        html.raw("<thead><tr>");
        shown.forEach(c -> head(html, c));
        html.raw("<th scope=\"col\">remarks</th></tr></thead>\n<tbody>\n");
        String row = "<tr>" + "<td></td>".repeat(shown.size() + 1) + "</tr>\n";
        html.raw(row.repeat(rows(wide))).raw("</tbody></table>\n");
        html.raw("<div class=\"folio\"><span class=\"tick\"></span> ")
                .text("no trees on this plot   ")
                .raw("<span class=\"tick\"></span> ")
                .text("plot not reached, why: ______________   sheet ___ of ___   checked by ________   seed "
                        + design.seed())
                .raw("</div>\n");
        return html.raw("</section>\n").toString();
    }

    private String species() {
        return design.species().values().stream()
                .limit(MOST_SPECIES)
                .map(s -> s.name().equals(s.code()) ? s.code() : s.code() + " " + s.name())
                .collect(Collectors.joining(", "));
    }

    private static void blanks(Html html) {
        html.raw("<div class=\"blanks\">");
        for (String blank :
                List.of("Plot", "Stratum", "Date", "Crew", "Slope (%) and facing", "Instrument no.", "Start", "End")) {
            html.element("span", blank + ":");
        }
        html.raw("</div>\n");
    }

    private static void head(Html html, TallyColumns.Column column) {
        String unit = column.unit().isEmpty() ? "" : " (" + column.unit() + ")";
        html.raw("<th scope=\"col\">").text(TallyColumns.words(column.role()) + unit);
        if (!column.header().isEmpty() && !column.header().equals(TallyColumns.words(column.role()))) {
            html.raw("<small>").text(column.header()).raw("</small>");
        }
        html.raw("</th>");
    }

    /** Remarks and dot counts take more room than figures. */
    private static void widths(Html html, List<TallyColumns.Column> shown) {
        double all = 2
                + shown.stream()
                        .mapToDouble(c -> weight(c.role(), shown.size()))
                        .sum();
        html.raw("<colgroup>");
        shown.forEach(c -> html.raw(String.format(
                Locale.ROOT, "<col style=\"width: %.1f%%\"/>", 100 * weight(c.role(), shown.size()) / all)));
        html.raw(String.format(Locale.ROOT, "<col style=\"width: %.1f%%\"/></colgroup>\n", 200 / all));
    }

    private static double weight(ColumnRole role, int columns) {
        return role == ColumnRole.COUNT && columns <= 2 ? 5 : 1;
    }

    private int rows(boolean wide) {
        boolean a4 = design.sheets().paper() == Paper.A4;
        double room = wide ? (a4 ? 210 : 215.9) - WIDE_FRAME_MM : (a4 ? 297 : 279.4) - UPRIGHT_FRAME_MM;
        return (int) Math.floor(room / (wide ? WIDE_ROW_MM : UPRIGHT_ROW_MM));
    }

    private List<String> notes(TallyColumns some, String note) {
        SheetLengths lengths = new SheetLengths(design.units());
        List<String> notes = new ArrayList<>();
        if (!note.isEmpty()) {
            notes.add(note);
        }
        tables.limits()
                .forEach(t -> notes.add("Factor " + lengths.factor(t.factor()) + ": limit ("
                        + lengths.unit() + ") = " + lengths.radiusFactor(t.plotRadiusFactor()) + " × dbh ("
                        + lengths.dbhUnit() + "), level, to the " + t.to().id() + "."));
        tables.circles().forEach(c -> notes.add(radius(c, lengths)));
        if (design.plot() instanceof PlotDesign.Strip strip) {
            notes.add("Strip " + PlotWords.size(strip, design.units()) + ", level.");
        }
        if (some.has(ColumnRole.TOP) || some.has(ColumnRole.HEIGHT)) {
            notes.add(heights(tables.heights()));
        }
        if (some.has(ColumnRole.BASE)) {
            notes.add("Readings below the eye carry a minus.");
        }
        return notes;
    }

    private static String radius(FieldTables.Circle circle, SheetLengths lengths) {
        String from = circle.minDbhCm() > 0
                ? " for dbh from " + lengths.dbh(circle.minDbhCm()) + " " + lengths.dbhUnit()
                : "";
        return "Radius" + from + ": " + lengths.withUnit(circle.radiusM(), 2) + ", level.";
    }

    /** Which trees get a height, in a sentence. */
    static String heights(HeightSubsample some) {
        if (some.every() == 1) {
            return "Heights: every tree.";
        }
        String first = IntStream.range(0, 4)
                .mapToObj(i -> Integer.toString(some.first() + i * some.every()))
                .collect(Collectors.joining(", "));
        return "Heights: of each species the trees no. " + first + " and so on, counted on from plot to plot.";
    }
}
