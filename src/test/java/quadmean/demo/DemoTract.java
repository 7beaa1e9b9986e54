package quadmean.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.layout.BoundaryReader;
import quadmean.layout.Tract;
import quadmean.layout.UtmGrid;
import quadmean.units.Unit;

/**
 * The boundary of the demonstration stand: three strata side by side, a lake on the bench. Invented, and laid into hills of
 * western Montana where such a forest could stand. One side of each stratum is moved until its area is that of the design.
 */
public final class DemoTract {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final UtmGrid GRID = UtmGrid.of(11, true);

    /** South-west of the tract on the grid (m). */
    private static final double EAST = 603_000;

    private static final double NORTH = 5_245_000;

    private static final double[][] RIM = {{300, 420}, {470, 445}, {640, 405}, {820, 430}, {960, 395}};
    private static final double[][] BANK = {{300, 420}, {330, 310}, {365, 200}, {400, 90}};
    private static final double[][] LAKE = {
        {585, 272}, {600, 302}, {648, 321}, {702, 308}, {731, 283}, {712, 251}, {660, 238}, {610, 246}
    };

    private DemoTract() {}

    /** Writes the boundary to the file named by the first argument. */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), geoJson());
    }

    /** The shipped boundary as the program reads it. */
    public static Tract read() throws IOException {
        Design design = Objects.requireNonNull(
                DesignReader.read(Path.of("designs/demo.toml")).design());
        return Objects.requireNonNull(BoundaryReader.read(design).tract());
    }

    /** The boundary as GeoJSON, line ends as on Unix. */
    public static String geoJson() {
        return """
                {"type": "FeatureCollection", "description": "Cobbler Ridge demonstration stand: invented from end to end", "features": [
                """
                + String.join(
                        ",\n",
                        feature("N", "north slope", fitted(62, DemoTract::northSlope)),
                        feature("B", "pine bench", fitted(41, DemoTract::bench)),
                        feature("C", "creek bottom", fitted(17, DemoTract::creekBottom)))
                + "\n]}\n";
    }

    private static Polygon northSlope(double out) {
        return polygon(RIM, new double[][] {
            {985, 640}, {860, 760 + out}, {700, 690 + out}, {520, 790 + out}, {330, 730 + out}, {180, 640}, {210, 500}
        });
    }

    private static Polygon bench(double out) {
        List<Coordinate> ring = ring(reversed(RIM), BANK, new double[][] {
            {520, 30 - out}, {720, 70 - out}, {900, 40 - out}, {1050, 120}, {1010, 250}
        });
        LinearRing lake = SHAPES.createLinearRing(ring(LAKE).toArray(Coordinate[]::new));
        return SHAPES.createPolygon(SHAPES.createLinearRing(ring.toArray(Coordinate[]::new)), new LinearRing[] {lake});
    }

    private static Polygon creekBottom(double out) {
        return polygon(reversed(BANK), new double[][] {
            {210, 500},
            {165 - out, 455},
            {150 - out, 320},
            {190 - out, 180},
            {225 - out, 60},
            {215 - out, -70},
            {330, -60}
        });
    }

    /** The shape whose area is so many acres; area is a straight line in the distance moved. */
    private static Polygon fitted(double acres, DoubleFunction<Polygon> shape) {
        double wanted = Unit.ACRE.convert(acres, Unit.HECTARE);
        double at0 = GRID.areaHa(shape.apply(0));
        double at10 = GRID.areaHa(shape.apply(10));
        return shape.apply(10 * (wanted - at0) / (at10 - at0));
    }

    private static Polygon polygon(double[][]... lines) {
        return SHAPES.createPolygon(ring(lines).toArray(Coordinate[]::new));
    }

    private static List<Coordinate> ring(double[][]... lines) {
        List<Coordinate> ring = new ArrayList<>();
        for (double[][] line : lines) {
            for (double[] corner : line) {
                Coordinate at = new Coordinate(EAST + corner[0], NORTH + corner[1]);
                if (ring.isEmpty() || !ring.get(ring.size() - 1).equals2D(at)) {
                    ring.add(at);
                }
            }
        }
        ring.add(ring.get(0).copy());
        return ring;
    }

    private static double[][] reversed(double[][] line) {
        double[][] back = new double[line.length][];
        for (int i = 0; i < line.length; i++) {
            back[i] = line[line.length - 1 - i];
        }
        return back;
    }

    private static String feature(String code, String name, Polygon shape) {
        List<String> rings = new ArrayList<>(List.of(ring(shape.getExteriorRing())));
        for (int i = 0; i < shape.getNumInteriorRing(); i++) {
            rings.add(ring(shape.getInteriorRingN(i)));
        }
        return String.format(
                        Locale.ROOT,
                        "{\"type\": \"Feature\", \"properties\": {\"stratum\": \"%s\", \"name\": \"%s\"},%n \"geometry\": {\"type\":"
                                + " \"Polygon\", \"coordinates\": [%n%s]}}",
                        code,
                        name,
                        String.join(",\n", rings))
                .replace("\r\n", "\n");
    }

    private static String ring(LinearRing ring) {
        List<String> corners = new ArrayList<>();
        for (Coordinate c : ring.getCoordinates()) {
            Coordinate at = GRID.lonLat(c).orElseThrow();
            corners.add(String.format(Locale.ROOT, "[%.7f, %.7f]", at.x, at.y));
        }
        return "  [" + String.join(", ", corners) + "]";
    }
}
