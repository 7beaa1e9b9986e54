package quadmean.design;

/**
 * Errors of what heights are read from; all are common practice without a source where the design says nothing.
 *
 * @param angleSdDegrees standard deviation of one clinometer reading (degrees)
 * @param distanceSdM standard deviation of a distance (m)
 * @param slopeSdDegrees standard deviation of a ground slope (degrees)
 * @param eyeHeightM height of the eye above the ground (m)
 */
public record ReadingSettings(double angleSdDegrees, double distanceSdM, double slopeSdDegrees, double eyeHeightM) {
    /** 0.25 degrees, 0.10 m, 0.5 degrees, 1.5 m. */
    public static final ReadingSettings COMMON_PRACTICE = new ReadingSettings(0.25, 0.10, 0.5, 1.5);
}
