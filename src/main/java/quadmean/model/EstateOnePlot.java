package quadmean.model;

/** What becomes of stands with a single plot, which show no variation, in the error of an estate. */
public enum EstateOnePlot {
    /** Their plot is taken to vary as plots do within the other stands of the stratum. Common practice, no source. */
    POOL("pool"),
    /** No standard error for what they are part of, and the output says so. */
    NO_ERROR("no_error");

    private final String id;

    EstateOnePlot(String id) {
        this.id = id;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }
}
