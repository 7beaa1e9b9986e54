package quadmean.plan;

/**
 * What is expected of a stratum before the cruise.
 *
 * @param code stratum code
 * @param areaHa area (ha)
 * @param mean expected mean of the target attribute, in any unit that all strata share, above 0
 * @param cvPercent expected coefficient of variation between plots (percent), above 0
 * @param plots plots behind the expectation; 0 for one that is stated and taken as known
 */
public record StratumOutlook(String code, double areaHa, double mean, double cvPercent, int plots) {
    /** An expectation that is stated. */
    public StratumOutlook(String code, double areaHa, double mean, double cvPercent) {
        this(code, areaHa, mean, cvPercent, 0);
    }

    /** The same if the spread were larger. */
    StratumOutlook spread(double factor) {
        return new StratumOutlook(code, areaHa, mean, factor * cvPercent, plots);
    }
}
