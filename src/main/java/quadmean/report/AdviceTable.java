package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import quadmean.height.MoreHeights;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Which further heights would help most, for page, console and JSON. */
final class AdviceTable {
    /** What the percentages are of. */
    static final String MEANING =
            "Errors are standard errors in percent of basal area times height above breast height,"
                    + " summed over the species' trees: what volume follows. The curve's part is shared by all filled trees.";

    private static final List<Integer> SIZES = List.of(5, 10, 15, 20, 30, 40);

    private AdviceTable() {}

    static String markup(List<MoreHeights> advice, UnitSystem units) {
        HtmlTable table = HtmlTable.of(
                "Trees to measure next",
                List.of(
                        Cell.text("Species"),
                        Cell.text("Step"),
                        Cell.text("Tree"),
                        Cell.number("Dbh (" + units.diameter().label() + ")"),
                        Cell.number("Error (%)"),
                        Cell.number("From the curve (%)")));
        for (MoreHeights more : advice) {
            table.row(row(more.species(), "now", "", "", more.now()));
            int step = 1;
            for (MoreHeights.Step s : more.steps()) {
                table.row(row(more.species(), Integer.toString(step++), s.tree().label(), dbh(s, units), s.after()));
            }
        }
        return table.markup();
    }

    /** What so many heights buy, and where along dbh they would be taken. */
    static String plan(List<MoreHeights> plans, UnitSystem units) {
        String unit = units.diameter().label();
        HtmlTable table = HtmlTable.of(
                "How many heights, and where along dbh, in a stand like this",
                List.of(
                        Cell.text("Species"),
                        Cell.number("Heights"),
                        Cell.number("Error (%)"),
                        Cell.number("From the curve (%)"),
                        Cell.text("Dbh (" + unit + "): smallest, quarters, largest")));
        for (MoreHeights plan : plans) {
            SIZES.stream().filter(n -> n <= plan.steps().size()).forEach(n -> {
                MoreHeights.FillingError error = plan.steps().get(n - 1).after();
                table.row(List.of(
                        Cell.text(plan.species()),
                        Cell.number(Integer.toString(n)),
                        Cell.number(percent(error.percent())),
                        Cell.number(percent(error.curvePercent())),
                        Cell.text(spread(plan.steps().subList(0, n), units))));
            });
        }
        return table.markup();
    }

    /** Dbh at the ends and quarters of the sorted trees. */
    private static String spread(List<MoreHeights.Step> steps, UnitSystem units) {
        List<MoreHeights.Step> sorted = steps.stream()
                .sorted(Comparator.comparingDouble(s -> s.tree().dbhCm()))
                .toList();
        return String.join(
                ", ",
                IntStream.rangeClosed(0, 4)
                        .mapToObj(q -> dbh(sorted.get(q * (sorted.size() - 1) / 4), units))
                        .toList());
    }

    private static List<Cell> row(
            String species, String step, String tree, String dbh, MoreHeights.FillingError error) {
        return List.of(
                Cell.text(species),
                Cell.text(step),
                Cell.text(tree),
                Cell.number(dbh),
                Cell.number(percent(error.percent())),
                Cell.number(percent(error.curvePercent())));
    }

    private static String dbh(MoreHeights.Step step, UnitSystem units) {
        return Rounding.decimals(1).text(Unit.CENTIMETRE.convert(step.tree().dbhCm(), units.diameter()));
    }

    private static String percent(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    /** One line for each species. */
    static List<String> lines(List<MoreHeights> advice, UnitSystem units) {
        List<String> lines = new ArrayList<>();
        for (MoreHeights more : advice) {
            List<MoreHeights.Step> steps = more.steps();
            String trees = String.join(
                    ", ",
                    steps.stream()
                            .map(s -> s.tree().label() + " (" + dbh(s, units) + " "
                                    + units.diameter().symbol() + ")")
                            .toList());
            lines.add(more.species() + ": filled heights put the sum off by "
                    + percent(more.now().percent())
                    + " %, with " + Headline.count(steps.size(), "more height") + " by "
                    + percent(steps.get(steps.size() - 1).after().percent()) + " %: " + trees);
        }
        return lines;
    }

    static ArrayNode json(List<MoreHeights> advice) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (MoreHeights more : advice) {
            ObjectNode node = list.addObject();
            node.put("species", more.species());
            putError(node, more.now());
            ArrayNode steps = node.putArray("steps");
            for (MoreHeights.Step s : more.steps()) {
                ObjectNode step = steps.addObject();
                step.put("tree", s.tree().label());
                step.put("row", s.tree().row());
                step.put("dbhCm", s.tree().dbhCm());
                putError(step, s.after());
            }
        }
        return list;
    }

    private static void putError(ObjectNode node, MoreHeights.FillingError error) {
        JsonNumbers.put(node, "errorPercent", error.percent());
        JsonNumbers.put(node, "curvePercent", error.curvePercent());
        JsonNumbers.put(node, "treesPercent", error.treesPercent());
    }
}
