package quadmean.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * The tally of the demonstration stand with every mistake that a tally can make, one after the other; the note of a row says
 * which rule it breaks, or which flag its readings raise. Invented from end to end.
 */
public final class DemoMistakes {
    private static final List<String> COLUMNS = List.of(
            "plot",
            "stratum",
            "tree",
            "species",
            "dbh_in",
            "height_ft",
            "top_pct",
            "base_pct",
            "dist_ft",
            "top2_pct",
            "base2_pct",
            "status",
            "broken",
            "point_ft",
            "ring",
            "count",
            "defect_pct",
            "edge",
            "note");

    /** A slip of one row; it finds the fields by the names of the columns. */
    private record Slip(String rule, Kind kind, Consumer<Map<String, String>> change) {}

    private enum Kind {
        ANY,
        WITH_READINGS
    }

    private static final List<Slip> SLIPS = List.of(
            any("plot-missing", r -> r.put("plot", "")),
            any("stratum-unknown", r -> r.put("stratum", "Q")),
            any("number-unreadable", r -> r.put("dbh_in", "12in")),
            any("species-missing", r -> r.put("species", "")),
            any("species-unknown", r -> r.put("species", "PSMX")),
            any("species-recoded", r -> r.put("species", "PSMF")),
            any("dbh-missing", r -> r.put("dbh_in", "")),
            any("dbh-impossible", r -> r.put("dbh_in", "-11.2")),
            any("dbh-below-minimum", r -> r.put("dbh_in", "3.1")),
            any("height-impossible", r -> r.put("height_ft", "4")),
            any("status-unknown", r -> r.put("status", "Z")),
            any("mark-unreadable", r -> r.put("broken", "perhaps")),
            any("tree-too-far", r -> r.put("point_ft", "61")),
            any("ring-wrong", r -> r.put("ring", "3")),
            any("count-unusable", r -> r.put("count", "0")),
            any("dbh-unlikely", r -> r.put("dbh_in", "440")),
            any("unit-slip", DemoMistakes::tenth),
            any("ratio-unlikely", DemoMistakes::slim),
            reading("reading-unusable", r -> r.put("base_pct", "")),
            reading("height-off-curve", r -> r.put("top_pct", "14")),
            reading("distance-short", r -> sight(r, 0.6, -9)),
            reading("ground-not-level", r -> sight(r, 1.3, 20)),
            reading("scale-coarse", r -> sight(r, 6, -1)),
            reading("readings-disagree", DemoMistakes::again),
            any("defect-impossible", r -> r.put("defect_pct", "140")),
            any("edge-unusable", r -> r.put("edge", "3")));

    private DemoMistakes() {}

    /** Writes the tally to the file named by the first argument. */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), tally());
    }

    /** The tally as CSV, line ends as on Unix. */
    public static String tally() {
        List<Map<String, String>> rows = new ArrayList<>();
        DemoStand.tally(DemoStand.SEED)
                .lines()
                .skip(1)
                .map(DemoMistakes::widened)
                .forEach(rows::add);
        int at = 30;
        for (Slip slip : SLIPS) {
            at = next(rows, at + 9, slip.kind());
            slip.change().accept(rows.get(at));
            rows.get(at).put("note", slip.rule());
        }
        at = next(rows, at + 9, Kind.ANY);
        Map<String, String> copy = new LinkedHashMap<>(rows.get(at));
        rows.add(at + 1, copy);
        Map<String, String> elsewhere = rows.get(at + 6);
        elsewhere.put("stratum", elsewhere.get("stratum").equals("N") ? "B" : "N");
        elsewhere.put("note", "stratum-changes");
        rows.add(empty(rows.get(at).get("plot"), rows.get(at).get("stratum"), "empty-plot-has-trees"));
        rows.add(tree("99", "N", "plot-not-listed"));
        StringBuilder text = new StringBuilder(String.join(",", COLUMNS) + "\n");
        rows.forEach(r -> text.append(String.join(",", r.values())).append('\n'));
        return text + "40,C,77,PSME\n";
    }

    private static int next(List<Map<String, String>> rows, int from, Kind kind) {
        int i = from;
        while (rows.get(i).get("dbh_in").isEmpty()
                || rows.get(i).get("top_pct").isEmpty() == (kind == Kind.WITH_READINGS)) {
            i++;
        }
        return i;
    }

    private static Map<String, String> widened(String line) {
        String[] f = line.split(",", -1);
        Map<String, String> row = empty(f[0], f[1], f[10]);
        row.put("tree", f[2]);
        row.put("species", f[3]);
        row.put("dbh_in", f[4]);
        row.put("top_pct", f[5]);
        row.put("base_pct", f[6]);
        row.put("dist_ft", f[7]);
        return row;
    }

    private static Map<String, String> empty(String plot, String stratum, String note) {
        Map<String, String> row = new LinkedHashMap<>();
        COLUMNS.forEach(c -> row.put(c, ""));
        row.put("plot", plot);
        row.put("stratum", stratum);
        row.put("note", note);
        return row;
    }

    private static Map<String, String> tree(String plot, String stratum, String note) {
        Map<String, String> row = empty(plot, stratum, note);
        row.put("tree", "1");
        row.put("species", "PSME");
        row.put("dbh_in", "12");
        return row;
    }

    /** A height a tenth of what it should be: the decimal point slipped. */
    private static void tenth(Map<String, String> row) {
        row.put("species", "PSME");
        row.put("dbh_in", "14.0");
        row.put("height_ft", "8.3");
    }

    /** A broken tree cannot be off the curve; this one is whole and too slim for any. */
    private static void slim(Map<String, String> row) {
        row.put("species", "RARE");
        row.put("dbh_in", "4.2");
        row.put("height_ft", "75");
    }

    /** The same tree read from another place: so many times its height away, with another base reading. */
    private static void sight(Map<String, String> row, double timesHeight, int base) {
        double height = (number(row, "top_pct") - number(row, "base_pct")) * number(row, "dist_ft") / 100;
        long distance = Math.round(timesHeight * height);
        row.put("dist_ft", Long.toString(distance));
        row.put("base_pct", Integer.toString(base));
        row.put("top_pct", Long.toString(Math.round(100 * height / distance + base)));
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static void again(Map<String, String> row) {
        int top = Integer.parseInt(row.get("top_pct"));
        row.put("top2_pct", Integer.toString(top + 9));
        row.put("base2_pct", row.get("base_pct"));
    }

    private static Slip any(String rule, Consumer<Map<String, String>> change) {
        return new Slip(rule, Kind.ANY, change);
    }

    private static Slip reading(String rule, Consumer<Map<String, String>> change) {
        return new Slip(rule, Kind.WITH_READINGS, change);
    }
}
