package quadmean.model;

/** How much each tree counts in the fit of a height curve, by how the scatter about the curve grows with dbh. */
public enum HeightWeights {
    /** All trees count alike: the scatter is the same for all dbh. */
    EQUAL("equal"),
    /** Weight 1/d: the variance of the scatter grows with dbh. */
    INVERSE_DBH("inverse_dbh"),
    /** The standard deviation of the scatter grows with a power of dbh that is estimated. */
    POWER_OF_DBH("power");

    private final String id;

    HeightWeights(String id) {
        this.id = id;
    }

    /** The name used in design files and outputs. */
    public String id() {
        return id;
    }
}
