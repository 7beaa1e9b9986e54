package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.Problem;
import quadmean.support.SmallDesign;
import quadmean.units.Unit;

class TractParserTest {
    @TempDir
    Path folder;

    private TractSettings settings(String lines) {
        return new SmallDesign().plus("[tract]\n" + lines).valid(folder).tract().orElseThrow();
    }

    @Test
    void aDesignNeedsNoBoundary() {
        assertEquals(Optional.empty(), new SmallDesign().valid(folder).tract());
    }

    @Test
    void aBoundaryIsLongitudeAndLatitudeBesideTheDesign() {
        TractSettings tract = settings("boundary = \"maps/north.GeoJSON\"");
        assertEquals(folder.resolve("maps/north.GeoJSON"), tract.boundary());
        assertEquals("north.GeoJSON", tract.name());
        assertEquals(TractFormat.GEOJSON, tract.format());
        assertEquals(new MapSystem.LonLat(), tract.system());
        assertEquals(Optional.empty(), tract.stratumProperty());
        assertEquals("tract", tract.outline());
    }

    @ParameterizedTest
    @CsvSource({"a.json, GEOJSON", "a.kml, KML", "a.gpx, GPX"})
    void theEndingTellsTheFormat(String file, TractFormat format) {
        assertEquals(format, settings("boundary = \"" + file + "\"").format());
    }

    @Test
    void theFormatCanBeSaid() {
        assertEquals(
                TractFormat.KML,
                settings("boundary = \"a.xml\"\nformat = \"kml\"").format());
    }

    /** EPSG registry, from memory: 32610 is WGS 84 / UTM zone 10N, 32756 zone 56S, 26910 NAD83 zone 10N, 25832 ETRS89 zone 32N. */
    @ParameterizedTest
    @CsvSource({"EPSG:32610, 10, true", "epsg:32756, 56, false", "EPSG:26910, 10, true", "EPSG:25832, 32, true"})
    void numbersOfZonesAreUnderstood(String crs, int zone, boolean north) {
        MapSystem system =
                settings("boundary = \"a.wkt\"\ncrs = \"" + crs + "\"").system();
        assertEquals(new MapSystem.Utm(zone, north), system);
    }

    @Test
    void otherSystemsStandByThemselves() {
        assertEquals(
                new MapSystem.Local(Unit.CHAIN),
                settings("boundary = \"a.wkt\"\ncrs = \"local\"\nunit = \"chain\"")
                        .system());
        assertEquals(
                new MapSystem.Projected("+proj=lcc +lat_1=45"),
                settings("boundary = \"a.wkt\"\ncrs = \"+proj=lcc +lat_1=45\"").system());
        assertEquals(
                new MapSystem.LonLat(),
                settings("boundary = \"a.wkt\"\ncrs = \"EPSG:4269\"").system());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "format = \"kml\" | \"tract.boundary\" is missing",
                "boundary = \"a.shp\" | does not tell how it is written",
                "boundary = \"a.wkt\" | WKT does not say its map system",
                "boundary = \"a.wkt\"; crs = \"EPSG:99999\" | is no map system known here",
                "boundary = \"a.wkt\"; crs = \"EPSG:32661\" | is no map system known here",
                "boundary = \"a.wkt\"; crs = \"local\" | \"tract.unit\" is missing",
                "boundary = \"a.wkt\"; crs = \"EPSG:4326\"; unit = \"ft\" | unit is said of local coordinates",
                "boundary = \"a.kml\"; crs = \"EPSG:32610\" | is in longitude and latitude",
                "boundary = \"a.kml\"; colour = 1 | there is no key \"tract.colour\"",
            })
    void mistakesAreSaid(String lines, String part) {
        List<Problem> problems =
                new SmallDesign().plus("[tract]\n" + lines.replace("; ", "\n")).problems(folder);
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).detail().contains(part), problems.get(0).detail());
    }
}
