package quadmean.estimate;

import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * One number of the report with its error, in metric units. What cannot be computed is NaN, and {@code reason} says why.
 *
 * @param stratum stratum code; {@code *} for all strata
 * @param species species code; {@code *} for all species
 * @param part which logs; all of them, or whole trees, unless the row is of one product or one place in the stem
 * @param attribute what is estimated
 * @param basis per unit area, total, or ratio
 * @param n plots
 * @param df degrees of freedom
 * @param mean the estimate
 * @param se its standard error
 * @param cvPercent standard deviation between plots, in percent of the mean
 * @param lower lower confidence limit
 * @param upper upper confidence limit
 * @param samplingErrorPercent half width of the confidence interval, in percent of the estimate
 * @param reason why something is missing; empty if nothing is
 */
public record EstimateRow(
        String stratum,
        String species,
        Part part,
        Attribute attribute,
        Basis basis,
        int n,
        double df,
        double mean,
        double se,
        double cvPercent,
        double lower,
        double upper,
        double samplingErrorPercent,
        String reason) {
    /** Code for all strata or all species. */
    public static final String ALL = "*";

    /**
     * The row of an estimate.
     *
     * @param confidence confidence level of its limits, in (0, 1)
     */
    static EstimateRow of(
            String stratum,
            String species,
            Part part,
            Attribute attribute,
            Basis basis,
            MeanEstimate e,
            double confidence,
            String reason) {
        Interval limits = e.interval(confidence);
        return new EstimateRow(
                stratum,
                species,
                part,
                attribute,
                basis,
                e.n(),
                e.hasError() ? e.df() : Double.NaN,
                e.mean(),
                e.se(),
                e.cvPercent(),
                limits.lower(),
                limits.upper(),
                e.samplingErrorPercent(confidence),
                reason);
    }

    /** The unit of the estimate in a unit system. */
    public Unit unit(UnitSystem system) {
        return attribute.unit(basis, system);
    }

    /** A number of this row converted from metric units to a unit system. */
    public double in(UnitSystem system, double metric) {
        return unit(UnitSystem.METRIC).convert(metric, unit(system));
    }
}
