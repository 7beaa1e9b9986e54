package quadmean.design;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Plots that are not like the others.
 *
 * @param notReached plots of the plan that the crew could not reach
 * @param cut plots cut by the line of their stratum, with the share of their area that lies inside, in (0, 1)
 * @param plotList CSV file with the plots of the plan (columns plot and, with strata, stratum); null if there is none
 */
public record PlotExceptions(
        Set<String> notReached,
        Map<String, Double> cut,
        @Nullable Path plotList) {
    /** No exceptions. */
    public static final PlotExceptions NONE = new PlotExceptions(Set.of(), Map.of(), null);

    public PlotExceptions {
        notReached = Set.copyOf(notReached);
        cut = Map.copyOf(cut);
    }

    /** Share of a plot that lies inside its stratum. */
    public double inside(String plot) {
        return cut.getOrDefault(plot, 1.0);
    }
}
