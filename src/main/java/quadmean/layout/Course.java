package quadmean.layout;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.locationtech.jts.geom.Coordinate;

/**
 * How to get from one place to another.
 *
 * @param distanceMetres horizontal distance (m)
 * @param bearingDegrees direction at the start, clockwise from true north, or from the plane's north where it has no place
 *     on the globe (degrees, 0 up to 360)
 */
public record Course(double distanceMetres, double bearingDegrees) {

    /** The geodesic on the ellipsoid WGS 84 between two places, longitude first (Karney 2013, by GeographicLib). */
    static Course onEllipsoid(Coordinate from, Coordinate to) {
        GeodesicData line = Geodesic.WGS84.Inverse(from.y, from.x, to.y, to.x);
        return new Course(line.s12, turn(line.azi1));
    }

    /** The straight line on a plane. */
    static Course onPlane(Coordinate from, Coordinate to) {
        return new Course(from.distance(to), turn(Math.toDegrees(Math.atan2(to.x - from.x, to.y - from.y))));
    }

    /** An angle as a bearing, 0 up to 360. */
    private static double turn(double degrees) {
        double turned = degrees < 0 ? degrees + 360 : degrees;
        return turned >= 360 ? 0 : turned + 0.0; // no negative zero
    }
}
