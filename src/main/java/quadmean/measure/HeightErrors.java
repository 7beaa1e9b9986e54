package quadmean.measure;

/**
 * Errors of what a height is worked out from, and the error of the height that follows: first order, independent
 * errors, dH² = Σ (∂H/∂x · sd of x)². At a horizontal distance this is
 * dH² = ((H/D)·σD)² + (D·sec²α·σα)² + (D·sec²β·σβ)².
 *
 * @param angle error of each reading
 * @param distanceSd standard deviation of each distance (m), 0 or more
 * @param slopeSd standard deviation of the ground slope (radians), 0 or more
 */
public record HeightErrors(AngleError angle, double distanceSd, double slopeSd) {
    /** @throws IllegalArgumentException if an sd is negative */
    public HeightErrors {
        Checks.notNegative(distanceSd, "the distance sd");
        Checks.notNegative(slopeSd, "the slope sd");
    }

    /** The defaults of {@link CommonPractice}: 0.25° per reading, 0.10 m, 0.5° of slope. No source. */
    public static HeightErrors commonPractice() {
        return new HeightErrors(
                AngleError.ofAngle(CommonPractice.ANGLE_SD), CommonPractice.DISTANCE_SD, CommonPractice.SLOPE_SD);
    }

    /** These errors with another reading error. */
    public HeightErrors withAngle(AngleError other) {
        return new HeightErrors(other, distanceSd, slopeSd);
    }

    /** These errors with another distance error (m, 0 or more). */
    public HeightErrors withDistanceSd(double other) {
        return new HeightErrors(angle, other, slopeSd);
    }

    /** These errors with another slope error (radians, 0 or more). */
    public HeightErrors withSlopeSd(double other) {
        return new HeightErrors(angle, distanceSd, other);
    }

    /** What each error adds to the error of a height (m), with the sign of its derivative. */
    public ErrorShares shares(Sighting sighting) {
        Sensitivity by = sighting.sensitivity();
        Readings r = sighting.readings();
        return new ErrorShares(
                by.distance() * distanceSd,
                by.topDistance() * distanceSd,
                by.topAngle() * angle.at(r.scale(), r.top()),
                by.baseAngle() * angle.at(r.scale(), r.base()),
                by.groundSlope() * slopeSd);
    }

    /** Standard deviation of a height (m). */
    public double heightSd(Sighting sighting) {
        return shares(sighting).total();
    }
}
