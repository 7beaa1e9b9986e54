package quadmean.layout;

import java.util.Locale;
import java.util.Optional;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** A zone of the universal transverse Mercator grid on WGS 84, projected by proj4j. */
public final class UtmGrid implements MapGrid {
    /** Half the length over which scale and convergence are taken (m): long against rounding, short against their change. */
    private static final double REACH = 100;

    private final int zone;
    private final boolean north;
    private final Projection projection;

    private UtmGrid(int zone, boolean north) {
        this.zone = zone;
        this.north = north;
        this.projection =
                Projection.of("+proj=utm +zone=" + zone + (north ? "" : " +south") + " +datum=WGS84 +units=m");
    }

    /**
     * The grid of a zone.
     *
     * @param zone 1 to 60
     * @param north whether on the northern half
     */
    public static UtmGrid of(int zone, boolean north) {
        if (zone < 1 || zone > 60) {
            throw new IllegalArgumentException("UTM zones go from 1 to 60, got " + zone);
        }
        return new UtmGrid(zone, north);
    }

    /** The zone in which a place lies, by the plain 6-degree rule (no widened zones around Norway). */
    public static UtmGrid around(Coordinate lonLat) {
        int zone = (int) Math.floor((lonLat.x + 180) / 6) + 1;
        return of(Math.min(zone, 60), lonLat.y >= 0);
    }

    /** Number of the zone, 1 to 60. */
    public int zone() {
        return zone;
    }

    /** Whether it is on the northern half. */
    public boolean isNorth() {
        return north;
    }

    @Override
    public String name() {
        return String.format(Locale.ROOT, "UTM zone %d %s (WGS 84)", zone, north ? "north" : "south");
    }

    /** The place on the grid of a longitude (x) and latitude (y) in degrees. */
    public Coordinate toGrid(Coordinate lonLat) {
        return projection.forward(lonLat);
    }

    @Override
    public Optional<Coordinate> lonLat(Coordinate grid) {
        return Optional.of(projection.inverse(grid));
    }

    @Override
    public double scaleAt(Coordinate grid) {
        Coordinate[] ends = northSouth(grid);
        return ends[0].distance(ends[1]) / (2 * REACH);
    }

    @Override
    public double convergenceDegrees(Coordinate grid) {
        Coordinate[] ends = northSouth(grid);
        return Math.toDegrees(Math.atan2(ends[1].x - ends[0].x, ends[1].y - ends[0].y));
    }

    /** The ends on the grid of a piece of meridian with the place in its middle. */
    private Coordinate[] northSouth(Coordinate grid) {
        Coordinate at = projection.inverse(grid);
        GeodesicData south = Geodesic.WGS84.Direct(at.y, at.x, 180, REACH);
        GeodesicData northward = Geodesic.WGS84.Direct(at.y, at.x, 0, REACH);
        return new Coordinate[] {
            toGrid(new Coordinate(south.lon2, south.lat2)), toGrid(new Coordinate(northward.lon2, northward.lat2))
        };
    }

    @Override
    public Course course(Coordinate from, Coordinate to) {
        return Course.onEllipsoid(projection.inverse(from), projection.inverse(to));
    }

    @Override
    public double areaHa(Geometry polygons) {
        return EllipsoidArea.hectares(polygons, projection::inverse);
    }

    @Override
    public String areaMethod() {
        return "area on the ellipsoid WGS 84 between geodesics (Karney 2013, by GeographicLib), at sea level";
    }
}
