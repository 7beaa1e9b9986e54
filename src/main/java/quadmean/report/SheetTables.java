package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quadmean.chart.Wording;
import quadmean.layout.ClinometerTable;
import quadmean.layout.FieldTables;
import quadmean.layout.LimitTable;
import quadmean.units.AngleScale;
import quadmean.units.DistanceTo;
import quadmean.units.PlotOnSlope;

/** The tables: limiting distances, plots on slopes, heights by clinometer. */
final class SheetTables {
    private final FieldTables tables;
    private final SheetLengths lengths;

    private SheetTables(FieldTables tables) {
        this.tables = tables;
        this.lengths = new SheetLengths(tables.units());
    }

    static String markup(FieldTables tables) {
        SheetTables sheets = new SheetTables(tables);
        StringBuilder out = new StringBuilder();
        tables.limits().forEach(t -> out.append(sheets.limits(t)));
        return out.append(sheets.slopes()).append(sheets.clinometer()).toString();
    }

    private String limits(LimitTable table) {
        boolean toMeasure = table.purpose() == LimitTable.Purpose.MEASURE;
        String part = partOf(table.to());
        Html html = sheet("Limiting distances, factor " + lengths.factor(table.factor()) + ", to the "
                + table.to().id() + " of the stem");
        html.element(
                "p",
                (toMeasure ? "This larger factor chooses the trees that are measured. " : "")
                        + "A tree is in if it stands at this distance or nearer, from the point to " + part
                        + " at breast height. Take the column of the slope along the line to the tree, not of the hill. For a"
                        + " tree between two lines, or between two slopes, work with its own dbh: horizontal limit ("
                        + lengths.unit() + ") = " + lengths.radiusFactor(table.plotRadiusFactor()) + " × dbh ("
                        + lengths.dbhUnit() + "), then the slope table.");
        if (tables.limits().stream().anyMatch(t -> t.to() != table.to())) {
            html.element(
                    "p",
                    "The design does not say to which part of the stem the crew tapes. Choose this table or the other one,"
                            + " use it for the whole cruise, and write it into the design: [plot] limiting_distance = \""
                            + table.to().id() + "\".");
        }
        List<String> head = new ArrayList<>(List.of("dbh (" + lengths.dbhUnit() + ")"));
        table.percents().forEach(p -> head.add(p == 0 ? "level" : Wording.plain(p) + " %"));
        SheetTable lines = SheetTable.of("Limit (" + lengths.unit() + ") by slope along the line to the tree", head);
        for (LimitTable.Row row : table.rows()) {
            List<String> cells = new ArrayList<>(List.of(lengths.dbh(row.dbhCm())));
            row.limitsM().forEach(m -> cells.add(lengths.length(m, 2)));
            lines.row(cells);
        }
        return html.raw(lines.markup()).raw("</section>\n").toString();
    }

    private static String partOf(DistanceTo to) {
        return to == DistanceTo.CENTRE ? "the middle of the stem (tape past its side)" : "the near face of the stem";
    }

    private String slopes() {
        Html html = sheet("Slopes");
        html.element("p", slopeWords());
        List<String> head = new ArrayList<>(List.of(
                "slope (%)", "degrees", "times", "for " + lengths.plain(tables.tapeM()) + " (" + lengths.unit() + ")"));
        for (FieldTables.Circle circle : tables.circles()) {
            String ring = circle.minDbhCm() > 0
                    ? ", dbh from " + lengths.dbh(circle.minDbhCm()) + " " + lengths.dbhUnit()
                    : "";
            head.add("radius" + ring + " (" + lengths.unit() + ")");
        }
        if (tables.strip() != null) {
            head.add("half width of strip (" + lengths.unit() + ")");
        }
        SheetTable table = SheetTable.of("Length along the ground for a horizontal one", head);
        for (int i = 0; i < tables.slopes().size(); i++) {
            table.row(slope(i));
        }
        return html.raw(table.markup()).raw("</section>\n").toString();
    }

    private List<String> slope(int i) {
        FieldTables.SlopeLine slope = tables.slopes().get(i);
        List<String> cells = new ArrayList<>(List.of(
                Wording.plain(slope.percent()),
                Rounding.decimals(1).text(slope.degrees()),
                Rounding.decimals(4).text(slope.secant()),
                lengths.length(slope.tapeM(), 2)));
        tables.circles().forEach(c -> cells.add(lengths.length(c.limitsM().get(i), 2)));
        if (tables.strip() != null) {
            cells.add(lengths.length(tables.strip().halfWidthsM().get(i), 2));
        }
        return cells;
    }

    private String slopeWords() {
        String all =
                "Tape along the ground = horizontal distance × \"times\"; a distance taped along the ground, divided"
                        + " by it, is the horizontal one. ";
        if (tables.strip() != null) {
            return all + "Half width: from the line of the strip to its edge, by the slope across the line.";
        }
        if (tables.circles().isEmpty()) {
            return all;
        }
        return tables.circles().get(0).onSlope() == PlotOnSlope.LARGER_RADIUS
                ? all
                        + "Radius: one larger circle on the ground, by the slope of the plot straight down the hill; a tree is"
                        + " in if its middle lies inside."
                : all
                        + "Radius: how far the middle of a tree may be along the ground, by the slope along the line from the"
                        + " plot centre to that tree. Across the hill that line is level and the radius the horizontal one.";
    }

    private String clinometer() {
        ClinometerTable table = tables.clinometer();
        Html html = sheet("Heights by clinometer: " + scale(table.scale()));
        html.element(
                "p",
                "Height of the mark above the eye (" + lengths.unit()
                        + "), by horizontal distance. Tip and base each have their line: base below the eye, add the two;"
                        + " base above the eye, take its figure from that of the tip. "
                        + (table.scale() == AngleScale.DEGREES
                                ? "Between two lines the heights do not grow evenly: read to the degree and half degree, and let"
                                        + " the office work it out."
                                : "Between two lines take a share of the step."));
        if (table.from() == ClinometerTable.From.ASSUMED) {
            html.element(
                    "p",
                    "The design does not say which scale the crew reads; percent is assumed. Check the scale in your"
                            + " instrument before the first tree.");
        }
        List<String> head = new ArrayList<>(List.of("reading"));
        table.distancesM().forEach(d -> head.add(lengths.plain(d)));
        SheetTable lines = SheetTable.of("Above the eye (" + lengths.unit() + ")", head);
        for (ClinometerTable.Row row : table.rows()) {
            List<String> cells = new ArrayList<>(List.of(Wording.plain(row.reading())));
            row.heightsM().forEach(m -> cells.add(lengths.length(m, 1)));
            lines.row(cells);
        }
        return html.raw(table.distancesM().size() > 4 ? lines.markup() : lines.halves())
                .raw("</section>\n")
                .toString();
    }

    /** A scale in words. */
    static String scale(AngleScale scale) {
        return switch (scale) {
            case PERCENT -> "percent scale";
            case TOPOGRAPHIC -> "topographic scale (66 ft)";
            case DEGREES -> "degrees";
            case METRES_AT_15 -> "scale made for 15 m";
            case METRES_AT_20 -> "scale made for 20 m";
        };
    }

    private static Html sheet(String heading) {
        String id = heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        return new Html()
                .raw("<section class=\"sheet\" id=\"" + Html.escape(id) + "\">\n")
                .element("h2", heading);
    }
}
