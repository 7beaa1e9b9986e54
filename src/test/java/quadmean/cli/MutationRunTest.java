package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.field.Mutations;

/** The program run on damaged tallies and designs: it ends with a result or a refusal, never with a defect. */
class MutationRunTest {
    private static final String TALLY = "file = \"../datasets/";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"demo.toml demo-tally.csv", "idaho-points.toml idaho-points-1-72.csv"})
    void damagedTalliesAreNoDefect(String names) throws IOException {
        tallies(names.split(" "), 5_000, 32);
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"demo.toml demo-tally.csv", "idaho-points.toml idaho-points-1-72.csv"})
    void manyDamagedTalliesAreNoDefect(String names) throws IOException {
        tallies(names.split(" "), 2_000_000, 1_000);
    }

    @Test
    void damagedDesignsAreNoDefect() throws IOException {
        designs(9_000, 80);
    }

    @Tag("slow")
    @Test
    void manyDamagedDesignsAreNoDefect() throws IOException {
        designs(3_000_000, 2_000);
    }

    /** The design beside its tally; stems are cut by lists, which takes a fraction of the time of trying every cut. */
    private static String quick(String name) throws IOException {
        return Files.readString(Path.of("designs", name))
                .replace(TALLY, "file = \"")
                .replace("method = \"best_value\"", "method = \"lengths\"");
    }

    /** The shipped policies loosened, so that more than the intact tallies come through to an estimate. */
    private static String loosened(String design) {
        return design.replaceAll("(?s)\\[policy\\].*?\n\n", """
                [policy]
                row-length = "drop"
                plot-missing = "drop"
                number-unreadable = "drop"
                species-missing = "drop"
                species-unknown = "keep"
                stratum-unknown = "drop"
                stratum-changes = "drop"
                dbh-missing = "drop"
                dbh-impossible = "drop"
                height-impossible = "keep"
                reading-unusable = "keep"
                height-off-curve = "keep"
                row-repeated = "keep"
                tree-repeated = "keep"
                empty-plot-has-trees = "keep"
                plot-not-listed = "keep"
                plot-not-in-tally = "keep"

                """);
    }

    private void tallies(String[] names, long firstSeed, int count) throws IOException {
        String text = quick(names[0]);
        Path design = Files.writeString(folder.resolve("d.toml"), loosened(text));
        String tally = Files.readString(Path.of("datasets", names[1]));
        Map<Integer, Integer> codes = new TreeMap<>();
        for (long seed = firstSeed; seed < firstSeed + count; seed++) {
            byte[] damaged = new Mutations(seed).mutate(tally);
            Files.write(folder.resolve(names[1]), damaged);
            String command = List.of("check", "check", "estimate", "check", "check", "plan")
                    .get((int) (seed % 6));
            Run run = Run.of(command, design, "--out", folder.resolve("out"));
            codes.merge(run.code(), 1, Integer::sum);
            assertTrue(run.code() == 0 || run.code() == 1, "seed " + seed + " of " + names[1] + ": " + run.err());
            assertEquals(
                    new String(damaged, StandardCharsets.ISO_8859_1),
                    Run.files(folder).get(names[1]),
                    "the input is as it was, seed " + seed);
        }
        assertTrue(codes.getOrDefault(0, 0) > count / 10, "some come through: " + codes);
        assertTrue(codes.getOrDefault(1, 0) > count / 50, "some are refused: " + codes);
    }

    private void designs(long firstSeed, int count) throws IOException {
        String tally = Files.readString(Path.of("datasets/demo-tally.csv"));
        Files.writeString(folder.resolve("demo-tally.csv"), tally);
        String text = quick("demo.toml");
        Map<Integer, Integer> codes = new TreeMap<>();
        for (long seed = firstSeed; seed < firstSeed + count; seed++) {
            byte[] damaged = new Mutations(seed).mutate(text);
            Path design = Files.write(folder.resolve("d.toml"), damaged);
            Run run = Run.of(seed % 5 == 0 ? "estimate" : "check", design, "--out", folder.resolve("out"));
            codes.merge(run.code(), 1, Integer::sum);
            assertTrue(run.code() >= 0 && run.code() <= 2, "seed " + seed + ": " + run.err());
            assertEquals(tally, Files.readString(folder.resolve("demo-tally.csv")), "seed " + seed);
        }
        assertTrue(codes.getOrDefault(0, 0) > 0 && codes.getOrDefault(1, 0) > count / 10, codes.toString());
    }
}
