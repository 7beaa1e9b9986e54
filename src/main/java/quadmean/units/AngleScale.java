package quadmean.units;

/** The scales printed in a clinometer, each turned into the tangent of the angle above the horizontal and back. */
public enum AngleScale {
    /** Rise per 100 of horizontal distance. */
    PERCENT("percent", 100),
    /** Topographic scale: rise in feet per 66 ft (one chain) of horizontal distance. */
    TOPOGRAPHIC("topo", 66),
    /** Degrees of arc, inside (-90, 90). */
    DEGREES("deg", Double.NaN),
    /** Made for 15 m: reads metres of height at that horizontal distance. */
    METRES_AT_15("m15", 15),
    /** Made for 20 m: reads metres of height at that horizontal distance. */
    METRES_AT_20("m20", 20);

    private final String id;
    private final double base;

    AngleScale(String id, double base) {
        this.id = id;
        this.base = base;
    }

    /** The name used in design files and options. */
    public String id() {
        return id;
    }

    /**
     * Tangent of the angle that a reading stands for; positive above the eye.
     *
     * @param reading the reading with its sign, in units of this scale
     * @throws IllegalArgumentException if the reading is not finite, or is 90° or more from the horizontal
     */
    public double tangent(double reading) {
        finite(reading, "a reading");
        if (this != DEGREES) {
            return reading / base;
        }
        if (!(Math.abs(reading) < 90)) {
            throw new IllegalArgumentException("a reading in degrees must lie between -90 and 90, got " + reading);
        }
        return Math.tan(Math.toRadians(reading));
    }

    /**
     * The reading that stands for a tangent: the inverse of {@link #tangent}.
     *
     * @param tangent tangent of the angle above the horizontal, finite
     * @return the reading with its sign, in units of this scale
     * @throws IllegalArgumentException if the tangent is not finite
     */
    public double reading(double tangent) {
        finite(tangent, "a tangent");
        return this == DEGREES ? Math.toDegrees(Math.atan(tangent)) : tangent * base;
    }

    /**
     * How much the tangent changes for one unit of this scale, at a reading: the same all along the scales that divide
     * the vertical evenly, growing with the square of the secant in degrees.
     *
     * @param reading the reading with its sign, in units of this scale
     * @return change of the tangent per unit of the scale, above 0
     * @throws IllegalArgumentException as {@link #tangent}
     */
    public double tangentPerUnit(double reading) {
        double tangent = tangent(reading);
        return this == DEGREES ? Math.toRadians(1) * (1 + tangent * tangent) : 1 / base;
    }

    private static void finite(double value, String name) {
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be a finite number, got " + value);
        }
    }
}
