package quadmean.model;

import org.jspecify.annotations.Nullable;

/**
 * A plot of the plan, whether anybody went there or not.
 *
 * @param id plot number as written
 * @param stratum code of its stratum
 * @param facts what the list says of it
 * @param position where it is; null if the list does not say
 * @param subset the subset of the plan that it belongs to, each of them a sample of the whole tract; empty if none is said
 */
public record ListedPlot(
        String id,
        String stratum,
        PlotFacts facts,
        @Nullable Position position,
        String subset) {
    /** A plot of which nobody says where it is, and of no subset. */
    public ListedPlot(String id, String stratum, PlotFacts facts) {
        this(id, stratum, facts, null, "");
    }

    /** Whether nobody was to go there. */
    public boolean isFirstPhaseOnly() {
        return facts.phase() == PlotFacts.Phase.FIRST_ONLY;
    }
}
