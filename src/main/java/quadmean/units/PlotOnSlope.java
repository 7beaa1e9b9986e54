package quadmean.units;

/** How a fixed plot keeps its horizontal area on a slope. */
public enum PlotOnSlope {
    /** Each doubtful tree by its horizontal distance. */
    HORIZONTAL_DISTANCES("horizontal_distances", "each doubtful tree by its horizontal distance from the centre"),
    /** A circle on the slope with the radius R0·(1 + s²)^¼. */
    LARGER_RADIUS("larger_radius", "a circle on the slope with the larger radius R0·(1 + s²)^¼");

    private final String id;
    private final String label;

    PlotOnSlope(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }
}
