package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
        plan("pattern = \"triangular\"").assertCode(0);
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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spacing = 0.5 | write a larger spacing",
                "pattern = \"rectangular\"; row_spacing = 0.001; plots = 20 | write a larger spacing",
                "spacing = 60 | they would overlap",
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
