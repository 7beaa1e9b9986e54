package quadmean.model;

/** Where the height of a tree came from. */
public enum HeightSource {
    /** Written in the tally as a height. */
    MEASURED("measured"),
    /** Worked out from clinometer readings and a distance. */
    READING("reading"),
    /** Filled from the curve of the tree's species. */
    SPECIES_CURVE("species curve"),
    /** Filled from the curve of the tree's species, moved to the level of its plot by the plot's measured heights. */
    CALIBRATED_CURVE("calibrated curve"),
    /** Filled from the curve of the species group, scaled to the species where it has heights for that. */
    GROUP_CURVE("group curve"),
    /** Filled from the curve of all species together, scaled to the species where it has heights for that. */
    POOLED_CURVE("pooled curve"),
    /** No height, and no curve to fill it from. */
    NONE("none");

    private final String id;

    HeightSource(String id) {
        this.id = id;
    }

    /** The name used in tables. */
    public String id() {
        return id;
    }
}
