package quadmean.stats;

/** How degrees of freedom are counted when strata are combined. */
public enum DegreesOfFreedom {
    /** Number of units minus number of strata. */
    UNITS_MINUS_STRATA("units_minus_strata"),
    /** Satterthwaite 1946: fewer where one stratum holds most of the variance; not whole. */
    SATTERTHWAITE("satterthwaite");

    private final String id;

    DegreesOfFreedom(String id) {
        this.id = id;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }
}
