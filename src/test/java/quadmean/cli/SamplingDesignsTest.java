package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/**
 * The shipped sampling designs through the program, from file to estimate.json: basal area per quadrat as R has it
 * (longleaf-estimates.json from estimators.R, unequal.json from unequal.R).
 */
class SamplingDesignsTest {
    private static final double QUADRAT_HA = 0.0625;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "simple-random, longleaf-estimates, simple_random/with_fpc, se, 15",
        "systematic, longleaf-estimates, systematic_grid, se_neighbour_differences, ",
        "stratified, longleaf-estimates, stratified/with_fpc_df_satterthwaite, se, 10.123686011124",
        "post-stratified, longleaf-estimates, post_stratified, se_survey_linearised, 14",
        "ratio, longleaf-estimates, ratio, se_v2, 15",
        "regression, longleaf-estimates, regression, se_exact_with_fpc, 14",
        "double-sampling, longleaf-estimates, double_sampling_regression, se_freese_handbook, 10",
        "double-stratified, unequal, double_stratified, se, 10",
        "cluster, longleaf-estimates, cluster_one_stage/with_fpc, se, 4",
        "two-stage, longleaf-estimates, two_stage/with_fpc, se, 5",
        "unequal-probability, unequal, hansen_hurwitz, se, 15"
    })
    void shippedDesignGivesWhatRGives(String design, String file, String entry, String se, Double df)
            throws IOException {
        Run.of("estimate", "designs/" + design + ".toml", "--out", folder).assertCode(0);
        JsonNode expected = ReferenceFiles.json(file + ".json");
        for (String key : entry.split("/")) {
            expected = expected.get(key);
        }
        JsonNode row = basalArea();
        Tolerance.R_SCRIPT.check(
                expected.get("mean").doubleValue(), row.get("mean").doubleValue() * QUADRAT_HA, "mean");
        Tolerance.R_SCRIPT.check(expected.get(se).doubleValue(), row.get("se").doubleValue() * QUADRAT_HA, "se");
        if (df != null) {
            Tolerance.R_SCRIPT.check(df, row.get("df").doubleValue(), "df");
        }
        if (expected.has("lower")) {
            Tolerance.R_SCRIPT.check(
                    expected.get("lower").doubleValue(), row.get("lower").doubleValue() * QUADRAT_HA, "lower");
            Tolerance.R_SCRIPT.check(
                    expected.get("upper").doubleValue(), row.get("upper").doubleValue() * QUADRAT_HA, "upper");
        }
    }

    private JsonNode basalArea() throws IOException {
        JsonNode rows = new ObjectMapper()
                .readTree(Files.readString(folder.resolve("estimate.json")))
                .get("estimates");
        return StreamSupport.stream(rows.spliterator(), false)
                .filter(r -> r.get("stratum").asText().equals("*")
                        && r.get("species").asText().equals("*")
                        && r.get("attribute").asText().equals("basal_area")
                        && r.get("basis").asText().equals("per_area")
                        && r.get("unit").asText().equals("m2/ha"))
                .findFirst()
                .orElseThrow();
    }

    /** The tallies hold the trees of longleaf.csv, quadrat by quadrat, each once. */
    @Test
    void talliesAreTheMappedTrees() throws IOException {
        Map<String, List<String>> mapped = new TreeMap<>();
        for (var tree : ReferenceFiles.csv("longleaf.csv")) {
            int column = (int) Math.min(7, Math.floor(ReferenceFiles.number(tree, "x_m") / 25));
            int row = (int) Math.min(7, Math.floor(ReferenceFiles.number(tree, "y_m") / 25));
            mapped.computeIfAbsent(String.valueOf(1 + column + 8 * row), k -> new ArrayList<>())
                    .add(tree.getField("dbh_cm"));
        }
        try (Stream<Path> files = Files.list(Path.of("datasets/longleaf"))) {
            List<Path> tallies =
                    files.filter(f -> !f.toString().endsWith("-plots.csv")).toList();
            assertTrue(tallies.size() > 7, "tallies were found");
            for (Path tally : tallies) {
                Map<String, List<String>> tallied = new TreeMap<>();
                Files.readAllLines(tally).stream()
                        .skip(1)
                        .map(l -> l.split(",", -1))
                        .forEach(f -> {
                            List<String> trees = tallied.computeIfAbsent(f[0], k -> new ArrayList<>());
                            if (!f[f.length - 1].isEmpty()) {
                                trees.add(f[f.length - 1]);
                            }
                        });
                tallied.forEach((plot, trees) ->
                        assertTrue(trees.equals(mapped.getOrDefault(plot, List.of())), tally + ", plot " + plot));
            }
        }
    }
}
