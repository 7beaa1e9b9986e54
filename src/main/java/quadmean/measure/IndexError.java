package quadmean.measure;

import quadmean.units.AngleScale;

/**
 * A constant error of a clinometer: every angle is read too high by as much.
 *
 * @param radians the error as an angle, positive where it reads too high; under a tenth of a right angle
 */
public record IndexError(double radians) {
    /** No error. */
    public static final IndexError NONE = new IndexError(0);

    private static final double LARGEST = Math.PI / 20;

    /** Refuses what is no error of an instrument but a broken one. */
    public IndexError {
        if (!(Math.abs(radians) <= LARGEST)) {
            throw new IllegalArgumentException("an index error lies within 9 degrees, got " + Math.toDegrees(radians));
        }
    }

    /** An error in units of a scale, as found near the horizontal. */
    public static IndexError of(AngleScale scale, double units) {
        return new IndexError(Math.atan(scale.tangent(units)));
    }

    /**
     * A reading without the error: the angle less the error, on the same scale.
     *
     * @throws IllegalArgumentException as {@link AngleScale#tangent}, or if the corrected angle is 90° or more
     */
    public double corrected(AngleScale scale, double reading) {
        if (radians == 0) {
            return reading;
        }
        double angle = Math.atan(scale.tangent(reading)) - radians;
        if (!(Math.abs(angle) < Math.PI / 2)) {
            throw new IllegalArgumentException(
                    "the reading " + reading + " less the index error is 90 degrees or more");
        }
        return scale.reading(Math.tan(angle));
    }
}
