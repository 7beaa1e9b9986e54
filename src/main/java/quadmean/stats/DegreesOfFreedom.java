package quadmean.stats;

/** How degrees of freedom are counted when strata are combined. */
public enum DegreesOfFreedom {
    /** Number of units minus number of strata. */
    UNITS_MINUS_STRATA,
    /** Satterthwaite 1946: fewer where one stratum holds most of the variance; not whole. */
    SATTERTHWAITE
}
