package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.chart.MapChart;
import quadmean.chart.TractMap;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseRun;
import quadmean.design.Design;
import quadmean.layout.SheetArea;
import quadmean.layout.SheetPlot;
import quadmean.layout.SheetRoute;
import quadmean.support.SampleTract;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;
import quadmean.units.UnitSystem;

class LayoutFilesTest {
    @TempDir
    Path folder;

    private static byte[] bytes(Content content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        content.writeTo(out);
        return out.toByteArray();
    }

    private Map<String, Content> files(Design design) {
        return LayoutFiles.of(
                design, SampleTract.set(), Optional.of(MapChart.picture(SampleTract.map(design.units()))));
    }

    private static List<NamedCsvRecord> csv(Content content) throws IOException {
        try (CsvReader<NamedCsvRecord> reader =
                CsvReader.builder().ofNamedCsvRecord(new String(bytes(content), StandardCharsets.UTF_8))) {
            return reader.stream().toList();
        }
    }

    @Test
    void theSameFilesEveryTime() throws IOException {
        Design design = new SmallDesign().valid(folder);
        Map<String, Content> once = files(design);
        assertEquals(
                Set.of("sheets.html", "map.svg", "map.png", "plots.csv", "legs.csv", "plots.geojson", "plots.gpx"),
                once.keySet());
        Map<String, Content> again = files(design);
        for (Map.Entry<String, Content> file : once.entrySet()) {
            Content other = again.get(file.getKey());
            assertNotNull(other);
            assertArrayEquals(bytes(file.getValue()), bytes(other), file.getKey());
        }
    }

    @Test
    void onAPlaneThereIsNothingForReceivers() throws IOException {
        Design design = new SmallDesign().valid(folder);
        Map<String, Content> files = LayoutFiles.of(design, SampleTract.onPlane(), Optional.empty());
        assertEquals(Set.of("sheets.html", "plots.csv", "legs.csv"), files.keySet());
        String page = FieldSheets.page(design, SampleTract.onPlane(), Optional.empty());
        assertTrue(page.contains("map east (m)") && page.contains("map bearing"));
        assertFalse(page.contains("NaN"));
        assertEquals("", csv(LayoutFiles.plots(SampleTract.onPlane())).get(0).getField("longitude"));
    }

    /** The sheets' map is the sample's: its outlines, plots and walks are the same places. */
    @Test
    void theMapHasWhatTheSheetsHave() {
        TractMap expected = SampleTract.map(UnitSystem.METRIC);
        List<SheetArea> areas = expected.areas().stream()
                .map(a -> new SheetArea(
                        a.name(),
                        a.rings().stream()
                                .map(r -> r.stream()
                                        .map(p -> new SheetArea.Corner(p.x(), p.y()))
                                        .toList())
                                .toList()))
                .toList();
        assertEquals(expected, SheetMap.map(areas, SampleTract.set(), UnitSystem.METRIC, 7));
        assertEquals(MapChart.picture(expected), SheetMap.picture(areas, SampleTract.set(), UnitSystem.METRIC, 7));
    }

    /** A design that names plots.csv goes on to an estimate; a variance of grids finds rows and columns in it. */
    @Test
    void anEstimateTakesThePlotList() throws IOException {
        SmallDesign text = new SmallDesign().with("area = 10\n\n[plot]", """

                [[stratum]]
                code = "W"
                area = 5
                [[stratum]]
                code = "E"
                area = 5
                [selection]
                method = "stratified_systematic"
                plot_list = "plots.csv"
                [estimate]
                variance = "neighbour_differences"
                [plot]""");
        Files.write(folder.resolve("plots.csv"), bytes(LayoutFiles.plots(SampleTract.set())));
        StringBuilder tally = new StringBuilder("plot,tree,species,dbh,height\n");
        for (SheetPlot plot : SampleTract.plots()) {
            tally.append(plot.number())
                    .append(",1,PSME,")
                    .append(20 + plot.number().length() * 5)
                    .append(",\n");
        }
        Files.writeString(folder.resolve("tally.csv"), tally);
        CruiseRun run = Cruise.run(text.valid(folder));
        assertNotNull(run.result(), () -> run.tally().problems().toString());
        assertEquals(List.of(), run.tally().problems());
        assertEquals(24, run.tally().plots().size());
        assertEquals(
                12,
                run.tally().plots().stream()
                        .filter(p -> p.stratum().equals("W"))
                        .count());
    }

    @Test
    void legsHaveBearingsAndDistances() throws IOException {
        List<NamedCsvRecord> legs = csv(LayoutFiles.legs(SampleTract.set()));
        assertEquals(26, legs.size(), "two days of twelve plots and the way back");
        NamedCsvRecord second = legs.get(1);
        assertEquals("1", second.getField("from"));
        assertEquals("2", second.getField("to"));
        assertEquals(90, Double.parseDouble(second.getField("true_bearing_deg")));
        assertEquals(100, Double.parseDouble(second.getField("horizontal_m")));
        assertEquals("", second.getField("ground_m"), "not known");
    }

    /** RFC 7946: positions are longitude, latitude. */
    @Test
    void geoJsonHasPlotsAndLegs() throws IOException {
        JsonNode root = new ObjectMapper()
                .readTree(bytes(files(new SmallDesign()
                                .with("units =", "seed = 77\nunits =")
                                .valid(folder))
                        .getOrDefault("plots.geojson", out -> {})));
        assertEquals("FeatureCollection", root.get("type").asText());
        assertEquals(77, root.get("seed").asLong());
        List<JsonNode> features =
                StreamSupport.stream(root.get("features").spliterator(), false).toList();
        assertEquals(24 + 26, features.size());
        JsonNode first = features.get(0);
        SheetPlot plot = SampleTract.plots().get(0);
        assertEquals("Point", first.get("geometry").get("type").asText());
        JsonNode at = first.get("geometry").get("coordinates");
        Tolerance.ROUNDING.check(plot.place().longitude(), at.get(0).doubleValue(), "longitude");
        Tolerance.ROUNDING.check(plot.place().latitude(), at.get(1).doubleValue(), "latitude");
        assertTrue(first.get("properties").get("nearEdge").asBoolean());
        JsonNode last = features.get(features.size() - 1);
        assertEquals("LineString", last.get("geometry").get("type").asText());
        SheetRoute.Leg leg = SampleTract.set().route().legs().get(25);
        assertEquals(leg.from(), last.get("properties").get("from").asText());
        Tolerance.ROUNDING.check(
                leg.horizontalM(), last.get("properties").get("horizontalM").doubleValue(), "length");
        assertTrue(last.get("properties").get("groundM").isNull());
    }
}
