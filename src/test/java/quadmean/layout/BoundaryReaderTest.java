package quadmean.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Polygon;
import quadmean.design.Design;
import quadmean.model.Policy;
import quadmean.model.Rule;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** Boundaries in every format, with holes, several parts and map systems; areas by algebra or from R. */
class BoundaryReaderTest {
    /** Area of layout.R (sf, equal-area map): 1081.6691864 ha, with the hole taken off. */
    private static final double R_HECTARES = 1081.6691864;

    private static final Tolerance SIDES = Tolerance.relative("sides straight on the map or on the ellipsoid", 2e-7);

    @TempDir
    Path folder;

    private TractReading large(String file, String text, String keys) {
        Design design = new SmallDesign()
                .with("area = 10\n", "area = 1082\n")
                .plus("[tract]\nboundary = \"" + file + "\"\n" + keys)
                .valid(folder);
        TractCase.undivided(folder).read(file, text, keys);
        return BoundaryReader.read(design);
    }

    @Test
    void geoJsonHasTheAreaOfR() {
        String text = """
                {"type": "Polygon", "coordinates": [
                 [[-114.40, 46.80], [-114.36, 46.805, 1200], [-114.35, 46.83], [-114.39, 46.84], [-114.40, 46.80]],
                 [[-114.38, 46.815], [-114.38, 46.82], [-114.37, 46.82], [-114.37, 46.815], [-114.38, 46.815]]]}
                """;
        Tract tract = TractCase.there(large("a.geojson", text, ""));
        SIDES.check(R_HECTARES, tract.whole().mapHa(), "area");
        assertEquals("UTM zone 11 north (WGS 84)", tract.grid().name());
        assertTrue(
                tract.notes().get(0).contains("UTM zone 11 north"),
                tract.notes().toString());
    }

    @Test
    void kmlHasTheAreaOfR() {
        String text = """
                <?xml version="1.0" encoding="UTF-8"?>
                <kml xmlns="http://www.opengis.net/kml/2.2"><Document><Placemark><name>all of it</name><MultiGeometry><Polygon>
                <outerBoundaryIs><LinearRing><coordinates>
                -114.40,46.80,0 -114.36,46.805,0 -114.35,46.83,0 -114.39,46.84,0 -114.40,46.80,0
                </coordinates></LinearRing></outerBoundaryIs>
                <innerBoundaryIs><LinearRing><coordinates>
                -114.38,46.815 -114.38,46.82 -114.37,46.82 -114.37,46.815 -114.38,46.815
                </coordinates></LinearRing></innerBoundaryIs>
                </Polygon></MultiGeometry></Placemark></Document></kml>
                """;
        SIDES.check(
                R_HECTARES, TractCase.there(large("a.kml", text, "")).whole().mapHa(), "area");
    }

    @Test
    void wellKnownTextHasTheAreaOfR() {
        String text =
                "# exported\nPOLYGON ((-114.40 46.80, -114.36 46.805, -114.35 46.83, -114.39 46.84, -114.40 46.80),"
                        + " (-114.38 46.815, -114.38 46.82, -114.37 46.82, -114.37 46.815, -114.38 46.815))\n\n";
        TractReading reading = large("a.wkt", text, "crs = \"EPSG:4326\"");
        SIDES.check(R_HECTARES, TractCase.there(reading).whole().mapHa(), "area");
    }

    @Test
    void aWalkedTrackHasTheAreaOfRAndItsLakeIsAHole() {
        String text = gpx("stand", """
                <trkseg><trkpt lat="46.80" lon="-114.40"/><trkpt lat="46.805" lon="-114.36"/><trkpt lat="46.83" lon="-114.35"/>
                <trkpt lat="46.84" lon="-114.39"/><trkpt lat="46.80" lon="-114.40"/></trkseg>
                <trkseg><trkpt lat="46.815" lon="-114.38"/><trkpt lat="46.82" lon="-114.38"/><trkpt lat="46.82" lon="-114.37"/>
                <trkpt lat="46.815" lon="-114.37"/><trkpt lat="46.815" lon="-114.38"/></trkseg>
                """);
        SIDES.check(
                R_HECTARES, TractCase.there(large("a.gpx", text, "")).whole().mapHa(), "area");
    }

    static String gpx(String name, String segments) {
        return "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"test\""
                + " xmlns=\"http://www.topografix.com/GPX/1/1\">\n<trk><name>" + name + "</name>\n" + segments
                + "</trk>\n</gpx>\n";
    }

