package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.geojson.GeoJsonReader;
import quadmean.cruise.CruiseRun;
import quadmean.estimate.PlotResult;
import quadmean.support.ShippedCruises;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** What each plot says, as a table and on the map. */
class PlotResultsTest {
    private static final String LIST = "[selection]\nplot_list = \"plan.csv\"\n";

    @TempDir
    Path folder;

    private Run estimate(String plan) throws IOException {
        Files.writeString(folder.resolve("plan.csv"), plan);
        Path design = Run.cruise(folder, new SmallDesign().plus(LIST), Run.TALLY);
        return Run.of("estimate", design, "--out", folder.resolve("out"));
    }

    private JsonNode features() throws IOException {
        return new ObjectMapper()
                .readTree(folder.resolve("out/plot-results.geojson").toFile());
    }

    /** Longitude first (RFC 7946), read by the GeoJSON reader of JTS. */
    @Test
    void plotsStandWhereTheListHasThem() throws IOException, ParseException {
        estimate("plot,longitude,latitude\n1,-116.5,46.75\n2,-116.625,46.5\n3,-0.5,-33\n")
                .assertCode(0);
        Geometry map = new GeoJsonReader().read(Files.readString(folder.resolve("out/plot-results.geojson")));
        assertEquals(
                "GEOMETRYCOLLECTION (POINT (-116.5 46.75), POINT (-116.625 46.5), POINT (-0.5 -33))", map.toText());
        JsonNode first = features().at("/features/0/properties");
        // two trees on a plot of 0.1 ha, of 30 and 25 cm: 20 trees/ha of (0.3² + 0.25²)·π/4 m² on 0.1 ha
        assertEquals("1", first.get("plot").asText());
        assertEquals(20, first.get("trees_per_ha").asDouble());
        double basalArea = Math.PI / 4 * (0.3 * 0.3 + 0.25 * 0.25) / 0.1;
        Tolerance.ROUNDING.check(basalArea, first.get("basal_area_m2_per_ha").asDouble(), "basal area");
        // 1 ft²/ac is 0.09290304/0.40468564224 m²/ha by definition of foot and acre
        Tolerance.ROUNDING.check(
                basalArea * 0.40468564224 / 0.09290304,
                first.get("basal_area_ft2_per_ac").asDouble(),
                "basal area in US units");
        assertTrue(first.get("volume_m3_per_ha").isNull(), "no volume equation");
        assertTrue(first.get("reason").asText().contains("no volume equation"), first.toString());
    }

    @Test
    void aPlotWithoutAPlaceIsInTheFileAndNotOnTheMap() throws IOException {
        estimate("plot,longitude,latitude\n1,-116.5,46.75\n2,,\n3,-116.5,46.5\n")
                .assertCode(0);
        assertEquals(3, features().get("features").size());
        assertTrue(features().at("/features/1/geometry").isNull());
        assertTrue(features().at("/features/2/geometry").isObject());
        assertTrue(features().path("note").isMissingNode());
    }

