package quadmean.measure;

import quadmean.units.AngleScale;

/**
 * Two-way slope check: one observer sights the other's mark at eye height and is sighted back, at equal eye heights. A
 * constant index error lifts both readings; half their difference (signs kept) is the slope, half their sum the index
 * error. With readings of opposite sign the slope is the mean of their sizes. The arithmetic is in units of the scale,
 * exact in degrees and first order in the index error on the other scales.
 *
 * @param scale scale of both readings
 * @param there reading from the first observer to the second, with its sign
 * @param back reading from the second observer to the first, with its sign
 * @param instruments whether one instrument or two were used
 */
public record TwoWaySlope(AngleScale scale, double there, double back, InstrumentUse instruments) {
    /** @throws IllegalArgumentException if a reading lies outside its scale */
    public TwoWaySlope {
        scale.tangent(there);
        scale.tangent(back);
    }

    /**
     * The slope from the first observer to the second, upward positive. With two instruments it is off by half the
     * difference of their index errors.
     */
    public Slope slope() {
        return Slope.of(scale, (there - back) / 2);
    }

    /** The index error, or with two instruments the mean of theirs (units of the scale); positive reads too high. */
    public double indexError() {
        return (there + back) / 2;
    }

    /** The index error as an angle near the horizontal (radians). */
    public double indexAngle() {
        return Math.atan(scale.tangent(indexError()));
    }

    /** Whether the index error goes beyond half a unit of the scale, the finest that is read (common practice). */
    public boolean isBeyondHalfUnit() {
        return isBeyondHalfUnit(indexError());
    }

    /** Whether an index error goes beyond half a unit of its scale, the finest that is read (common practice). */
    public static boolean isBeyondHalfUnit(double indexError) {
        return Math.abs(indexError) > CommonPractice.HALF_A_UNIT;
    }
}
