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
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** {@code plan} on designs that compare kinds of plot. */
class PlanKindsTest {
    private static final String KINDS = """
            [plan]
            cv = 40
            [plan.kinds]
            plot_areas = [0.02, 0.1]
            basal_area_factors = [2, 4, 8]
            """;
    private static final String DENSITY = "basal_area = 24\ntrees = 500\n";
    private static final String MAP =
            "stem_map = \"map.csv\"\n[plan.kinds.columns]\nx = \"x_m\"\ny = \"y_m\"\ndbh = \"dbh_cm\"\n";

    @TempDir
    Path folder;

    private Run plan(String text) {
        Path design = new SmallDesign().plus(text).write(folder);
        return Run.of("plan", design, "--out", folder.resolve("out"));
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper()
                .readTree(folder.resolve("out/plan.json").toFile())
                .get("kinds");
    }

    /** A square with a stem at each 10 m. */
    private void writeMap(String name, int side) throws IOException {
        StringBuilder map = new StringBuilder("x_m,y_m,dbh_cm\n");
        for (int x = 0; x <= side; x += 10) {
            for (int y = 0; y <= side; y += 10) {
                map.append(x).append(',').append(y).append(",25\n");
            }
        }
        Files.writeString(folder.resolve(name), map);
    }

    @Test
    void tableJsonAndConsoleAgree() throws IOException {
        Run run = plan(KINDS + DENSITY);
        run.assertCode(0);
        JsonNode kinds = json();
        List<String> rows = Files.readAllLines(folder.resolve("out/kinds.csv"));
        assertEquals(6, rows.size());
        for (int i = 0; i < 5; i++) {
            JsonNode option = kinds.get("options").get(i);
            String[] row = rows.get(i + 1).split(",");
            assertEquals(option.get("plots").asText(), row[7]);
            assertEquals(option.get("hours").asDouble(), Double.parseDouble(row[12]));
            assertTrue(run.out().contains(option.get("name").asText() + ": "), run.out());
            assertTrue(run.out().contains(option.get("plots").asText() + " plots, "), run.out());
        }
        assertTrue(run.out().contains("common practice, no source"), run.out());
        assertTrue(run.out().contains("from memory"), run.out());
        assertEquals("common practice, no source", kinds.at("/times/setup/from").asText());
        assertTrue(kinds.get("map").isNull());
    }

    @Test
    void withoutTheTableNothingIsWritten() {
        Run run = plan("[plan]\ncv = 40");
        run.assertCode(0);
        assertFalse(Files.exists(folder.resolve("out/kinds.csv")));
        assertFalse(run.out().contains("Kinds of plot"), run.out());
    }

    @Test
    void aMapGivesTheVariation() throws IOException {
        writeMap("map.csv", 90);
        Run run = plan(KINDS + MAP);
        run.assertCode(0);
        JsonNode kinds = json();
        assertEquals(100, kinds.at("/map/stems").asInt());
        Tolerance.ROUNDING.check(
                17.841241161527712, kinds.at("/map/offTheEdgeM").asDouble(), "radius of 0.1 ha");
        assertTrue(kinds.get("options").get(0).get("cvByMapPercent").isNumber());
        assertTrue(run.out().contains("map.csv, 100 stems"), run.out());
        assertTrue(run.out().contains("fewer than 10 such plots"), "0.1 ha on 0.81 ha: " + run.out());
    }

    @Test
    void aMapTooSmallIsRefused() throws IOException {
        writeMap("map.csv", 30);
        Run run = plan(KINDS + MAP);
        run.assertCode(1);
        assertTrue(run.err().contains("the map is 30.0 m by 30.0 m"), run.err());
        assertTrue(run.err().contains("to do: map more ground"), run.err());
        assertEquals(Set.of("problems.csv"), Run.files(folder.resolve("out")).keySet());
    }

    @Test
    void aMapThatIsNotThereIsNamed() {
        Run run = plan(KINDS + MAP);
        run.assertCode(2);
        assertTrue(run.err().contains("map.csv: it is not there"), run.err());
    }

    @Test
    void aMapIsNeverOverwritten() throws IOException {
        writeMap("kinds.csv", 100);
        String before = Files.readString(folder.resolve("kinds.csv"));
        Path design = new SmallDesign()
                .plus(KINDS + MAP.replace("map.csv", "kinds.csv"))
                .write(folder);
        Run run = Run.of("plan", design, "--out", folder);
        run.assertCode(2);
        assertTrue(run.err().contains("--out"), run.err());
        assertEquals(before, Files.readString(folder.resolve("kinds.csv")));
    }
}