    /** A walk in pieces whose last step is missing: both is said. */
    @Test
    void piecesOfAWalkAreJoinedAndASmallGapIsClosed() {
        String text = gpx("stand", """
                <trkseg><trkpt lat="46.80" lon="-114.40"/><trkpt lat="46.805" lon="-114.36"/><trkpt lat="46.83" lon="-114.35"/></trkseg>
                <trkseg><trkpt lat="46.84" lon="-114.39"/><trkpt lat="46.801" lon="-114.40"/></trkseg>
                """);
        TractReading reading = large("a.gpx", text, "");
        assertEquals(
                List.of(Rule.BOUNDARY_READ, Rule.BOUNDARY_READ, Rule.BOUNDARY_AREA),
                reading.problems().stream().map(p -> p.rule()).toList());
        assertTrue(
                reading.problems().get(0).detail().contains("closed over a gap of 111 m"),
                reading.problems().get(0).detail());
        TractCase.there(reading);
    }

    /** 400 m x 250 m = 10 ha, less 100 m x 100 m, plus 100 m x 100 m elsewhere. */
    @Test
    void holesAndPartsAddUp() {
        Tract tract = TractCase.undivided(folder)
                .tract(
                        "a.wkt",
                        "MULTIPOLYGON (((0 0, 400 0, 400 250, 0 250, 0 0), (100 100, 200 100, 200 200, 100"
                                + " 200, 100 100)), ((500 0, 600 0, 600 100, 500 100, 500 0)))",
                        TractCase.LOCAL);
        Tolerance.ROUNDING.check(10, tract.whole().mapHa(), "area");
        Tolerance.ROUNDING.check(100_000, tract.outline().getArea(), "plane");
        assertEquals(2, tract.parts().get(0).shape().getNumGeometries());
        assertEquals(0, tract.whole().differencePercent(), 1e-9);
    }

    /** 66 ft to the chain: 10 chains square are 10 acres (4.0469 ha). */
    @Test
    void localUnitsAreConverted() {
        Tract tract = TractCase.there(TractCase.undivided(folder)
                .read("a.wkt", "POLYGON ((0 0, 20 0, 20 12.5, 0 12.5, 0 0))", "crs = \"local\"\nunit = \"chain\""));
        Tolerance.ROUNDING.check(10.1171410560, tract.whole().mapHa(), "25 acres");
        assertEquals("local plane", tract.grid().name());
    }

    @Test
    void strataAreFoundByCodeOrName() {
        Tract tract = TractCase.strata(folder)
                .tract(
                        "a.wkt",
                        "B;POLYGON ((0 0, 400 0, 400 100, 0 100, 0 0))\n"
                                + "upper bench\tPOLYGON ((0 100, 400 100, 400 250, 0 250, 0 100))\n",
                        TractCase.LOCAL);
        assertEquals(
                List.of("A", "B"),
                tract.parts().stream().map(TractPart::stratum).toList());
        assertEquals(
                List.of(6.0, 4.0),
                tract.areas().stream().map(StratumArea::mapHa).toList());
        assertTrue(tract.outline() instanceof Polygon, "two strata side by side are one piece");
    }

    @Test
    void groundInNoStratumIsKnown() {
        Tract tract = TractCase.strata(folder)
                .tract(
                        "a.wkt",
                        "A;POLYGON ((0 100, 400 100, 400 250, 0 250, 0 100))\n"
                                + "B;POLYGON ((0 0, 400 0, 400 100, 0 100, 0 0))\n"
                                + "tract;POLYGON ((0 0, 420 0, 420 250, 0 250, 0 0))\n",
                        TractCase.LOCAL);
        assertEquals(0.5, tract.restHa(), 1e-12);
        assertEquals(105_000, tract.outline().getArea(), 1e-6);
        assertEquals(10, tract.whole().mapHa(), 1e-12);
    }

    @Test
    void propertiesOfGeoJsonNameTheStratum() {
        String text = """
                {"type": "FeatureCollection", "features": [
                 {"type": "Feature", "properties": {"type_code": "A"}, "geometry": {"type": "Polygon", "coordinates": [[[0, 100], [400, 100], [400, 250], [0, 250], [0, 100]]]}},
                 {"type": "Feature", "properties": {"type_code": "B"}, "geometry": {"type": "GeometryCollection", "geometries": [
                  {"type": "Polygon", "coordinates": [[[0, 0], [400, 0], [400, 100], [0, 100], [0, 0]]]}]}}]}
                """;
        Tract tract =
                TractCase.strata(folder).tract("a.json", text, TractCase.LOCAL + "stratum_property = \"type_code\"");
        assertEquals(
                List.of(6.0, 4.0),
                tract.areas().stream().map(StratumArea::mapHa).toList());
    }

