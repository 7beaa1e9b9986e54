package quadmean.model;

/**
 * A place on the globe, on WGS 84.
 *
 * @param longitude degrees, east of Greenwich positive, in [-180, 180]
 * @param latitude degrees, north of the equator positive, in [-90, 90]
 */
public record Position(double longitude, double latitude) {
    public Position {
        if (!(Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90)) {
            throw new IllegalArgumentException(
                    "no place on the globe: longitude " + longitude + ", latitude " + latitude);
        }
    }
}
