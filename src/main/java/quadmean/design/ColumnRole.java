package quadmean.design;

/** What a tally column means. */
public enum ColumnRole {
    /** Stand of an estate. */
    STAND("stand", Measure.TEXT),
    PLOT("plot", Measure.TEXT),
    STRATUM("stratum", Measure.TEXT),
    TREE("tree", Measure.TEXT),
    SPECIES("species", Measure.TEXT),
    DBH("dbh", Measure.LENGTH),
    /** Girth at breast height, in place of the dbh. */
    GIRTH("girth", Measure.LENGTH),
    HEIGHT("height", Measure.LENGTH),
    /** Clinometer reading to the tip. */
    TOP("top", Measure.ANGLE),
    /** Clinometer reading to the base, negative below the eye. */
    BASE("base", Measure.ANGLE),
    /** Horizontal distance from eye to stem. */
    DISTANCE("distance", Measure.LENGTH),
    /** Distance taped along the ground, which has the slope of {@link #GROUND_SLOPE}. */
    SLOPE_DISTANCE("slope_distance", Measure.LENGTH),
    GROUND_SLOPE("ground_slope", Measure.ANGLE),
    /** Straight distance from the eye to the base of the stem, taped or by laser. */
    BASE_DISTANCE("base_distance", Measure.LENGTH),
    /** Straight distance from the eye to the tip, by laser. */
    TOP_DISTANCE("top_distance", Measure.LENGTH),
    /** Second reading of the same tree, or a reading from the other side. */
    TOP_2("top_2", Measure.ANGLE),
    BASE_2("base_2", Measure.ANGLE),
    /** Horizontal distance of the second reading; empty where it is the first one's. */
    DISTANCE_2("distance_2", Measure.LENGTH),
    /** Reading to the merchantable top. */
    MERCHANTABLE_TOP("merchantable_top", Measure.ANGLE),
    MERCHANTABLE_HEIGHT("merchantable_height", Measure.LENGTH),
    STATUS("status", Measure.TEXT),
    /** Whether the top is broken. */
    BROKEN("broken", Measure.TEXT),
    /** Horizontal distance from the plot centre or point to the tree. */
    POINT_DISTANCE("point_distance", Measure.LENGTH),
    /** Ring of a nested plot on which the tree was tallied. */
    RING("ring", Measure.TEXT),
    /** Number of trees that a row stands for. */
    COUNT("count", Measure.NUMBER),
    /** Number of 16-ft logs. */
    LOGS("logs", Measure.NUMBER),
    /** Grade of the tree, as products name it. */
    GRADE("grade", Measure.TEXT),
    /** Share of the wood that is no good, in percent. */
    DEFECT("defect", Measure.NUMBER),
    /** Number of times that a tree at the boundary counts. */
    EDGE("edge", Measure.NUMBER),
    /** What 3P sampling foretold of the tree. */
    PREDICTION("prediction", Measure.NUMBER);

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
        /** A number without a unit. */
        NUMBER,
        LENGTH,
        ANGLE;

        /** Whether a column of this kind is in some unit. */
        public boolean hasUnit() {
            return this == LENGTH || this == ANGLE;
        }
    }
}
