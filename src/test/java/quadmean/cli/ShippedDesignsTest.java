package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.SmallDesign;

/** Every command on every shipped design it is meant for. */
class ShippedDesignsTest {
    private static final Set<String> ESTIMATE = Set.of(
            "report.html",
            "estimate.json",
            "estimate.schema.json",
            "estimates.csv",
            "plot-results.csv",
            "plot-results.geojson",
            "trees.csv",
            "curves.csv",
            "diameters.csv",
            "stand-table.csv",
            "stock-table.csv",
            "statistics.csv",
            "plots-needed.csv",
            "remeasure.html",
            "remeasure.csv",
            "problems.csv",
            "tables.xlsx");

    private static final Set<String> CHARTS = Set.of(
            "chart-estimate-by-species.png",
            "chart-running-mean.png",
            "chart-gain.png",
            "chart-heights.png",
            "chart-residuals.png",
            "chart-diameters.png",
            "chart-stock.png",
            "chart-error-budget-volume.png");

    /** What runs left behind: by command and design, so that none is worked through twice but to compare. */
    private static final Map<String, First> FIRST = new ConcurrentHashMap<>();

    @TempDir
    Path folder;

    private record First(Run run, Map<String, String> files) {}

    private First first(String command, String name) throws IOException {
        First known = FIRST.get(command + name);
        if (known != null) {
            return known;
        }
        Path out = folder.resolve("first");
        Run run = Run.of(command, "designs/" + name + ".toml", "--out", out);
        First first = new First(run, Run.files(out));
        FIRST.put(command + name, first);
        return first;
    }

    /** Rows in are the lines of the tally without its header; {@code datasets/README.md} says what is planted. */
    @ParameterizedTest
    @CsvSource({"demo, demo-tally.csv, 2", "demo-metric, demo-tally.csv, 2", "idaho-points, idaho-points-1-72.csv, 0"})
    void estimateWritesItsFilesAndTheAccountOfRows(String name, String tally, int dropped) throws IOException {
        int in = Files.readAllLines(Path.of("datasets", tally)).size() - 1;
        String rows = "Rows: %d in = %d used + %d dropped".formatted(in, in - dropped, dropped);
        First first = first("estimate", name);
        Run run = first.run();
        run.assertCode(0);
        assertTrue(run.out().contains(rows), run.out());
        assertTrue(run.out().contains("report.html"), run.out());
        Set<String> expected = new TreeSet<>(ESTIMATE);
        if (name.startsWith("demo")) {
            expected.add("logs.csv");
        }
        Set<String> tables = new TreeSet<>(first.files().keySet());
        tables.removeIf(f -> f.startsWith("chart-"));
        assertEquals(expected, tables);
        assertTrue(
                first.files().keySet().containsAll(CHARTS),
                first.files().keySet().toString());
        assertTrue(first.files().getOrDefault("chart-heights.png", "").startsWith("\u0089PNG"));
    }

    @ParameterizedTest
    @CsvSource({
        "check, demo",
        "check, idaho-points",
        "check, estate",
        "check, pilot-plan",
        "plan, demo",
        "plan, pilot-plan",
        "plan, plan-strata"
    })
    void commandSucceeds(String command, String name) throws IOException {
        First first = first(command, name);
        first.run().assertCode(0);
        Set<String> expected = command.equals("plan")
                ? Set.of("plan.html", "plan.json", "plan.csv", "sheets.html")
                : Set.of("problems.csv");
        Set<String> tables = new TreeSet<>(first.files().keySet());
        tables.removeIf(f -> f.startsWith("chart-"));
        assertEquals(expected, tables);
        assertEquals(command.equals("plan"), first.files().containsKey("chart-plan-plots.png"));
    }

    @Test
    void planComparesKindsOfPlot() throws IOException {
        First first = first("plan", "plan-kinds");
        first.run().assertCode(0);
        assertEquals(
                Set.of(
                        "plan.html",
                        "plan.json",
                        "plan.csv",
                        "kinds.csv",
                        "sheets.html",
                        "chart-plan-plots.png",
                        "chart-kinds-chart.png"),
                first.files().keySet());
        assertTrue(
                first.run().out().contains("Among points with 4 to 8 trees: BAF 10 ft²/ac"),
                first.run().out());
    }

    @ParameterizedTest
    @CsvSource({
        "plan, demo",
        "plan, pilot-plan",
        "plan, plan-kinds",
        "plan, plan-strata",
        "check, demo",
        "estimate, demo",
        "estimate, estate",
        "estimate, idaho-points"
    })
    void secondRunWritesTheSameBytes(String command, String name) throws IOException {
        String design = "designs/" + name + ".toml";
        First first = first(command, name);
        first.run().assertCode(0);
        Run.of(command, design, "--out", folder.resolve("again")).assertCode(0);
        assertEquals(first.files(), Run.files(folder.resolve("again")));
    }

    @Test
    void resultsOfAnEarlierRunStayWhenATallyIsRefused() throws IOException {
        Path out = folder.resolve("out");
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY);
        Run.of("estimate", design, "--out", out).assertCode(0);
        String report = Run.files(out).get("report.html");
        Files.writeString(folder.resolve("tally.csv"), Run.TALLY + "4,1,PSME,x,\n");
        Run run = Run.of("estimate", design, "--out", out);
        run.assertCode(1);
        assertTrue(run.err().contains("earlier run"), run.err());
        assertEquals(report, Run.files(out).get("report.html"));
    }
}
