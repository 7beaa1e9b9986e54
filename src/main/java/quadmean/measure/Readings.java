package quadmean.measure;

import quadmean.units.AngleScale;

/**
 * A reading to the upper mark and one to the base, on one scale.
 *
 * <p>The upper mark is the tip for total height. Merchantable height and height to a break are the same sighting to
 * another mark: the top of the last log, or the break.
 *
 * @param scale scale of both readings
 * @param top reading to the upper mark, in units of the scale, negative below the eye
 * @param base reading to the base, in units of the scale, negative below the eye; below {@code top}
 */
public record Readings(AngleScale scale, double top, double base) {
    /** @throws IllegalArgumentException if a reading lies outside its scale, or the top is not above the base */
    public Readings {
        if (!(scale.tangent(top) > scale.tangent(base))) {
            throw new IllegalArgumentException("the top reading " + top + " must be above the base reading " + base
                    + "; readings below the eye carry a minus");
        }
    }

    /** Tangent of the angle to the upper mark, positive above the eye. */
    public double topTangent() {
        return scale.tangent(top);
    }

    /** Tangent of the angle to the base, positive above the eye. */
    public double baseTangent() {
        return scale.tangent(base);
    }

    /** Angle to the upper mark above the horizontal (radians). */
    public double topAngle() {
        return Math.atan(topTangent());
    }

    /** Angle to the base above the horizontal (radians). */
    public double baseAngle() {
        return Math.atan(baseTangent());
    }
}
