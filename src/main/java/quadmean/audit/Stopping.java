package quadmean.audit;

import quadmean.stats.MeanEstimate;

/**
 * Whether a cruise may stop before its plan is done.
 *
 * @param state how far the plan is
 * @param decision what follows
 * @param first the first stage; its error is NaN before it is there
 * @param reported estimate from whole subsets with the error that the rule reports
 * @param plotsNeeded plots in all that the rule asks for; NaN if it does not say
 */
public record Stopping(State state, Decision decision, MeanEstimate first, MeanEstimate reported, double plotsNeeded) {

    /** How far the plan is. */
    public enum State {
        NO_LIST("no_list", "The design lists no plots"),
        NO_SUBSETS("no_subsets", "Part walked"),
        NOT_STARTED("not_started", "Not started"),
        PART_WALKED("part_walked", "Part walked"),
        WHOLE_SUBSETS("whole_subsets", "Whole subsets walked"),
        COMPLETE("complete", "All plots run");

        private final String id;
        private final String label;

        State(String id, String label) {
            this.id = id;
            this.label = label;
        }

        /** The name used in JSON. */
        public String id() {
            return id;
        }

        /** The name used on pages. */
        public String label() {
            return label;
        }
    }

    /** What follows. */
    public enum Decision {
        MAY_STOP("may_stop", "May stop: the rule is satisfied at the end of a whole subset"),
        GO_ON("go_on", "Go on: the rule is not satisfied yet"),
        FINISH_SUBSET("finish_subset", "Finish the subset: a partly walked route is no sample of the tract"),
        FINISH_PLAN(
                "finish_plan",
                "Finish the plan: it has no subsets, and a partly walked route is no sample of the tract"),
        DONE("done", "The plan is done"),
        CANNOT_TELL("cannot_tell", "Cannot tell: there is no error yet, or no list of plots");

        private final String id;
        private final String words;

        Decision(String id, String words) {
            this.id = id;
            this.words = words;
        }

        /** The name used in JSON. */
        public String id() {
            return id;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }
}
