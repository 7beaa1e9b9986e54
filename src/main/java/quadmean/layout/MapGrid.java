package quadmean.layout;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The plane in which a tract is laid out: east (x) and north (y) in metres. */
public sealed interface MapGrid permits UtmGrid, LocalGrid {

    /** What outputs call it. */
    String name();

    /** Longitude (x) and latitude (y) in degrees of a place on the grid; empty on a plane without a place on the globe. */
    Optional<Coordinate> lonLat(Coordinate grid);

    /** Length on the grid over length on the ellipsoid, at a place. */
    double scaleAt(Coordinate grid);

    /** Direction of true north at a place, clockwise from the grid's north (degrees). */
    double convergenceDegrees(Coordinate grid);

    /** Distance and true bearing between two places. */
    Course course(Coordinate from, Coordinate to);

    /** Area of polygons (ha), on the ellipsoid where the grid is on the globe. */
    double areaHa(Geometry polygons);

    /** How areas come about, for outputs. */
    String areaMethod();
}
