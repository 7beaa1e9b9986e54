package quadmean.estimate;

import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * A number that describes a stand, with its error, in metric units. What cannot be computed is NaN, and {@code reason} says why.
 *
 * @param stratum stratum code; {@code *} for all strata
 * @param statistic which number
 * @param n plots
 * @param df degrees of freedom
 * @param value the estimate
 * @param se its standard error, by linearisation
 * @param lower lower confidence limit, by the rule of the design if it is a formula, else by Student's t
 * @param upper upper confidence limit
 * @param samplingErrorPercent half width of the confidence interval, in percent of the estimate
 * @param rule how it is made, in words
 * @param reason why something is missing; empty if nothing is
 */
public record StandStatistic(
        String stratum,
        Statistic statistic,
        int n,
        double df,
        double value,
        double se,
        double lower,
        double upper,
        double samplingErrorPercent,
        String rule,
        String reason) {

    /** A number of it converted from metric units to a unit system. */
    public double in(UnitSystem system, double metric) {
        Unit from = statistic.unit(UnitSystem.METRIC);
        return from.convert(metric, statistic.unit(system));
    }
}
