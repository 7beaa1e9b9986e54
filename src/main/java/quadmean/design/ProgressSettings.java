package quadmean.design;

import java.util.List;
import quadmean.model.StoppingRule;

/**
 * The {@code [progress]} table: how to judge a cruise under way.
 *
 * @param rule when it may stop
 * @param minimumPlots plots before it may, the first stage where there are two
 * @param assigned how plots were given to crews
 * @param subsets the subsets that the plan consists of, in the order in which they are walked; none if the design does not say
 */
public record ProgressSettings(StoppingRule rule, int minimumPlots, Assigned assigned, List<Subset> subsets) {
    /** Two stages, the first of 20 plots: common practice, no source. */
    public static final ProgressSettings USUAL =
            new ProgressSettings(StoppingRule.TWO_STAGE, 20, Assigned.NOT_RANDOM, List.of());

    public ProgressSettings {
        subsets = List.copyOf(subsets);
    }

    /**
     * A part of the plan that is a sample of the whole tract by itself.
     *
     * @param name what to call it
     * @param plots numbers of its plots
     */
    public record Subset(String name, List<String> plots) {
        public Subset {
            plots = List.copyOf(plots);
        }
    }

    /** How plots were given to crews. */
    public enum Assigned {
        /** At random: differences between crews are those of crews. */
        RANDOM("random"),
        /** In any other way: they may be those of the ground. */
        NOT_RANDOM("not_random");

        private final String id;

        Assigned(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }
}
