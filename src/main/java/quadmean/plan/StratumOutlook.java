package quadmean.plan;

/**
 * What is expected of a stratum before the cruise.
 *
 * @param code stratum code
 * @param areaHa area (ha)
 * @param mean expected mean of the target attribute, in any unit that all strata share, above 0
 * @param cvPercent expected coefficient of variation between plots (percent), above 0
 */
public record StratumOutlook(String code, double areaHa, double mean, double cvPercent) {}
