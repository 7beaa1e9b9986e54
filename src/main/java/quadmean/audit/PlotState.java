package quadmean.audit;

/**
 * A plot of the plan.
 *
 * @param plot plot number
 * @param stratum code of its stratum
 * @param subset subset of the plan, empty if it has none
 * @param crew its crew, empty if the design names none
 * @param state how far it is
 * @param value value of the target attribute per hectare, in its metric unit; NaN if it is not run or has no value of its own
 */
public record PlotState(String plot, String stratum, String subset, String crew, State state, double value) {

    /** How far a plot is. */
    public enum State {
        DONE("done"),
        MISSING("missing"),
        NOT_REACHED("not_reached");

        private final String id;

        State(String id) {
            this.id = id;
        }

        /** The name used in JSON and CSV. */
        public String id() {
            return id;
        }
    }
}
