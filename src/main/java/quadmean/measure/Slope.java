package quadmean.measure;

import quadmean.units.AngleScale;

/**
 * A slope, upward positive.
 *
 * @param ratio rise over horizontal run, the tangent of its angle
 */
public record Slope(double ratio) {
    /** Level ground. */
    public static final Slope LEVEL = new Slope(0);

    /** @throws IllegalArgumentException if the ratio is not finite */
    public Slope {
        Checks.finite(ratio, "a slope");
    }

    /**
     * The slope that a clinometer reads.
     *
     * @throws IllegalArgumentException if the reading lies outside its scale
     */
    public static Slope of(AngleScale scale, double reading) {
        return new Slope(scale.tangent(reading));
    }

    /** The slope on another scale, in its units. */
    public double on(AngleScale scale) {
        return scale.reading(ratio);
    }

    /** Its angle (radians), inside (-π/2, π/2). */
    public double angle() {
        return Math.atan(ratio);
    }

    /** Length along the slope over its horizontal length: sec θ = √(1 + s²), at least 1. */
    public double secant() {
        return Math.hypot(1, ratio);
    }

    /**
     * Horizontal distance of a length taped along the slope: D = S·cos θ.
     *
     * @param slopeDistance length along the slope, any unit of length
     * @return horizontal distance, in the same unit
     */
    public double horizontal(double slopeDistance) {
        return slopeDistance / secant();
    }

    /**
     * Length to tape along the slope to cover a horizontal distance: S = D·sec θ.
     *
     * @param horizontalDistance horizontal distance, any unit of length
     * @return length along the slope, in the same unit
     */
    public double along(double horizontalDistance) {
        return horizontalDistance * secant();
    }

    /** What a height comes out too high, as a share, when a slope distance is taken for a horizontal one: sec θ - 1. */
    public double errorOfIgnoring() {
        return secant() - 1;
    }
}
