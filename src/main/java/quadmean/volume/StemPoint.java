package quadmean.volume;

/**
 * A diameter measured on a stem.
 *
 * @param heightM height above ground (m)
 * @param diameterCm diameter (cm)
 * @param barkCm thickness of the bark on one side (cm); NaN if it was not measured
 */
public record StemPoint(double heightM, double diameterCm, double barkCm) {
    /** A diameter without a measured thickness of bark. */
    public static StemPoint of(double heightM, double diameterCm) {
        return new StemPoint(heightM, diameterCm, Double.NaN);
    }
}
