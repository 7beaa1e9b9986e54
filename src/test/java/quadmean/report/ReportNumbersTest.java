package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.chart.ChartSet;
import quadmean.cruise.CruiseResult;
import quadmean.report.PageTables.Table;
import quadmean.support.ShippedCruises;
import quadmean.units.Attribute;

/**
 * Every number in a table of the report is a number of {@code estimate.json}, rounded. Numbers of a cell, or of a row where a row is
 * one thing, must stand together in the object that the heads of row and column name; a number without a counterpart fails.
 */
class ReportNumbersTest {
    private static JsonNode json;
    private final List<String> missing = new ArrayList<>();
    private int seen;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "demo",
                "demo-metric",
                "idaho-points",
                "stratified",
                "cluster",
                "ratio",
                "double-sampling",
                "threep",
                "point-3p",
                "half-sweep",
                "count-points"
            })
    void everyNumberOfEveryTableIsInTheJson(String design) throws IOException {
        CruiseResult result = Objects.requireNonNull(ShippedCruises.run(design).result());
        json = EstimateJson.tree(result);
        String page = Written.text(HtmlReport.of(result, List.of(), new ChartSet(List.of(), "none here")));
        List<Table> tables = PageTables.of(page);
        assertTrue(tables.size() > 8, tables.size() + " tables");
        tables.forEach(this::walk);
        assertEquals("", String.join("\n", missing));
        assertTrue(seen > 200, seen + " numbers");
        headline(page);
        assertEquals("", String.join("\n", missing));
    }

    private void walk(Table table) {
        String first = table.header().get(0);
        String caption = table.caption();
        if (caption.startsWith("Plots needed by stratum")) {
            table.rows().forEach(row -> whole(table, row, shares(row.get(0))));
        } else if (caption.startsWith("Behind logs")) {
            table.rows().forEach(row -> whole(table, row, List.of(json.get("wood"))));
        } else if (first.equals("What")) {
            table.rows().forEach(row -> whole(table, row, pairs(row.get(0))));
        } else if (caption.contains("by dbh class and species")) {
            table.rows().forEach(row -> classes(table, row));
        } else if (first.equals("Statistic")) {
            table.rows().forEach(row -> statistics(table, row));
        } else if (isCompact(table)) {
            table.rows().forEach(row -> compact(table, row));
        } else {
            List<JsonNode> records = records(table);
            table.rows().forEach(row -> whole(table, row, records));
        }
    }

    /** What stands above the first section: the stand, its limits, the target. */
    private void headline(String page) {
        String head = PageTables.words(page.substring(page.indexOf("<header"), page.indexOf("In plain words"))
                .replaceAll("(?s)<svg.*?</svg>|<p class=\"kind\">.*?</p>|<h1>.*?</h1>", ""));
        List<JsonNode> known = new ArrayList<>(List.of(
                json.get("design"), json.get("target"), json.get("confidence"), json.get("plots"), json.get("trees")));
        all("/estimates")
                .filter(e -> code(e, "stratum", "*") && code(e, "species", "*"))
                .forEach(known::add);
        for (ShownNumber number : ShownNumber.in(head)) {
            check(number, known, "above the tables: " + head);
        }
    }

    /** Records of which a row shows one. */
    private List<JsonNode> records(Table table) {
        String caption = table.caption();
        Map<String, String> places = Map.of(
                "Plots needed for a sampling error", "/target/attributes",
                "Where tree heights came from", "/heightSources",
                "Height curves in use", "/curves",
                "Curve forms tried", "/curves",
                "Extrapolated heights", "/extrapolated",
                "Volume of a tree", "/equations",
                "Problems by rule", "/problemsByRule",
                "Problems in the order", "/problems",
                "Prices in", "/wood/prices/prices",
                "Strata", "/design/strata");
        for (Map.Entry<String, String> place : places.entrySet()) {
            if (caption.startsWith(place.getKey())) {
                return all(place.getValue()).toList();
            }
        }
        return switch (table.section()) {
            case "budget" ->
                all("/errorBudget")
                        .filter(b -> caption.contains(label(b) + ","))
                        .toList();
            case "remeasure" -> all("/remeasure").toList();
            case "variances" -> all("/alternatives").toList();
            case "threep" -> all("/otherEstimates").toList();
            default -> {
                missing.add("a table that this test does not know: " + caption);
                yield List.of();
            }
        };
    }

    /** All numbers of a row stand in one record, which knows its words too if it has any. */
    private void whole(Table table, List<String> row, List<JsonNode> records) {
        List<ShownNumber> numbers = new ArrayList<>();
        row.forEach(cell -> numbers.addAll(ShownNumber.in(cell)));
        seen += numbers.size();
        if (records.stream().noneMatch(r -> numbers.stream().allMatch(n -> holds(r, n)))) {
            missing.add(table.caption() + ": " + row + " "
                    + numbers.stream()
                            .filter(n -> records.stream().noneMatch(r -> holds(r, n)))
                            .toList());
        }
    }

    /** What every way of sharing plots gives a stratum, or all of them, together. */
    private List<JsonNode> shares(String head) {
        ArrayNode together = JsonNodeFactory.instance.arrayNode();
        all("/target/attributes/0/allocations").forEach(a -> {
            if (head.startsWith("All ")) {
                together.add(a.get("run")).add(a.get("needed")).add(a.get("more"));
            } else {
                StreamSupport.stream(a.get("strata").spliterator(), false)
                        .filter(s -> head.split(",")[0].equals(s.get("stratum").asText()))
                        .forEach(together::add);
            }
        });
        return List.of(together);
    }

    /** Both unit systems of an estimate whose names stand in the head of the row. */
    private List<JsonNode> pairs(String head) {
        List<JsonNode> estimates = all("/estimates").toList();
        List<JsonNode> pairs = new ArrayList<>();
        String words = head.toLowerCase(Locale.ROOT);
        for (int i = 0; i + 1 < estimates.size(); i += 2) {
            JsonNode e = estimates.get(i);
            boolean total = e.get("basis").asText().equals("total");
            boolean perArea = e.get("basis").asText().equals("per_area");
            if (words.contains(label(e))
                    && total == words.contains(label(e) + ", total")
                    && perArea == words.contains(label(e) + " per ")) {
                pairs.add(JsonNodeFactory.instance.arrayNode().add(e).add(estimates.get(i + 1)));
            }
        }
        return pairs;
    }

    private static boolean isCompact(Table table) {
        return List.of("Species", "Stratum", "Product", "Log, from the butt")
                        .contains(table.header().get(0))
                && table.caption().contains("with sampling error at");
    }

    private void compact(Table table, List<String> row) {
        String key = Map.of("Species", "species", "Stratum", "stratum", "Product", "product")
                .getOrDefault(table.header().get(0), "log");
        String code = row.get(0).startsWith("All ") ? "*" : row.get(0).split(",")[0];
        for (int c = 1; c < row.size(); c++) {
            String head = table.header().get(c).toLowerCase(Locale.ROOT);
            cell(table, row, c, all("/estimates").filter(e -> code(e, key, code) && isHead(e, head)));
        }
    }

    private void classes(Table table, List<String> row) {
        String caption = table.caption().toLowerCase(Locale.ROOT);
        for (int c = 1; c < row.size(); c++) {
            String species = table.header().get(c).equals("All species")
                    ? "*"
                    : table.header().get(c);
            Predicate<JsonNode> is = e -> code(e, "species", species) && isHead(e, caption);
            Stream<JsonNode> records = row.get(0).equals("All")
                    ? all("/estimates").filter(is)
                    : all("/standTable").filter(is).filter(e -> isClass(e, row.get(0)));
            cell(table, row, c, records);
        }
    }

    private static boolean isClass(JsonNode e, String label) {
        String[] ends = label.split("–");
        return Stream.of("Cm", "In")
                .anyMatch(u -> Math.abs(e.get("lower" + u).asDouble() - Double.parseDouble(ends[0])) < 0.01
                        && Math.abs(e.get("upper" + u).asDouble() - Double.parseDouble(ends[1])) < 0.01);
    }

    private void statistics(Table table, List<String> row) {
        List<JsonNode> named = all("/statistics")
                .filter(s -> row.get(0).startsWith(s.get("name").asText()))
                .toList();
        if (table.caption().contains("by stratum")) {
            for (int c = 1; c < row.size(); c++) {
                String stratum = table.header().get(c).startsWith("All ")
                        ? "*"
                        : table.header().get(c).split(",")[0];
                cell(table, row, c, named.stream().filter(s -> code(s, "stratum", stratum)));
            }
        } else {
            for (int c = 1; c < row.size(); c++) {
                cell(table, row, c, named.stream().filter(s -> code(s, "stratum", "*")));
            }
        }
    }

    private void cell(Table table, List<String> row, int column, Stream<JsonNode> records) {
        String text = row.get(column);
        List<JsonNode> known = records.toList();
        List<ShownNumber> numbers = ShownNumber.in(text);
        seen += numbers.size();
        // a class without a tallied tree is no row of the file
        boolean isNothing = known.isEmpty() && text.equals("0");
        if (!isNothing
                && !numbers.isEmpty()
                && known.stream().noneMatch(r -> numbers.stream().allMatch(n -> holds(r, n)))) {
            missing.add(table.caption() + ": " + row.get(0) + ", "
                    + table.header().get(column) + ": " + text + " not in " + known);
        }
    }

    private void check(ShownNumber number, List<JsonNode> known, String where) {
        seen++;
        if (known.stream().noneMatch(r -> holds(r, number))) {
            missing.add(number + " in " + where);
        }
    }

    /** Whether an attribute's words, with what they are per or in total, stand in a head. */
    private static boolean isHead(JsonNode e, String head) {
        String basis = e.get("basis").asText();
        return head.startsWith(
                label(e) + (basis.equals("total") ? ", total" : basis.equals("per_area") ? " per " : " "));
    }

    private static String label(JsonNode e) {
        return Stream.of(Attribute.values())
                .filter(a -> a.id().equals(e.get("attribute").asText()))
                .findFirst()
                .orElseThrow()
                .label();
    }

    /** Whether a record is of a code, and of all else that it could be of a part of. */
    private static boolean code(JsonNode e, String key, String code) {
        return Stream.of("stratum", "species", "product", "log")
                .filter(e::has)
                .allMatch(k -> e.get(k)
                        .asText()
                        .equals(
                                k.equals(key)
                                        ? code
                                        : k.equals("species") && !e.has("stratum")
                                                ? e.get(k).asText()
                                                : "*"));
    }

    /** Whether a number of a record is shown like this, or stands in one of its texts. */
    private static boolean holds(JsonNode record, ShownNumber number) {
        if (record.isNumber()) {
            return number.shows(record.asDouble());
        }
        if (record.isTextual()) {
            return record.asText().contains(number.text());
        }
        return StreamSupport.stream(record.spliterator(), false).anyMatch(r -> holds(r, number));
    }

    private static Stream<JsonNode> all(String place) {
        return StreamSupport.stream(json.at(place).spliterator(), false);
    }

    @Test
    void aRoundedNumberIsToldFromAnother() {
        assertTrue(new ShownNumber("476,000", false).shows(475_614.2));
        assertFalse(new ShownNumber("476,000", false).shows(475_400));
        assertTrue(new ShownNumber("12.0", false).shows(11.96));
        assertFalse(new ShownNumber("12.0", false).shows(12.06));
        assertTrue(new ShownNumber("99.3", true).shows(0.9932));
        assertFalse(new ShownNumber("99.3", false).shows(0.9932));
        assertFalse(new ShownNumber("0", false).shows(0.6));
        assertEquals(
                List.of("1,840,000", "2,490,000", "-0.5", "14.9"),
                ShownNumber.in("1,840,000 to 2,490,000 m3, -0.5 or ±14.9\u00a0%").stream()
                        .map(ShownNumber::text)
                        .toList());
    }
}
