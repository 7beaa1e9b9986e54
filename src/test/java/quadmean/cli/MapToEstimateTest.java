package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.cruise.Cruise;
import quadmean.demo.DemoTract;
import quadmean.demo.LaidOutStand;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.support.Tolerance;

/** One design from the map to the estimate, with nothing edited but the tally. */
class MapToEstimateTest {
    private static final String DESIGN = "designs/demo-laid-out.toml";

    @TempDir
    Path folder;

    private final ObjectMapper json = new ObjectMapper();

    /** The design in a folder of its own, its list of plots where {@code plan} writes it. */
    private Path design() throws IOException {
        String text = Files.readString(Path.of(DESIGN))
                .replace("../datasets/demo-laid-out-plots.csv", "out/plots.csv")
                .replace("../datasets/demo-laid-out-tally.csv", "tally.csv")
                .replace(
                        "../datasets",
                        Path.of("datasets").toAbsolutePath().toString().replace('\\', '/'));
        return Files.writeString(folder.resolve("walk.toml"), text);
    }

    private static List<String> numbers(Path plots) throws IOException {
        return Files.readAllLines(plots).stream()
                .skip(1)
                .map(l -> l.split(",", -1)[0] + " " + l.split(",", -1)[1])
                .toList();
    }

    @Test
    void theShippedListIsWhatThePlanLaysOut() throws IOException {
        Run run = Run.of("plan", DESIGN, "--out", folder);
        run.assertCode(0);
        assertEquals(
                Files.readString(Path.of("datasets/demo-laid-out-plots.csv")),
                Files.readString(folder.resolve("plots.csv")));
        assertTrue(run.out().contains("demo-laid-out-plots.csv, is this layout"), run.out());
    }

    /** Neither list nor tally is there when the plan is made; the estimate then has exactly the plots that were laid out. */
    @Test
    void planThenEstimate() throws IOException {
        Path design = design();
        Path out = folder.resolve("out");
        Run.of("plan", design, "--out", out).assertCode(0);
        Files.copy(Path.of("datasets/demo-laid-out-tally.csv"), folder.resolve("tally.csv"));
        Run.of("estimate", design, "--out", out).assertCode(0);
        JsonNode estimate = json.readTree(Files.readString(out.resolve("estimate.json")));
        JsonNode layout =
                json.readTree(Files.readString(out.resolve("plan.json"))).get("layout");
        JsonNode plots = layout.get("plotsByStratum");
        assertEquals(3, plots.size());
        plots.fieldNames()
                .forEachRemaining(code -> assertEquals(
                        plots.get(code).intValue(), row(estimate, code).get("n").intValue(), code));
        assertEquals(
                numbers(out.resolve("plots.csv")).size(),
                row(estimate, "*").get("n").intValue());
        Design read = Objects.requireNonNull(DesignReader.read(design).design());
        assertEquals(
                new TreeSet<>(numbers(out.resolve("plots.csv"))),
                new TreeSet<>(Cruise.run(read).tally().plots().stream()
                        .map(p -> p.id() + " " + p.stratum())
                        .toList()));
    }

    private static JsonNode row(JsonNode estimate, String stratum) {
        return StreamSupport.stream(estimate.get("estimates").spliterator(), false)
                .filter(r -> r.get("stratum").asText().equals(stratum)
                        && r.get("species").asText().equals("*")
                        && r.get("attribute").asText().equals("trees")
                        && r.get("basis").asText().equals("per_area")
                        && r.get("unit").asText().equals("trees/ac"))
                .findFirst()
                .orElseThrow();
    }

    /** Trees per acre of the creek bottom by hand: rows of its plots, marks as often as they say, over the tenths of an acre. */
    @Test
    void marksOfTheTallyCountInTheEstimate() throws IOException {
        Run.of("estimate", DESIGN, "--out", folder).assertCode(0);
        List<String> creek = numbers(Path.of("datasets/demo-laid-out-plots.csv")).stream()
                .filter(p -> p.endsWith(" C"))
                .map(p -> p.split(" ")[0])
                .toList();
        int counted = 0;
        int rows = 0;
        for (String line : Files.readAllLines(Path.of("datasets/demo-laid-out-tally.csv"))) {
            String[] f = line.split(",", -1);
            if (creek.contains(f[0]) && !f[3].isEmpty()) {
                counted += f[7].isEmpty() ? 1 : Integer.parseInt(f[7]);
                rows++;
            }
        }
        assertTrue(counted > rows, "some count twice");
        JsonNode estimate = json.readTree(Files.readString(folder.resolve("estimate.json")));
        Tolerance.ROUNDING.check(
                10.0 * counted / creek.size(), row(estimate, "C").get("mean").doubleValue(), "trees/ac");
    }

    /** Clusters as they were laid out, some of them cut by a line, on the stand of which every tree is known. */
    @ParameterizedTest
    @ValueSource(strings = {"cluster", "two_stage"})
    void laidOutClustersGoOnToTheirEstimators(String estimator) throws IOException {
        Path design = design();
        Files.writeString(
                design,
                Files.readString(design)
                        .replace("plots = 47 ", "plots = 24\ncluster = 3\ncluster_spacing = 120 ")
                        .replace("[output]", "[estimate]\nestimator = \"" + estimator + "\"\n\n[output]"));
        Path out = folder.resolve("out");
        Run.of("plan", design, "--out", out).assertCode(0);
        LaidOutStand stand = LaidOutStand.of(DemoTract.read(), LaidOutStand.SEED);
        Files.writeString(folder.resolve("tally.csv"), stand.tally(out.resolve("plots.csv")));
        Run.of("estimate", design, "--out", out).assertCode(0);
        JsonNode trees = row(json.readTree(Files.readString(out.resolve("estimate.json"))), "*");
        double truth = stand.stems().size() / 120.0;
        assertEquals(truth, trees.get("mean").doubleValue(), 3 * trees.get("se").doubleValue());
    }

    @Test
    void aListThatWasWalkedIsNotReplaced() throws IOException {
        Path design = design();
        Path out = folder.resolve("out");
        Run.of("plan", design, "--out", out).assertCode(0);
        Run.of("plan", design, "--out", out).assertCode(0);
        var first = Run.files(out);
        Files.writeString(design, Files.readString(design).replace("20260511", "7"));
        Run run = Run.of("plan", design, "--out", out);
        run.assertCode(1);
        assertTrue(run.err().contains("a crew may have walked it"), run.err());
        assertEquals(first.get("plots.csv"), Run.files(out).get("plots.csv"));
        assertEquals(first.get("plots.gpx"), Run.files(out).get("plots.gpx"));
        Run other = Run.of("plan", design, "--out", folder.resolve("other"));
        other.assertCode(0);
        assertTrue(other.out().contains("estimates go by the list of the design"), other.out());
    }

    @Test
    void withoutItsListAnEstimateSaysHowToGetOne() throws IOException {
        Path design = design();
        Files.copy(Path.of("datasets/demo-laid-out-tally.csv"), folder.resolve("tally.csv"));
        Run run = Run.of("estimate", design, "--out", folder.resolve("out"));
        run.assertCode(2);
        assertTrue(run.err().contains("plots.csv") && run.err().contains("quadmean plan"), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }
}
