package quadmean.estimate;

import java.util.List;
import java.util.OptionalInt;
import quadmean.units.Attribute;

/**
 * Whether an attribute meets the target error, and how many plots would.
 *
 * @param attribute the attribute
 * @param achievedPercent sampling error of the stand's estimate (percent); NaN if unknown
 * @param plots plots run
 * @param needed smallest number of plots expected to reach the target with the variation seen: where the target is missed, those run
 *     included; where it is met, how many would have done. Empty if unknown
 * @param verdict whether the target is met
 * @param shares how plots are shared among strata, by area first; none if unknown
 * @param remark what a reader should know of the number, or why it is unknown: a sentence without a full stop, or empty
 */
public record PlotsNeeded(
        Attribute attribute,
        double achievedPercent,
        int plots,
        OptionalInt needed,
        Verdict verdict,
        List<PlotShares> shares,
        String remark) {
    public PlotsNeeded {
        shares = List.copyOf(shares);
    }

    /** The numbers for all strata together. */
    public PlotsNeeded(Attribute attribute, double achievedPercent, int plots, OptionalInt needed, Verdict verdict) {
        this(attribute, achievedPercent, plots, needed, verdict, List.of(), "");
    }

    /** Target and result compared. */
    public enum Verdict {
        MET,
        MISSED,
        /** There is no error to compare: too few plots, or nothing to estimate. */
        UNKNOWN;

        /**
         * The verdict on a sampling error.
         *
         * @param achievedPercent sampling error (percent); NaN if unknown
         * @param targetPercent allowed sampling error (percent)
         */
        static Verdict of(double achievedPercent, double targetPercent) {
            if (Double.isNaN(achievedPercent)) {
                return UNKNOWN;
            }
            return achievedPercent <= targetPercent ? MET : MISSED;
        }
    }

    /** Plots still to run; empty if unknown. */
    public OptionalInt more() {
        return needed.isPresent() ? OptionalInt.of(Math.max(0, needed.getAsInt() - plots)) : OptionalInt.empty();
    }
}
