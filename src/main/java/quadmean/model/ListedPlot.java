package quadmean.model;

/**
 * A plot of the plan, whether anybody went there or not.
 *
 * @param id plot number as written
 * @param stratum code of its stratum
 * @param facts what the list says of it
 * @param subset the subset of the plan that it belongs to, each of them a sample of the whole tract; empty if none is said
 */
public record ListedPlot(String id, String stratum, PlotFacts facts, String subset) {
    /** A plot of no subset. */
    public ListedPlot(String id, String stratum, PlotFacts facts) {
        this(id, stratum, facts, "");
    }

    /** Whether nobody was to go there. */
    public boolean isFirstPhaseOnly() {
        return facts.phase() == PlotFacts.Phase.FIRST_ONLY;
    }
}
