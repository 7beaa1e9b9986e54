package quadmean.measure;

import quadmean.units.AngleScale;

/**
 * Standard deviation of one reading of an angle.
 *
 * @param sd standard deviation, 0 or more; radians or units of the scale, as {@code measuredIn} says
 * @param measuredIn what {@code sd} is measured in
 */
public record AngleError(double sd, MeasuredIn measuredIn) {
    /** What a reading error is measured in. */
    public enum MeasuredIn {
        /** Radians: the hand shakes by the same angle everywhere. */
        RADIANS,
        /** Units of the scale: the eye errs by the same share of a mark everywhere. */
        SCALE_UNITS
    }

    /** @throws IllegalArgumentException if the sd is negative */
    public AngleError {
        Checks.notNegative(sd, "the reading sd");
    }

    /** The same angle everywhere (radians, 0 or more). */
    public static AngleError ofAngle(double radians) {
        return new AngleError(radians, MeasuredIn.RADIANS);
    }

    /** The same part of a mark everywhere (units of the scale, 0 or more). */
    public static AngleError ofScaleUnits(double units) {
        return new AngleError(units, MeasuredIn.SCALE_UNITS);
    }

    /**
     * The error as an angle at a reading.
     *
     * @return standard deviation (radians), 0 or more
     */
    double at(AngleScale scale, double reading) {
        return measuredIn == MeasuredIn.RADIANS ? sd : sd * anglePerUnit(scale, reading);
    }

    /** Radians per unit of a scale at a reading. */
    static double anglePerUnit(AngleScale scale, double reading) {
        double tangent = scale.tangent(reading);
        return scale.tangentPerUnit(reading) / (1 + tangent * tangent);
    }
}
