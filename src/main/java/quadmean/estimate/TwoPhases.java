package quadmean.estimate;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import quadmean.model.FinitePopulation;
import quadmean.model.ListedPlot;
import quadmean.stats.Reweighting;

/**
 * Double sampling as a bootstrap sees it: plots of the first phase are drawn, and bring along whether they were visited. To the first
 * order resamples vary as s²_d/n2 + (s²_y - s²_d)/n1, s²_d the spread about what the auxiliary foretells (by algebra).
 */
final class TwoPhases {
    private static final String NOT_EXACT =
            "Plots of the plan are resampled with what was measured on them, so that the number of plots visited varies from"
                    + " resample to resample as it did not in the field; to the first order of one over their number that does not matter.";
    private static final String UNCORRECTED =
            "Correction for a finite population is left out of these limits, which makes them a little too wide.";

    private TwoPhases() {}

    /**
     * Resamples the first phase.
     *
     * @param calibration from the plain weights of visited plots, and the plots of the plan in order, to those of the estimate
     */
    static Resampling resampling(DrawnPlots drawn, BiFunction<Reweighting, List<ListedPlot>, Reweighting> calibration) {
        List<ListedPlot> first = drawn.firstPhase().stream()
                .sorted(Comparator.comparing(ListedPlot::id))
                .toList();
        Map<String, Integer> places = new TreeMap<>();
        first.forEach(p -> places.put(p.id(), places.size()));
        List<SampledPlot> visited = drawn.inOrder().plots();
        Reweighting plain = Reweighting.expanded(
                visited.stream().mapToInt(p -> places.getOrDefault(p.id(), -1)).toArray(),
                visited.stream().mapToDouble(p -> 1).toArray());
        Reweighting weights = calibration.apply(plain, first);
        double all = Double.POSITIVE_INFINITY;
        return drawn.settings().finitePopulation() == FinitePopulation.CORRECT
                ? Resampling.ofStratum(all, first.size(), visited, weights, "plots of the plan", NOT_EXACT, UNCORRECTED)
                : Resampling.ofStratum(all, first.size(), visited, weights, "plots of the plan", NOT_EXACT);
    }
}