    @Test
    void withoutAnyPlaceTheFileSaysSo() throws IOException {
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY);
        Run.of("estimate", design, "--out", folder.resolve("out")).assertCode(0);
        assertTrue(features().get("note").asText().contains("plot_list"), "what to do");
    }

    @ParameterizedTest
    @CsvSource({
        "46.75, -116.5, latitude, swapped",
        "-116.5, '', latitude, both",
        "'', 46.75, longitude, both",
        "W 116 30, 46.75, longitude, plain number"
    })
    void aPlaceThatIsNoneIsRefused(String longitude, String latitude, String column, String words) throws IOException {
        Run run = estimate("plot,longitude,latitude\n1," + longitude + "," + latitude + "\n2,,\n3,,\n");
        run.assertCode(1);
        assertTrue(run.err().contains(words) && run.err().contains(column), run.err());
    }

    /** On each point of the Idaho cruise basal area is 7 m²/ha times the trees tallied, counted here from the file itself. */
    @Test
    void basalAreaOfAPointIsItsCountTimesTheFactor() throws IOException {
        Run.of("estimate", "designs/idaho-points.toml", "--out", folder.resolve("out"))
                .assertCode(0);
        Map<String, Integer> count = new LinkedHashMap<>();
        for (String line : rows(Path.of("datasets/idaho-points-1-72.csv"))) {
            String[] cells = line.split(",", -1);
            count.merge(cells[0], cells[3].isEmpty() ? 0 : 1, Integer::sum);
        }
        Map<String, Double> expected = new LinkedHashMap<>();
        count.forEach((plot, trees) -> expected.put(plot, 7.0 * trees));
        Map<String, Double> written = new LinkedHashMap<>();
        List<String> header = List.of(Files.readAllLines(folder.resolve("out/plot-results.csv"))
                .get(0)
                .split(","));
        for (String line : rows(folder.resolve("out/plot-results.csv"))) {
            String[] cells = line.split(",", -1);
            written.put(cells[0], Double.valueOf(cells[header.indexOf("basal_area_m2_per_ha")]));
        }
        assertEquals(72, written.size());
        assertEquals(expected.keySet(), written.keySet());
        expected.forEach((plot, value) -> Tolerance.ROUNDING.check(value, written.get(plot), "point " + plot));
    }

    /** Points with counted trees have their basal area by count and say why they have no more; means are those of the estimate. */
    @ParameterizedTest
    @CsvSource({"count-points, 72", "two-factors, 72", "idaho-points, 72", "simple-random, 16"})
    void plotsAddUpToTheEstimate(String design, int number) {
        CruiseRun run = ShippedCruises.run(design);
        List<PlotResult> plots = run.plots();
        assertEquals(number, plots.size());
        double sum = 0;
        for (PlotResult plot : plots) {
            sum += Objects.requireNonNull(plot.perHa().get(Attribute.BASAL_AREA));
            boolean known = !Double.isNaN(Objects.requireNonNull(plot.perHa().get(Attribute.TREES)));
            assertTrue(known || String.join(" ", plot.reasons()).contains("counted"), plot.toString());
        }
        double mean = Objects.requireNonNull(run.result())
                .estimate()
                .row("*", "*", Attribute.BASAL_AREA, Basis.PER_AREA)
                .orElseThrow()
                .mean();
        Tolerance.ROUNDING.check(mean, sum / number, "basal area of " + design);
    }

    @ParameterizedTest
    @CsvSource({"threep, complete tally", "point-3p, 3P sampling", "complete, complete tally"})
    void whatIsKnownOfTheStandAloneIsNotGivenByPlot(String design, String words) {
        for (PlotResult plot : ShippedCruises.run(design).plots()) {
            assertTrue(plot.perHa().values().stream().allMatch(v -> v.isNaN()), plot.toString());
            assertTrue(String.join(" ", plot.reasons()).contains(words), plot.toString());
        }
    }

    private static List<String> rows(Path file) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.remove(0);
        return lines;
    }

    /** A list that a layout wrote carries its places through to the results. */
    @Test
    void placesOfALayoutComeThrough() throws IOException {
        String text = Files.readString(Path.of("designs/demo.toml"))
                .replace(
                        "../datasets",
                        Path.of("datasets").toAbsolutePath().toString().replace('\\', '/'));
        Path laid = Files.writeString(folder.resolve("laid.toml"), text + "\n[layout]\n");
        Run.of("plan", laid, "--out", folder.resolve("plan")).assertCode(0);
        JsonNode plan =
                new ObjectMapper().readTree(folder.resolve("plan/plots.geojson").toFile());
        StringBuilder tally = new StringBuilder("plot,stratum,tree,species,dbh,height\n");
        List<String> header = new ArrayList<>();
        for (String line : Files.readAllLines(folder.resolve("plan/plots.csv"))) {
            String[] cells = line.split(",", -1);
            if (header.isEmpty()) {
                header.addAll(List.of(cells));
            } else {
                tally.append(cells[0]).append(',').append(cells[1]).append(",1,PSME,30,20\n");
            }
        }
        SmallDesign design = new SmallDesign()
                .with("area = 10\n", "")
                .with("species = \"species\"", "species = \"species\"\nstratum = \"stratum\"")
                .plus("[selection]\nmethod = \"stratified\"\nplot_list = \"plan/plots.csv\"\n" + strata(plan));
        Run.of("estimate", Run.cruise(folder, design, tally.toString()), "--out", folder.resolve("out"))
                .assertCode(0);
        assertEquals(places(plan), places(features()));
    }

    private static String strata(JsonNode plan) {
        StringBuilder strata = new StringBuilder();
        plan.findValuesAsText("stratum").stream()
                .distinct()
                .forEach(
                        s -> strata.append("[[stratum]]\ncode = \"").append(s).append("\"\nname = \"x\"\narea = 10\n"));
        return strata.toString();
    }

    private static Map<String, String> places(JsonNode collection) {
        Map<String, String> places = new LinkedHashMap<>();
        for (JsonNode f : collection.get("features")) {
            if (f.at("/properties/plot").isTextual()) {
                places.put(
                        f.at("/properties/plot").asText(),
                        f.at("/geometry/coordinates").toString());
            }
        }
        return places;
    }
}
