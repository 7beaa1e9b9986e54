package quadmean.design;

import java.util.Optional;
import java.util.OptionalDouble;
import quadmean.model.FinitePopulation;

/**
 * How to plan the number of plots.
 *
 * @param cvPercent coefficient of variation between plots (percent), if the design gives one for the whole stand
 * @param pilot whether the tally files are a pilot from which to take the variation
 * @param finitePopulation whether to correct for the size of the tract
 * @param kinds the kinds of plot to compare, if the design asks for that
 */
public record PlanSettings(
        OptionalDouble cvPercent, Pilot pilot, FinitePopulation finitePopulation, Optional<KindsSettings> kinds) {
    /** Settings that compare no kinds of plot. */
    public PlanSettings(OptionalDouble cvPercent, Pilot pilot, FinitePopulation finitePopulation) {
        this(cvPercent, pilot, finitePopulation, Optional.empty());
    }

    /** Where the variation comes from. */
    public enum Pilot {
        /** From {@code cv}, or {@code expected_cv} of the strata. */
        NONE("none"),
        /** From the design's tally files. */
        TALLY("tally");

        private final String id;

        Pilot(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }
}
