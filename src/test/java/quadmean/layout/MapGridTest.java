package quadmean.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import quadmean.support.Tolerance;
import quadmean.units.Unit;

/** The grid, courses and areas against PROJ, R and published survey lines. */
class MapGridTest {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final Tolerance BILLIONTH_DEGREE = Tolerance.absolute("a tenth of a millimetre on the ground", 1e-9);

    /** R 4.2.2, sf 1.0-9 with PROJ 9.1.0: layout.R beside the reference files. */
    @ParameterizedTest
    @CsvSource({
        "-121.5, 45.25, 10, 617707.6043, 5011817.2128",
        "-114.3717, 46.8123, 11, 700512.3539, 5187660.3815",
        "-120.001, 61.3, 10, 660631.9020, 6799892.1538",
        "151.2, -33.9, 56, 333568.9410, 6247473.3368",
        "-83.7532, 10, 17, 198151.7356, 1106672.5581",
        "8.55, 47.37, 32, 466025.4126, 5246380.3647"
    })
    void placesLieOnTheGridWherePROJHasThem(double lon, double lat, int zone, double east, double north) {
        UtmGrid grid = UtmGrid.around(new Coordinate(lon, lat));
        assertEquals(zone, grid.zone());
        Coordinate at = grid.toGrid(new Coordinate(lon, lat));
        Tolerance.printed(4).check(east, at.x, "east");
        Tolerance.printed(4).check(north, at.y, "north");
    }

    /**
     * Geocentric Datum of Australia, Technical Manual (from memory; PROJ 9.1.0 gives the same): Flinders Peak and Buninyon
     * on the grid. Its ellipsoid GRS 80 differs from WGS 84 by 0.1 mm in the polar axis.
     */
    @ParameterizedTest
    @CsvSource({
        "55, 144, 25, 29.52440, 37, 57, 3.72030, 273741.297, 5796489.777",
        "54, 143, 55, 35.38390, 37, 39, 10.15610, 758173.797, 5828674.340"
    })
    void surveyMarksLieWhereTheManualHasThem(
            int zone,
            int lon,
            int lonMin,
            double lonSec,
            int lat,
            int latMin,
            double latSec,
            double east,
            double north) {
        Coordinate at = UtmGrid.of(zone, false)
                .toGrid(new Coordinate(degrees(lon, lonMin, lonSec), -degrees(lat, latMin, latSec)));
        Tolerance.printed(3).check(east, at.x, "east");
        Tolerance.printed(3).check(north, at.y, "north");
    }

    private static double degrees(int whole, int minutes, double seconds) {
        return whole + minutes / 60.0 + seconds / 3600;
    }

    /** The line between those marks in the same manual (from memory; PROJ's geod gives the same): 54 972.271 m, 306° 52' 05.37". */
    @Test
    void theLineBetweenTheMarksHasTheLengthAndBearingOfTheManual() {
        UtmGrid grid = UtmGrid.of(55, false);
        Coordinate peak = new Coordinate(degrees(144, 25, 29.5244), -degrees(37, 57, 3.7203));
        Coordinate other = new Coordinate(degrees(143, 55, 35.3839), -degrees(37, 39, 10.1561));
        Course course = grid.course(grid.toGrid(peak), grid.toGrid(other));
        Tolerance.printed(3).check(54972.271, course.distanceMetres(), "distance");
        Tolerance.absolute("printed to 0.01 seconds", 0.005 / 3600)
                .check(degrees(306, 52, 5.37), course.bearingDegrees(), "bearing");
    }

    /** R 4.2.2, geosphere 1.5-18, which carries the C form of the same library: layout.R. */
    @ParameterizedTest
    @CsvSource({
        "-121.5, 45.25, -121.49, 45.26, 1360.626723, 35.23015438",
        "-114.3717, 46.8123, -114.3717, 46.8223, 1111.672771, 0",
        "-120, 61.3, -120.01, 61.3, 535.964391, 270.00438573",
        "151.2, -33.9, 151.19, -33.91, 1444.206826, 219.81912136"
    })
    void coursesAreThoseOfR(double lon, double lat, double lonTo, double latTo, double metres, double bearing) {
        UtmGrid grid = UtmGrid.around(new Coordinate(lon, lat));
        Course course = grid.course(grid.toGrid(new Coordinate(lon, lat)), grid.toGrid(new Coordinate(lonTo, latTo)));
        Tolerance.printed(6).check(metres, course.distanceMetres(), "distance");
        double turned = Math.IEEEremainder(course.bearingDegrees() - bearing, 360);
        Tolerance.absolute("a hundred-millionth of a degree and rounding of the way back", 2e-8)
                .check(0, turned, "bearing");
    }

