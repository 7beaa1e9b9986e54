package quadmean.layout;

import java.util.function.UnaryOperator;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.PolygonArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import quadmean.units.Unit;

/** Areas of polygons on the ellipsoid WGS 84 whose sides are geodesics (Karney 2013, by GeographicLib). */
final class EllipsoidArea {
    private EllipsoidArea() {}

    /**
     * Area of all polygons of a geometry (ha), less their holes.
     *
     * @param lonLat gives longitude and latitude of a corner
     */
    static double hectares(Geometry geometry, UnaryOperator<Coordinate> lonLat) {
        double squareMetres = 0;
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon) {
                squareMetres += ring(polygon.getExteriorRing(), lonLat);
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    squareMetres -= ring(polygon.getInteriorRingN(hole), lonLat);
                }
            }
        }
        return Unit.SQUARE_METRE_OF_GROUND.convert(squareMetres, Unit.HECTARE);
    }

    private static double ring(LinearRing ring, UnaryOperator<Coordinate> lonLat) {
        PolygonArea area = new PolygonArea(Geodesic.WGS84, false);
        Coordinate[] corners = ring.getCoordinates();
        for (int i = 0; i < corners.length - 1; i++) { // the last is the first again
            Coordinate at = lonLat.apply(corners[i]);
            area.AddPoint(at.y, at.x);
        }
        return Math.abs(area.Compute().area);
    }
}
