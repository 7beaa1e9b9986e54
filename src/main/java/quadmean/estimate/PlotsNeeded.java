package quadmean.estimate;

import java.util.OptionalInt;
import quadmean.units.Attribute;

/**
 * Whether an attribute meets the target error, and how many plots would.
 *
 * @param attribute the attribute
 * @param achievedPercent sampling error of the stand's estimate (percent); NaN if unknown
 * @param plots plots run
 * @param needed smallest number of plots expected to reach the target with the variation seen; empty if unknown
 * @param verdict whether the target is met
 */
public record PlotsNeeded(Attribute attribute, double achievedPercent, int plots, OptionalInt needed, Verdict verdict) {
    /** Target and result compared. */
    public enum Verdict {
        MET,
        MISSED,
        /** There is no error to compare: too few plots, or nothing to estimate. */
        UNKNOWN
    }

    /** Plots still to run; empty if unknown. */
    public OptionalInt more() {
        return needed.isPresent() ? OptionalInt.of(Math.max(0, needed.getAsInt() - plots)) : OptionalInt.empty();
    }
}
