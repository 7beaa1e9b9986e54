package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plots laid out on the demonstration tract, as a user asks for them. */
class LayoutCommandTest {
    @TempDir
    Path folder;

    private Run plan(String layout) throws IOException {
        String text = Files.readString(Path.of("designs/demo.toml"))
                .replace(
                        "../datasets",
                        Path.of("datasets").toAbsolutePath().toString().replace('\\', '/'));
        Path design = Files.writeString(folder.resolve("demo.toml"), text + "\n[layout]\n" + layout);
        return Run.of("plan", design, "--out", folder.resolve("out"));
    }

    @Test
    void twoRunsGiveTheSameBytes() throws IOException {
        Run run = plan("pattern = \"triangular\"");
        run.assertCode(0);
        assertTrue(run.out().contains("plot_list = \"out/plots.csv\""), run.out());
        var first = Run.files(folder.resolve("out"));
        assertTrue(first.keySet().containsAll(java.util.Set.of("map.svg", "plots.csv", "plots.gpx", "plots.geojson")));
        plan("pattern = \"triangular\"").assertCode(0);
        assertEquals(first, Run.files(folder.resolve("out")));
    }

    /** 24, 16 and 7 plots are 8, 6 and 3 clusters of three (rounded up); those beyond the line are left out. */
    @Test
    void plotsOfThePlanAreRunInClusters() throws IOException {
        Run run = plan("cluster = 3\ncluster_spacing = 120\n");
        run.assertCode(0);
        assertTrue(run.out().contains("run in clusters of 3"), run.out());
        long plots = Files.readAllLines(folder.resolve("out/plots.csv")).size() - 1;
        assertTrue(plots >= 33 && plots <= 66, plots + " plots");
        assertTrue(Files.readString(folder.resolve("out/sheets.html")).contains("asked for: 51"));
    }

    /** A square kilometre without strata, with clusters of three in the layout and in the plan. */
    private Run planOfClusters(String keys) throws IOException {
        Files.writeString(folder.resolve("tract.wkt"), "POLYGON ((0 0, 1000 0, 1000 1000, 0 1000, 0 0))\n");
        Path design = Files.writeString(folder.resolve("clusters.toml"), """
                schema = 1
                [cruise]
                name = "clusters"
                units = "metric"
                area = 100
                [plot]
                kind = "fixed"
                area = 0.02
                [tract]
                boundary = "tract.wkt"
                crs = "local"
                unit = "m"
                [layout]
                cluster = 3
                cluster_spacing = 30
                [plan]
                cv = 50
                [plan.cost]
                plot = 1
                [plan.cluster]
                correlation = 0.3
                cost = 1
                """ + keys);
        return Run.of("plan", design, "--out", folder.resolve("out"));
    }

    /** As many clusters as the plan has are asked for, each with the plots that the layout gives it. */
    @Test
    void plannedClustersAreLaidOutAsPlanned() throws IOException {
        Run run = planOfClusters("");
        run.assertCode(0);
        Matcher planned = Pattern.compile("clusters of 3 plots: (\\d+) clusters, (\\d+) plots")
                .matcher(run.out());
        assertTrue(planned.find(), run.out());
        assertEquals(3 * Integer.parseInt(planned.group(1)), Integer.parseInt(planned.group(2)));
        assertTrue(run.out().contains(", " + planned.group(1) + " clusters asked for"), run.out());
        Run other = planOfClusters("plots = 4\n");
        other.assertCode(1);
        assertTrue(other.err().contains("clusters of 4 plots and [layout] of 3"), other.err());
    }

    @Test
    void aSinglePlotInAStratumIsSaid() throws IOException {
        Run run = plan("pattern = \"random\"\nplots = 2\n");
        run.assertCode(0);
        assertTrue(run.out().contains("A single plot in stratum"), run.out());
        assertTrue(run.out().contains("its trees are then in no estimate"), run.out());
    }

    /** What was asked for, what was laid out and from which seed stand on the console, in plan.json and on the sheets. */
    @Test
    void numbersStandEverywhere() throws IOException {
        Run run = plan("declination = 13.5\nslope = 20");
        run.assertCode(0);
        JsonNode layout = new ObjectMapper()
                .readTree(Files.readString(folder.resolve("out/plan.json")))
                .get("layout");
        int plots = Files.readAllLines(folder.resolve("out/plots.csv")).size() - 1;
        String sheets = Files.readString(folder.resolve("out/sheets.html"));
        assertEquals(plots, layout.get("plots").intValue());
        assertEquals(47, layout.get("asked").intValue());
        assertTrue(run.out().contains(plots + " plots laid out, 47 asked for"), run.out());
        assertTrue(sheets.contains(plots + " laid out (asked for: 47)"));
        assertEquals(20260401, layout.get("seed").longValue());
        assertTrue(run.out().contains("seed 20260401") && sheets.contains("20260401"));
        assertTrue(sheets.contains("13.5° east"), "the declination of the layout");
        int ofDays = 0;
        double walk = 0;
        for (JsonNode day : layout.get("walk").get("days")) {
            ofDays += day.get("plots").intValue();
            walk += day.get("walkM").doubleValue();
        }
        assertEquals(plots, ofDays);
        // on the ellipsoid against the grid, whose lengths are 0.027 % off here
        assertEquals(layout.get("walk").get("lengthM").doubleValue(), walk, 0.0005 * walk);
        assertTrue(layout.get("walk").get("serpentineM").doubleValue()
                >= layout.get("walk").get("lengthM").doubleValue());
    }

    /** Laid-out clusters go on to the estimate, each with the plots it has in its stratum. */
    @Test
    void listedClustersKnowTheirSize() throws IOException {
        plan("cluster = 3\ncluster_spacing = 120\n").assertCode(0);
        Map<String, Integer> counted = new HashMap<>();
        Map<String, String> said = new HashMap<>();
        List<String> lines = Files.readAllLines(folder.resolve("out/plots.csv"));
        List<String> head = List.of(lines.get(0).split(","));
        for (String line : lines.subList(1, lines.size())) {
            String[] f = line.split(",", -1);
            String cluster = f[head.indexOf("stratum")] + f[head.indexOf("cluster")];
            counted.merge(cluster, 1, Integer::sum);
            said.put(cluster, f[head.indexOf("cluster_size")]);
        }
        counted.forEach((cluster, n) -> assertEquals(Integer.toString(n), said.get(cluster), cluster));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spacing = 0.5 | write a larger spacing",
                "pattern = \"rectangular\"; row_spacing = 0.001; plots = 20 | write a larger spacing",
                "spacing = 60 | they would overlap",
                "plots = 20; buffer = 5000 | a smaller buffer",
                "plots = 10; cluster = 3; cluster_spacing = 9000 | smaller cluster_spacing",
                "start = [47.9, -115.9] | longitude comes first"
            })
    void whatCannotBeRunIsRefused(String layout, String words) throws IOException {
        Run run = plan(layout.replace("; ", "\n"));
        run.assertCode(1);
        assertTrue(run.err().contains(words), run.err());
    }

    /** 300 random circles of 74.5 ft (22.7 m) on 48.6 ha: pairs nearer than that are all but sure (about 300²/2·π·22.7²/486000 = 150). */
    @Test
    void overlapsByChanceAreCounted() throws IOException {
        Run run = plan("pattern = \"random\"\nplots = 300\n");
        run.assertCode(0);
        assertTrue(run.out().contains("pairs of plots lie nearer to each other than the 74.5 ft"), run.out());
    }
}
