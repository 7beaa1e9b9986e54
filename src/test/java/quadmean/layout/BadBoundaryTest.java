package quadmean.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** What is wrong with a boundary is said with its place, and all at once; expected places are those of the drawn figures. */
class BadBoundaryTest {
    @TempDir
    Path folder;

    private Problem only(TractReading reading) {
        assertNull(reading.tract());
        assertEquals(
                1,
                reading.problems().size(),
                () -> reading.problems().stream().map(Problem::message).toList().toString());
        return reading.problems().get(0);
    }

    private Problem local(String wkt) {
        return only(TractCase.undivided(folder).read("a.wkt", wkt, TractCase.LOCAL));
    }

    private Problem lonLat(String ring) {
        return only(TractCase.undivided(folder)
                .read("a.geojson", "{\"type\": \"Polygon\", \"coordinates\": [[" + ring + "]]}", ""));
    }

    private static void says(Problem problem, Rule rule, String part) {
        assertEquals(rule, problem.rule(), problem.message());
        assertTrue(problem.detail().contains(part), problem.message());
    }

    /** The diagonals of the bow tie meet in (200, 125). */
    @Test
    void aBoundaryThatCrossesItselfIsShownWhere() {
        Problem p = local("POLYGON ((0 0, 400 250, 400 0, 0 250, 0 0))");
        says(p, Rule.BOUNDARY_SHAPE, "crosses itself at 200.0 125.0");
        assertEquals(1, p.row());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "POLYGON ((0 0, 100 100, 200 200, 300 300, 0 0)) | has no area",
                "POLYGON ((7 7, 7 7, 7 7, 7 7)) | has no area",
                "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0), (50 50, 51 50, 51 51, 50 50)) | a hole lies outside",
                "POLYGON ((0 0, 9 0, 9 9, 0 9)) | its last is not its first",
                "POLYGON ((0 0, 0.5 0, 0.5 0.5, 0 0)) | less than a square metre",
            })
    void shapesThatEncloseNothingAreRefused(String wkt, String part) {
        says(local(wkt), Rule.BOUNDARY_SHAPE, part);
    }

    /** From (0.003, 0) back to (0, 0) on the equator: 0.003 degrees of 111 319.49 m (the radius 6 378 137 m times pi over 180). */
    @Test
    void anOpenRingSaysHowFarItsEndsAre() {
        Problem p = lonLat("[0, 0], [0, 0.002], [0.003, 0.002], [0.003, 0]");
        says(p, Rule.BOUNDARY_SHAPE, "starts at 0.000000 0.000000 and ends at 0.003000 0.000000, 334 m away");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[46.8, -114.4], [46.9, -114.4], [46.9, -114.3], [46.8, -114.4] | longitude and latitude are swapped, and 3 more",
                "[500000, 5180000], [500400, 5180000], [500400, 5180250], [500000, 5180000] | metres or feet of a map system",
                "[1e999, 46], [-114, 46], [-114, 47], [1e999, 46] | two finite numbers",
                "[\"x\", 46], [-114, 46], [-114, 47], [-114, 46] | two finite numbers",
                "[200, 46], [-114, 46], [-114, 47], [200, 46] | from -180 to 180",
                "[10, 85], [10.1, 85], [10.1, 85.1], [10, 85] | ends at 84 degrees north",
                "[179.99, 10], [-179.99, 10], [-179.99, 10.01], [179.99, 10] | crosses the 180th meridian",
                "[-120, 46], [-110, 46], [-110, 46.1], [-120, 46] | reaches over 10.0 degrees of longitude",
            })
    void positionsOutOfPlaceAreRefused(String ring, String part) {
        says(lonLat(ring), Rule.BOUNDARY_POSITION, part);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EPSG:32611 | POLYGON ((-114.4 46.8, -114.3 46.8, -114.3 46.9, -114.4 46.8)) | looks like longitude and latitude",
                "EPSG:32611 | POLYGON ((5187660 700512, 5187660 700912, 5187910 700912, 5187660 700512)) | these are swapped",
                "EPSG:32611 | POLYGON ((NaN 5187660, 700912 5187660, 700912 5187910, NaN 5187660)) | two finite numbers",
                "+proj=nonesuch | POLYGON ((0 0, 9 0, 9 9, 0 0)) | is no map system",
                "+proj=lcc +lat_1=45 +lat_2=46 +datum=nonesuch | POLYGON ((0 0, 9 0, 9 9, 0 0)) | is no map system",
            })
    void coordinatesMustFitTheirMapSystem(String crs, String wkt, String part) {
        says(
                only(TractCase.undivided(folder).read("a.wkt", wkt, "crs = \"" + crs + "\"")),
                Rule.BOUNDARY_POSITION,
                part);
    }

    /** Older GeoJSON names its map system in a member of its own. */
    @Test
    void aSystemThatTheFileNamesMustBeTheDesigns() {
        TractReading reading = TractCase.undivided(folder).read("a.geojson", """
                {"type": "FeatureCollection", "crs": {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::26911"}},
                 "features": [{"type": "Feature", "properties": {}, "geometry": {"type": "Polygon", "coordinates":
                 [[[500000, 5180000], [500400, 5180000], [500400, 5180250], [500000, 5180000]]]}}]}
                """, "");
        says(reading.problems().get(0), Rule.BOUNDARY_POSITION, "26911");
    }

    /** 1 312.336 ft x 820.21 ft are 400 m x 250 m; taken for metres they make 10.764 times the area. */
    @Test
    void anAbsurdAreaIsRefusedWithTheSlipThatMakesIt() {
        Problem p = local("POLYGON ((0 0, 1312.336 0, 1312.336 820.21, 0 820.21, 0 0))");
        says(p, Rule.BOUNDARY_ABSURD, "feet on the map were taken for metres");
        says(local("POLYGON ((0 0, 200 0, 200 200, 0 200, 0 0))"), Rule.BOUNDARY_ABSURD, "-60.0 %");
    }

    @Test
    void strataAndPolygonsMustMatch() {
        TractReading reading = TractCase.strata(folder)
                .read(
                        "a.wkt",
                        "AA;POLYGON ((0 0, 400 0, 400 100, 0 100, 0 0))\nPOLYGON ((0 100, 400 100, 400 250, 0 250, 0 100))\n",
                        TractCase.LOCAL);
        assertNull(reading.tract());
        List<Problem> found = reading.problems();
        assertEquals(4, found.size(), found.toString());
        says(found.get(0), Rule.BOUNDARY_STRATUM, "no stratum \"AA\"; did you mean A?");
        says(found.get(1), Rule.BOUNDARY_STRATUM, "names no stratum; those of the design are A, B");
        assertEquals(2, found.get(1).row());
        says(found.get(2), Rule.BOUNDARY_STRATUM, "stratum A of the design has no polygon");
        says(found.get(3), Rule.BOUNDARY_STRATUM, "stratum B of the design has no polygon");
    }

    /** The strata overlap by 400 m x 10 m = 0.40 ha, and B reaches 400 m x 25 m = 1 ha beyond the outline. */
    @Test
    void overlapsAreMeasured() {
        TractReading reading = TractCase.strata(folder)
                .read(
                        "a.wkt",
                        "A;POLYGON ((0 90, 400 90, 400 240, 0 240, 0 90))\n"
                                + "B;POLYGON ((0 0, 400 0, 400 100, 0 100, 0 0))\n"
                                + "tract;POLYGON ((0 25, 400 25, 400 250, 0 250, 0 25))",
                        TractCase.LOCAL);
        assertNull(reading.tract());
        assertEquals(2, reading.problems().size());
        says(reading.problems().get(0), Rule.BOUNDARY_OVERLAP, "0.40 ha around 200.0 95.0 m lie both");
        says(reading.problems().get(0), Rule.BOUNDARY_OVERLAP, "line 1 (A)");
        says(reading.problems().get(1), Rule.BOUNDARY_OVERLAP, "1.00 ha of stratum B");
    }

    /** 400 m x 0.05 m: under a thousandth of 4 ha. */
    @Test
    void aSliverPasses() {
        TractReading reading = TractCase.strata(folder)
                .read(
                        "a.wkt",
                        "A;POLYGON ((0 99.95, 400 99.95, 400 250, 0 250, 0 99.95))\n"
                                + "B;POLYGON ((0 0, 400 0, 400 100, 0 100, 0 0))\n",
                        TractCase.LOCAL);
        assertEquals(List.of(), reading.problems());
    }

    /** The last line names an unknown stratum and has no shape. */
    @Test
    void allThatIsWrongIsSaidAtOnce() {
        TractReading reading = TractCase.strata(folder)
                .read(
                        "a.wkt",
                        "A;POLYGON ((0 0, 400 250, 400 0, 0 250, 0 0))\nB;POLYGON ((0 NaN, 1 0, 1 1, 0 NaN))\nC;POINT (1 1)\nD;nonsense",
                        TractCase.LOCAL);
        assertEquals(
                List.of(1L, 2L, 3L, 4L, 4L),
                reading.problems().stream().map(Problem::row).sorted().toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a.geojson | ' ' | the file is empty",
                "a.geojson | {\"type\": \"FeatureCollection\", \"features\": []} | no polygon",
                "a.geojson | {\"type\": \"Polygon\", \"coordinates\": [[[NaN, 1]]]} | no JSON",
                "a.geojson | {\"type\": | no JSON",
                "a.kml | <kml><Placemark/></kml> | no polygon",
                "a.kml | <kml> | no KML",
                "a.kml | PK | no KML",
                "a.wkt | POLYGON ((0 0, 1 1 | no well-known text",
                "a.wkt | ((((((((((((((((((1 | brackets lie deeper",
                "a.gpx | <gpx version=\"1.1\" creator=\"x\"></gpx> | no polygon",
                "a.gpx | <gpx version=\"1.1\"><trk> | no GPX",
            })
    void whatCannotBeReadIsSaid(String file, String text, String part) {
        String keys = file.endsWith("wkt") ? TractCase.LOCAL : "";
        says(only(TractCase.undivided(folder).read(file, text, keys)), Rule.BOUNDARY_UNREADABLE, part);
    }

    @Test
    void aMissingOrHugeFileIsSaid() {
        TractCase stand = TractCase.undivided(folder);
        says(only(stand.readMissing("none.kml", "")), Rule.BOUNDARY_UNREADABLE, "no such file");
        byte[] huge = new byte[(32 << 20) + 1];
        says(only(stand.read("a.kml", huge, "")), Rule.BOUNDARY_UNREADABLE, "more than 32 MB are not read");
    }

    /** An entity that fetches a file, and one that blows itself up. */
    @ParameterizedTest
    @ValueSource(strings = {"a.kml", "a.gpx"})
    void entitiesAreNeverFollowed(String file) {
        for (String entity : List.of("SYSTEM \"file:///etc/hostname\"", "\"ha ha ha ha\"")) {
            String text = "<?xml version=\"1.0\"?>\n<!DOCTYPE x [<!ENTITY e " + entity + ">]>\n<gpx version=\"1.1\""
                    + " creator=\"x\"><trk><name>&e;</name></trk></gpx>";
            Problem p = only(TractCase.undivided(folder).read(file, text.getBytes(StandardCharsets.UTF_8), ""));
            says(p, Rule.BOUNDARY_UNREADABLE, "DOCTYPE");
        }
    }

    @Test
    void walksThatAreTooShortOrOpenAreRefused() {
        String two = BoundaryReaderTest.gpx(
                "x", "<trkseg><trkpt lat=\"46.8\" lon=\"-114\"/><trkpt lat=\"46.81\" lon=\"-114\"/></trkseg>");
        says(walk(two), Rule.BOUNDARY_WALK, "2 different places");
        // three sides of a square of 0.01 degrees of latitude on the equator: 1 105.7 m, 1 113.2 m, 1 105.7 m
        String open = BoundaryReaderTest.gpx(
                "x",
                "<trkseg><trkpt lat=\"0\" lon=\"0\"/><trkpt lat=\"0.01\" lon=\"0\"/><trkpt lat=\"0.01\" lon=\"0.01\"/>"
                        + "<trkpt lat=\"0\" lon=\"0.01\"/></trkseg>");
        says(walk(open), Rule.BOUNDARY_WALK, "the walk of 3325 m ends 1113 m from its start");
        assertEquals(3, walk(open).row());
        String beyond = BoundaryReaderTest.gpx("x", "<trkseg><trkpt lat=\"146\" lon=\"-114\"/></trkseg>");
        assertEquals(Rule.BOUNDARY_UNREADABLE, walk(beyond).rule());
    }

    private Problem walk(String gpx) {
        return only(TractCase.undivided(folder).read("a.gpx", gpx, ""));
    }

    @Test
    void whatIsNoPolygonIsLeftOutAndSaid() {
        TractReading reading = TractCase.undivided(folder).read("a.geojson", """
                {"type": "FeatureCollection", "features": [
                 {"type": "Feature", "properties": {}, "geometry": {"type": "Point", "coordinates": [1, 2]}},
                 {"type": "Feature", "properties": {}, "geometry": null},
                 {"type": "Feature", "properties": {}, "geometry": {"type": "Polygon", "coordinates": [[[0, 0], [400, 0], [400, 250], [0, 250], [0, 0]]]}}]}
                """, TractCase.LOCAL);
        TractCase.there(reading);
        assertEquals(2, reading.problems().size());
        says(reading.problems().get(0), Rule.BOUNDARY_READ, "a Point is no polygon");
        assertEquals("feature 1", reading.problems().get(0).column());
        assertEquals(3, reading.problems().get(1).row());
    }
}
