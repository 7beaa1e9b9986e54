package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/** The shipped designs of each kind of plot through the program: plot-kinds.json works the same tallies out in R (plot-kinds.R). */
class PlotKindDesignsTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "strip, basal_area, m2/ha",
        "half-sweep, basal_area, m2/ha",
        "mirage, basal_area, m2/ha",
        "complete, basal_area, m2/ha",
        "threep, volume, ft3/ac",
        "count-points, trees, trees/ha",
        "two-factors, trees, trees/ha",
        "point-3p, trees, trees/ha"
    })
    void shippedDesignGivesWhatRGives(String design, String attribute, String unit) throws IOException {
        JsonNode expected = ReferenceFiles.json("plot-kinds.json").get(design);
        JsonNode row = row(design, attribute, unit);
        for (String number : new String[] {"mean", "se"}) {
            Tolerance.R_SCRIPT.check(
                    expected.get(number).doubleValue(), row.get(number).doubleValue(), number);
        }
        assertEquals(expected.get("df").isNull(), row.get("df").isNull(), "infinite degrees of freedom");
        if (!expected.get("df").isNull()) {
            Tolerance.R_SCRIPT.check(
                    expected.get("df").doubleValue(), row.get("df").doubleValue(), "df");
        }
    }

    /** 236 red oaks hold 8 124.9 ft³ (Beers and Gingrich 1958; redoak.csv). */
    @Test
    void volumeOfAllRedOaksLiesWithinTheLimits() throws IOException {
        JsonNode row = row("threep", "volume", "ft3/ac");
        assertTrue(row.get("lower").doubleValue() < 8124.9, row::toString);
        assertTrue(row.get("upper").doubleValue() > 8124.9, row::toString);
    }

    /** 584 pines on 4 ha (longleaf.csv), each with certainty. */
    @Test
    void completeTallyCountsEveryPine() throws IOException {
        JsonNode row = row("complete", "trees", "trees/ha");
        Tolerance.ROUNDING.check(146, row.get("mean").doubleValue(), "trees per hectare");
        assertEquals(0, row.get("se").doubleValue());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "complete | every tree was tallied | the plots fallen",
                "threep | other trees been drawn | the plots fallen",
                "mirage | the plots fallen elsewhere | trees been drawn"
            })
    void reportSaysWhatWasLeftToChance(String design, String words, String others) throws IOException {
        Run.of("estimate", "designs/" + design + ".toml", "--out", folder).assertCode(0);
        String report = Files.readString(folder.resolve("report.html"));
        assertTrue(report.contains(words), words);
        assertFalse(report.contains(others), others);
        assertFalse(report.contains("92233720"), "infinite degrees of freedom");
    }

    /** The other of the two estimates of 3P stands beside the chosen one. */
    @Test
    void unadjustedEstimateStandsBesideTheAdjusted() throws IOException {
        Run run = Run.of("estimate", "designs/point-3p.toml", "--out", folder);
        run.assertCode(0);
        JsonNode expected = ReferenceFiles.json("plot-kinds.json").get("point-3p-unadjusted");
        JsonNode both = new ObjectMapper()
                .readTree(Files.readString(folder.resolve("estimate.json")))
                .get("otherEstimates");
        assertEquals("adjusted", both.get(0).get("estimator").asText());
        JsonNode other = StreamSupport.stream(both.spliterator(), false)
                .filter(r -> r.get("estimator").asText().equals("unadjusted")
                        && r.get("unit").asText().equals("trees/ha"))
                .findFirst()
                .orElseThrow();
        for (String number : new String[] {"mean", "se", "df"}) {
            Tolerance.R_SCRIPT.check(
                    expected.get(number).doubleValue(), other.get(number).doubleValue(), number);
        }
        assertTrue(run.out().contains("By the unadjusted 3P estimate"), run.out());
        assertTrue(Files.readString(folder.resolve("report.html")).contains("Both 3P estimates"));
    }

    /** At points the unadjusted estimate is a mean of points, so that the number of points for the target follows. */
    @Test
    void methodsSayHowPlotsNeededComeForUnadjustedPoints() throws IOException {
        Path design = folder.resolve("unadjusted.toml");
        Path data = Path.of("datasets").toAbsolutePath();
        Files.writeString(
                design,
                Files.readString(Path.of("designs/point-3p.toml"))
                        .replace("\"adjusted\"", "\"unadjusted\"")
                        .replace("../datasets", data.toString().replace('\\', '/')));
        Run run = Run.of("estimate", design, "--out", folder.resolve("out"));
        run.assertCode(0);
        assertTrue(run.out().contains("more plots should reach it"), run.out());
        String report = Files.readString(folder.resolve("out/report.html"));
        assertFalse(report.contains("Not worked out for this design, whose error does not go by"), "contradiction");
    }

    private JsonNode row(String design, String attribute, String unit) throws IOException {
        Run.of("estimate", "designs/" + design + ".toml", "--out", folder).assertCode(0);
        JsonNode rows = new ObjectMapper()
                .readTree(Files.readString(folder.resolve("estimate.json")))
                .get("estimates");
        return StreamSupport.stream(rows.spliterator(), false)
                .filter(r -> r.get("stratum").asText().equals("*")
                        && r.get("species").asText().equals("*")
                        && r.get("attribute").asText().equals(attribute)
                        && r.get("basis").asText().equals("per_area")
                        && r.get("unit").asText().equals(unit))
                .findFirst()
                .orElseThrow();
    }
}
