package quadmean.layout;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateReferenceSystem;
import org.locationtech.proj4j.CoordinateTransform;
import org.locationtech.proj4j.CoordinateTransformFactory;
import org.locationtech.proj4j.Proj4jException;
import org.locationtech.proj4j.ProjCoordinate;

/** Longitude and latitude on WGS 84 into a projected map system and back, by proj4j. */
final class Projection {
    private static final String LON_LAT = "+proj=longlat +datum=WGS84 +no_defs";

    private final CoordinateTransform forward;
    private final CoordinateTransform inverse;

    private Projection(CoordinateTransform forward, CoordinateTransform inverse) {
        this.forward = forward;
        this.inverse = inverse;
    }

    /**
     * The projection that parameters tell.
     *
     * @throws IllegalArgumentException if they tell none, with the reason
     */
    static Projection of(String parameters) {
        try {
            CRSFactory systems = new CRSFactory();
            CoordinateReferenceSystem globe = systems.createFromParameters("longitude and latitude", LON_LAT);
            CoordinateReferenceSystem map = systems.createFromParameters("map", parameters);
            CoordinateTransformFactory transforms = new CoordinateTransformFactory();
            return new Projection(transforms.createTransform(globe, map), transforms.createTransform(map, globe));
        } catch (Proj4jException | IllegalArgumentException | IllegalStateException e) {
            throw new IllegalArgumentException(String.valueOf(e.getMessage()), e);
        }
    }

    /** The place on the map of a longitude (x) and latitude (y) in degrees. */
    Coordinate forward(Coordinate lonLat) {
        return moved(forward, lonLat);
    }

    /** Longitude (x) and latitude (y) in degrees of a place on the map. */
    Coordinate inverse(Coordinate map) {
        return moved(inverse, map);
    }

    private static Coordinate moved(CoordinateTransform transform, Coordinate from) {
        ProjCoordinate to = new ProjCoordinate();
        try {
            transform.transform(new ProjCoordinate(from.x, from.y), to);
        } catch (Proj4jException e) { // far outside the domain of the projection
            return new Coordinate(Double.NaN, Double.NaN);
        }
        return new Coordinate(to.x, to.y);
    }
}
