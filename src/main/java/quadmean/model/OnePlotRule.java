package quadmean.model;

/** What becomes of a stratum with a single plot, which shows no variation. */
public enum OnePlotRule {
    /** No standard error for it nor for the stand, and the output says so. */
    NO_ERROR("no_error"),
    REFUSE("refuse"),
    /** It shares the variation of the stratum that the design lists after it, the last one that of the one before. */
    COLLAPSE("collapse");

    private final String id;

    OnePlotRule(String id) {
        this.id = id;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }
}