    @Test
    void dataFieldsOfKmlNameTheStratum() {
        String text = "<kml><Placemark><name>x</name><ExtendedData><Data name=\"stratum\"><value>A</value></Data>"
                + "</ExtendedData>" + square("-114.40", "46.80", "-114.397", "46.8024") + "</Placemark>"
                + "<Placemark><name>y</name><ExtendedData><SchemaData><SimpleData name=\"stratum\">B</SimpleData></SchemaData>"
                + "</ExtendedData>" + square("-114.40", "46.81", "-114.398", "46.8124") + "</Placemark></kml>";
        Tract tract = TractCase.there(TractCase.strata(folder).read("a.kml", text, ""));
        assertEquals(
                List.of("A", "B"),
                tract.parts().stream().map(TractPart::stratum).toList());
        assertEquals(1.5, tract.areas().get(0).mapHa() / tract.areas().get(1).mapHa(), 1e-3);
    }

    static String square(String west, String south, String east, String north) {
        return "<Polygon><outerBoundaryIs><LinearRing><coordinates>"
                + String.join(
                        " ",
                        west + "," + south,
                        east + "," + south,
                        east + "," + north,
                        west + "," + north,
                        west + "," + south)
                + "</coordinates></LinearRing></outerBoundaryIs></Polygon>";
    }

    /** The scale in the middle is 1.00009517 ({@code proj -V} of PROJ 9.1.0), so the ground is smaller by its square. */
    @Test
    void aZoneOfUtmIsKeptAsTheGrid() {
        Tract tract = TractCase.there(TractCase.undivided(folder)
                .read(
                        "a.wkt",
                        "POLYGON ((700512 5187660, 700912 5187660, 700912 5187910, 700512 5187910, 700512 5187660))",
                        "crs = \"EPSG:32611\""));
        Tolerance.relative("eight decimals of the scale", 2e-8)
                .check(10 / (1.00009517 * 1.00009517), tract.whole().mapHa(), "area");
        assertEquals("UTM zone 11 north (WGS 84)", tract.grid().name());
        assertEquals(700512, tract.outline().getEnvelopeInternal().getMinX(), 1e-6);
    }

    /** The corners of the same square on a Lambert cone in feet (PROJ 9.1.0). */
    @Test
    void otherMapSystemsAreConverted() {
        String cone =
                "+proj=lcc +lat_1=45 +lat_2=49 +lat_0=44.25 +lon_0=-109.5 +x_0=600000 +y_0=0 +datum=WGS84 +units=ft";
        Tract tract = TractCase.there(TractCase.undivided(folder)
                .read(
                        "a.wkt",
                        "POLYGON ((750148.0338 972033.1459, 751453.4607 971907.8929, 751531.7442 972723.7839,"
                                + " 750226.3175 972849.0385, 750148.0338 972033.1459))",
                        "crs = \"" + cone + "\""));
        Tolerance.relative("corners rounded to 0.0001 ft", 1e-6)
                .check(10 / (1.00009517 * 1.00009517), tract.whole().mapHa(), "area");
        assertEquals(700512, tract.outline().getEnvelopeInternal().getMinX(), 1e-4);
        assertEquals(5187660, tract.outline().getEnvelopeInternal().getMinY(), 1e-4);
    }

    @Test
    void aLargeDifferenceIsNotedAndRefusedIfTheDesignSaysSo() {
        String text = "POLYGON ((0 0, 400 0, 400 260, 0 260, 0 0))";
        TractReading reading = TractCase.undivided(folder).read("a.wkt", text, TractCase.LOCAL);
        assertEquals(1, reading.problems().size());
        assertEquals(Policy.KEEP, reading.problems().get(0).policy());
        assertTrue(reading.problems().get(0).detail().contains("10.40 ha on the map and 10.00 ha in the design"));
        TractCase.there(reading);
        TractReading refused = TractCase.undivided(folder)
                .read("a.wkt", text, TractCase.LOCAL + "[policy]\nboundary-area = \"refuse\"");
        assertEquals(null, refused.tract());
    }

    @Test
    void aDesignWithoutABoundaryHasNoTract() {
        Design design = new SmallDesign().valid(folder);
        assertThrows(IllegalArgumentException.class, () -> BoundaryReader.read(design));
    }
}
