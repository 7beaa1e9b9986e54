package quadmean.model;

/** How the plots were chosen. */
public enum SelectionMethod {
    SIMPLE_RANDOM("simple_random", "simple random sample"),
    /** Estimated as if random; the output says so. */
    SYSTEMATIC("systematic", "systematic sample, its error estimated as if it were random"),
    STRATIFIED("stratified", "stratified random sample"),
    /** A grid in each stratum, estimated as if random within strata; the output says so. */
    STRATIFIED_SYSTEMATIC(
            "stratified_systematic", "systematic sample within strata, its error estimated as if it were random");

    private final String id;
    private final String label;

    SelectionMethod(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The name used in sentences. */
    public String label() {
        return label;
    }

    /** Whether plots lie on a grid, so that the error is estimated as if they were random. */
    public boolean isSystematic() {
        return this == SYSTEMATIC || this == STRATIFIED_SYSTEMATIC;
    }

    /** Whether plots were allotted to strata beforehand. */
    public boolean isStratified() {
        return this == STRATIFIED || this == STRATIFIED_SYSTEMATIC;
    }
}
