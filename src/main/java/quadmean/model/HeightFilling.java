package quadmean.model;

/** What a tree without a field height gets from its curve. */
public enum HeightFilling {
    /** The mean height of trees of its size: right for totals. */
    MEAN("mean"),
    /** The mean and a draw of the scatter about it, from the seed of the design: right for distributions of height. */
    DRAWN("drawn");

    private final String id;

    HeightFilling(String id) {
        this.id = id;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }
}
