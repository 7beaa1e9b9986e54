package quadmean.report;

import java.util.List;
import java.util.Locale;
import quadmean.design.Design;
import quadmean.layout.FieldTables;
import quadmean.layout.HeightSubsample;
import quadmean.layout.SightingExample;
import quadmean.layout.StandingPlace;

/** How to take a height that can be trusted, and of which trees. */
final class SheetHeights {
    private SheetHeights() {}

    static String markup(Design design, FieldTables tables) {
        SheetLengths lengths = new SheetLengths(design.units());
        Html html =
                new Html().raw("<section class=\"sheet\" id=\"heights\">\n").element("h2", "How to take a good height");
        html.raw("<div class=\"figures\">\n");
        html.raw(HeightDrawing.baseBelow(
                example(tables, 0, lengths),
                lengths.withUnit(tables.examples().get(0).heightM(), 1)));
        html.raw(HeightDrawing.baseAbove(
                example(tables, 1, lengths),
                lengths.withUnit(tables.examples().get(1).heightM(), 1)));
        html.raw("</div>\n<ol>\n");
        steps(tables).forEach(s -> html.element("li", s));
        html.raw("</ol>\n");
        if (!tables.standing().isEmpty()) {
            html.raw(standing(tables, lengths));
        }
        html.element("h3", "Which trees");
        which(tables.heights()).forEach(s -> html.element("p", s));
        return html.raw("</section>\n").toString();
    }

    private static List<String> steps(FieldTables tables) {
        String agreement = Rounding.decimals(1).text(100 * tables.agreement());
        return List.of(
                "Let the list choose the tree, not the view. A tree that cannot be seen is noted; it is not swapped for its"
                        + " neighbour.",
                "Stand about one tree height away, to the side on which tip and base both show; on a slope across the hill or"
                        + " above the tree, seldom below it. If it leans, sight at right angles to the lean.",
                "Measure the level distance to the middle of the stem. On a slope tape along the ground, take its slope, and"
                        + " write both, or reduce it by the slope table.",
                "Sight the tip itself: on a broad crown the near edge hides it and reads high. Of a broken top take the break, and"
                        + " mark the tree as broken.",
                "Sight the base where dbh is measured from: the ground on the uphill side. Below the eye the reading carries a"
                        + " minus; above the eye it has none. Forgetting it is the costliest slip on this page.",
                "Both eyes open, elbow held in; read to half a unit ("
                        + SheetTables.scale(tables.clinometer().scale())
                        + "), and make sure that the eye is on that scale and not on the one beside it.",
                "Read both marks again. Two heights of a tree should agree within " + agreement
                        + " % (Brack and Wood, Forest Mensuration notes, Australian National University); else go to another"
                        + " place and start over.",
                "Each morning two people of equal eye height sight one another along a slope with the same instrument: the mean"
                        + " of the two readings without their signs is the slope, half their difference the instrument's error.",
                "Stand still while you sight; look up for dead wood first; never sight toward the sun.");
    }

    private static String example(FieldTables tables, int which, SheetLengths lengths) {
        SightingExample e = tables.examples().get(which);
        String unit = TallyColumns.sign(tables.clinometer().scale());
        boolean below = e.baseReading() < 0;
        return String.format(
                Locale.ROOT,
                "%s: at %s, top %s%s and base %s%s. %s above the eye, %s %s it: %s %s %s = %s.",
                below ? "Base below the eye" : "Base above the eye",
                lengths.plain(e.distanceM()),
                signed(e.topReading()),
                mark(unit),
                signed(e.baseReading()),
                mark(unit),
                lengths.withUnit(e.topM(), 1),
                lengths.withUnit(Math.abs(e.baseM()), 1),
                below ? "below" : "above",
                lengths.length(e.topM(), 1),
                below ? "+" : "−",
                lengths.length(Math.abs(e.baseM()), 1),
                lengths.withUnit(e.heightM(), 1));
    }

    private static String mark(String unit) {
        return unit.equals("°") ? unit : "\u00a0" + unit;
    }

    private static String signed(double reading) {
        return (reading < 0 ? "−" : "+") + quadmean.chart.Wording.plain(Math.abs(reading));
    }

    private static String standing(FieldTables tables, SheetLengths lengths) {
        String unit = " (" + lengths.unit() + ")";
        SheetTable table = SheetTable.of(
                "Where to stand: level distance of least error, and the stretch in which it is at most a tenth larger"
                        + " (errors of reading and distance as the design has them)",
                List.of("tree height" + unit, "best" + unit, "from" + unit, "to" + unit, "sd of one height" + unit));
        for (StandingPlace p : tables.standing()) {
            table.row(List.of(
                    lengths.length(p.heightM(), 0),
                    lengths.length(p.bestM(), 0),
                    lengths.length(p.nearestM(), 0),
                    lengths.length(p.farthestM(), 0),
                    lengths.length(p.heightSdM(), 1)));
        }
        return table.markup();
    }

    private static List<String> which(HeightSubsample some) {
        String rare = "A species of which fewer than " + some.minHeights() * some.every()
                + " trees will come in all: measure each of its trees, for a curve of its own takes "
                + some.minHeights()
                + " heights.";
        if (some.every() == 1) {
            return List.of("The height of every tree is measured.");
        }
        return List.of(
                TallyForms.heights(some) + " The start was drawn with seed " + some.seed() + "; every "
                        + ordinal(some.every()) + " tree (common practice, no source).",
                rare,
                "Trees with a broken top do not count here: take the next sound one, and go on counting from the number"
                        + " that was due.");
    }

    static String ordinal(int n) {
        String end = n % 100 / 10 == 1 ? "th" : n % 10 == 1 ? "st" : n % 10 == 2 ? "nd" : n % 10 == 3 ? "rd" : "th";
        return n + end;
    }
}
