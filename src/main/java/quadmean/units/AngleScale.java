package quadmean.units;

/** The scales printed in a clinometer, each turned into the tangent of the angle above the horizontal. */
public enum AngleScale {
    /** Rise per 100 of horizontal distance. */
    PERCENT("percent"),
    /** Topographic scale: rise in feet per 66 ft (one chain) of horizontal distance. */
    TOPOGRAPHIC("topo"),
    /** Degrees of arc, inside (-90, 90). */
    DEGREES("deg");

    private static final double FEET_PER_CHAIN = 66;

    private final String id;

    AngleScale(String id) {
        this.id = id;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /**
     * Tangent of the angle that a reading stands for; positive above the eye.
     *
     * @param reading the reading with its sign, in points of this scale
     * @throws IllegalArgumentException if the reading is not finite, or is 90° or more from the horizontal
     */
    public double tangent(double reading) {
        if (!(Math.abs(reading) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a reading must be a finite number, got " + reading);
        }
        return switch (this) {
            case PERCENT -> reading / 100;
            case TOPOGRAPHIC -> reading / FEET_PER_CHAIN;
            case DEGREES -> {
                if (!(Math.abs(reading) < 90)) {
                    throw new IllegalArgumentException(
                            "a reading in degrees must lie between -90 and 90, got " + reading);
                }
                yield Math.tan(Math.toRadians(reading));
            }
        };
    }
}