    /** {@code proj -V +proj=utm} of PROJ 9.1.0: meridian scale and convergence. */
    @ParameterizedTest
    @CsvSource({
        "-121.5, 45.25, 0.99977036, 1.06539991",
        "-114.3717, 46.8123, 1.00009419, 1.91697012",
        "151.2, -33.9, 0.99994147, 1.00417196"
    })
    void scaleAndConvergenceAreThoseOfPROJ(double lon, double lat, double scale, double convergence) {
        UtmGrid grid = UtmGrid.around(new Coordinate(lon, lat));
        Coordinate at = grid.toGrid(new Coordinate(lon, lat));
        Tolerance.absolute("rounding over 200 m", 2e-8).check(scale, grid.scaleAt(at), "scale");
        // PROJ gives the turn of the grid's north from true north, ours is that of true north from the grid's
        Tolerance.absolute("rounding over 200 m", 1e-6).check(convergence, -grid.convergenceDegrees(at), "convergence");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-79.9, -33.3, -0.0001, 0, 12.5, 47.35, 61, 83.9})
    void aPlaceComesBackFromTheGrid(double lat) {
        for (double lon = -179.99; lon < 180; lon += 7.31) {
            UtmGrid grid = UtmGrid.around(new Coordinate(lon, lat));
            Coordinate back = grid.lonLat(grid.toGrid(new Coordinate(lon, lat))).orElseThrow();
            BILLIONTH_DEGREE.check(lon, back.x, "longitude");
            BILLIONTH_DEGREE.check(lat, back.y, "latitude");
        }
    }

    /** A section of the public land survey is a square mile, 640 acres by definition; corners by GeographicLib. */
    @ParameterizedTest
    @CsvSource({"-114.3717, 46.8123", "-117.0001, 31.2", "-120.01, 65", "-83.7, 34"})
    void aSquareMileHas640Acres(double lon, double lat) {
        UtmGrid grid = UtmGrid.around(new Coordinate(lon, lat));
        double diagonal = Unit.FOOT.convert(5280, Unit.METRE) / Math.sqrt(2);
        Coordinate[] corners = new Coordinate[5];
        for (int i = 0; i < 5; i++) {
            GeodesicData corner = Geodesic.WGS84.Direct(lat, lon, 10 + 90 * i, diagonal);
            corners[i] = grid.toGrid(new Coordinate(corner.lon2, corner.lat2));
        }
        corners[4] = corners[0];
        Polygon section = SHAPES.createPolygon(corners);
        Tolerance.relative("the square bulges by its area over the square of the radius", 1e-7)
                .check(640, Unit.HECTARE.convert(grid.areaHa(section), Unit.ACRE), "on the ellipsoid");
        double scale =
                grid.scaleAt(new Coordinate((corners[0].x + corners[2].x) / 2, (corners[0].y + corners[2].y) / 2));
        double plane = Unit.SQUARE_METRE_OF_GROUND.convert(section.getArea() / (scale * scale), Unit.ACRE);
        Tolerance.relative("scale changes across the square", 1e-6).check(640, plane, "on the grid, by its scale");
    }

    /** R 4.2.2, sf with PROJ 9.1.0: area on an equal-area map, another way to compute it. */
    @Test
    void aHoleIsTakenOff() {
        UtmGrid grid = UtmGrid.of(11, true);
        LinearRing outer = ring(grid, -114.40, 46.80, -114.36, 46.805, -114.35, 46.83, -114.39, 46.84, -114.40, 46.80);
        LinearRing hole = ring(grid, -114.38, 46.815, -114.38, 46.82, -114.37, 46.82, -114.37, 46.815, -114.38, 46.815);
        double area = grid.areaHa(SHAPES.createPolygon(outer, new LinearRing[] {hole}));
        Tolerance.relative("sides straight on the map or on the ellipsoid", 2e-7)
                .check(1081.6691864, area, "area");
    }

    private static LinearRing ring(UtmGrid grid, double... lonLat) {
        Coordinate[] corners = new Coordinate[lonLat.length / 2];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = grid.toGrid(new Coordinate(lonLat[2 * i], lonLat[2 * i + 1]));
        }
        return SHAPES.createLinearRing(corners);
    }

    @Test
    void aPlaneOfItsOwnHasPlaneGeometry() {
        LocalGrid grid = new LocalGrid();
        Coordinate from = new Coordinate(0, 0);
        assertEquals(new Course(5, Math.toDegrees(Math.atan2(-3, 4)) + 360), grid.course(from, new Coordinate(-3, 4)));
        assertEquals(new Course(2, 180), grid.course(from, new Coordinate(0, -2)));
        assertEquals(1, grid.scaleAt(from));
        assertEquals(0, grid.convergenceDegrees(from));
        assertEquals(true, grid.lonLat(from).isEmpty());
        assertEquals("local plane", grid.name());
    }

    @Test
    void zonesGoFrom1To60() {
        assertThrows(IllegalArgumentException.class, () -> UtmGrid.of(61, true));
        assertEquals(60, UtmGrid.around(new Coordinate(180, 10)).zone());
        assertEquals(
                "UTM zone 1 south (WGS 84)",
                UtmGrid.around(new Coordinate(-180, -1)).name());
    }
}
