package quadmean.design;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import quadmean.model.FinitePopulation;
import quadmean.units.Attribute;

/**
 * How to plan the number of plots.
 *
 * @param cvPercent coefficient of variation between plots (percent), if the design gives one for the whole stand
 * @param range lowest and highest plot expected, if the design gives them instead
 * @param pilot whether the tally files are a pilot from which to take the variation
 * @param pilotPlots plots behind the variation that the design states; empty for one taken as known
 * @param previous estimates of a previous cruise from which to take the variation; null for none
 * @param finitePopulation whether to correct for the size of the tract
 * @param sharing how plots are shared among strata where they are laid out
 * @param targets targets beside that of the cruise
 * @param costs what plots cost
 * @param samples ways of sampling to compare with single plots
 * @param kinds the kinds of plot to compare, if the design asks for that
 */
public record PlanSettings(
        OptionalDouble cvPercent,
        Optional<RangeRule> range,
        Pilot pilot,
        OptionalInt pilotPlots,
        @Nullable Path previous,
        FinitePopulation finitePopulation,
        Sharing sharing,
        List<TargetEntry> targets,
        PlanCosts costs,
        PlanSamples samples,
        Optional<KindsSettings> kinds) {
    public PlanSettings {
        targets = List.copyOf(targets);
    }

    /** Settings that say nothing but where the variation comes from. */
    public static PlanSettings of(OptionalDouble cvPercent, Pilot pilot, FinitePopulation finitePopulation) {
        return new PlanSettings(
                cvPercent,
                Optional.empty(),
                pilot,
                OptionalInt.empty(),
                null,
                finitePopulation,
                Sharing.PROPORTIONAL,
                List.of(),
                PlanCosts.NONE,
                PlanSamples.NONE,
                Optional.empty());
    }

    /** Where the variation comes from. */
    public enum Pilot {
        /** From {@code cv} or {@code range}, or {@code expected_cv} of the strata. */
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

    /** How plots are shared among strata. */
    public enum Sharing {
        PROPORTIONAL("proportional"),
        NEYMAN("neyman"),
        OPTIMUM("optimum");

        private final String id;

        Sharing(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }

    /**
     * The plots expected between two extremes.
     *
     * @param low value of the target attribute on the poorest plot, 0 or more, in any unit
     * @param high value on the richest, above it
     * @param mean mean expected
     * @param plots plots that the range was seen on; empty for a guess
     */
    public record RangeRule(double low, double high, double mean, OptionalInt plots) {}

    /**
     * A further target.
     *
     * @param attribute what it applies to
     * @param errorPercent allowed sampling error (percent)
     * @param confidence confidence level, in (0, 1)
     * @param cvPercent coefficient of variation (percent), for a stand without strata
     * @param means means expected by stratum code, in any unit that all strata share
     * @param cvs coefficients of variation by stratum code (percent)
     */
    public record TargetEntry(
            Attribute attribute,
            double errorPercent,
            double confidence,
            OptionalDouble cvPercent,
            Map<String, Double> means,
            Map<String, Double> cvs) {
        public TargetEntry {
            means = Map.copyOf(means);
            cvs = Map.copyOf(cvs);
        }
    }
}
