package quadmean.model;

/**
 * A plot of the plan, whether anybody went there or not.
 *
 * @param id plot number as written
 * @param stratum code of its stratum
 * @param facts what the list says of it
 */
public record ListedPlot(String id, String stratum, PlotFacts facts) {
    /** Whether nobody was to go there. */
    public boolean isFirstPhaseOnly() {
        return facts.phase() == PlotFacts.Phase.FIRST_ONLY;
    }
}
