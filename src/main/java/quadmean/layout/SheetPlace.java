package quadmean.layout;

/**
 * A place on the ground, in both ways that the sheets use.
 *
 * @param longitude degrees, WGS 84, east positive; NaN on a plane without a place on the globe
 * @param latitude degrees, WGS 84, north positive; NaN likewise
 * @param eastM metres on the plane of the map, toward east
 * @param northM metres toward north
 */
public record SheetPlace(double longitude, double latitude, double eastM, double northM) {
    /** Whether longitude and latitude are known. */
    public boolean isOnGlobe() {
        return Double.isFinite(longitude) && Double.isFinite(latitude);
    }
}
