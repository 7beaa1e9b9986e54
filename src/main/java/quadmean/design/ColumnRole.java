package quadmean.design;

/** What a tally column means. */
public enum ColumnRole {
    PLOT("plot", Measure.TEXT),
    STRATUM("stratum", Measure.TEXT),
    TREE("tree", Measure.TEXT),
    SPECIES("species", Measure.TEXT),
    DBH("dbh", Measure.LENGTH),
    HEIGHT("height", Measure.LENGTH),
    /** Clinometer reading to the tip. */
    TOP("top", Measure.ANGLE),
    /** Clinometer reading to the base, negative below the eye. */
    BASE("base", Measure.ANGLE),
    /** Horizontal distance from eye to stem. */
    DISTANCE("distance", Measure.LENGTH),
    STATUS("status", Measure.TEXT),
    /** Whether the top is broken. */
    BROKEN("broken", Measure.TEXT),
    /** Horizontal distance from the plot centre or point to the tree. */
    POINT_DISTANCE("point_distance", Measure.LENGTH),
    /** Ring of a nested plot on which the tree was tallied. */
    RING("ring", Measure.TEXT);

    private final String key;
    private final Measure measure;

    ColumnRole(String key, Measure measure) {
        this.key = key;
        this.measure = measure;
    }

    /** The key under {@code [tally.columns]}. */
    public String key() {
        return key;
    }

    /** What kind of unit the column needs. */
    public Measure measure() {
        return measure;
    }

    /** Kinds of column. */
    public enum Measure {
        TEXT,
        LENGTH,
        ANGLE
    }
}
