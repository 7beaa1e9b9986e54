package quadmean.units;

/** What an estimate refers to. */
public enum Basis {
    /** A mean per hectare or acre. */
    PER_AREA("per_area"),
    /** The whole area of the stratum or stand. */
    TOTAL("total"),
    /** A ratio of two estimates, such as the quadratic mean diameter. */
    RATIO("ratio");

    private final String id;

    Basis(String id) {
        this.id = id;
    }

    /** The name used in JSON and CSV. */
    public String id() {
        return id;
    }
}
