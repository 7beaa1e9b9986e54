package quadmean.estimate;

import java.util.List;
import java.util.function.UnaryOperator;
import quadmean.stats.ResampledStratum;
import quadmean.stats.Reweighting;

/**
 * How a bootstrap resamples a sampling design: which units it draws, and how the weights of those make the weights of plots.
 *
 * @param strata strata with their weights and numbers of units, be they plots, clusters, draws or plots of the first phase
 * @param plots plots that carry values, stratum by stratum, in an order that does not go by how they came in; a plot drawn twice
 *     stands twice
 * @param weights from the units' weights to those of the plots
 * @param unit the name of the units
 * @param notes what the resamples leave out, in sentences
 */
public record Resampling(
        List<ResampledStratum> strata, List<SampledPlot> plots, Reweighting weights, String unit, List<String> notes) {
    public Resampling {
        strata = List.copyOf(strata);
        plots = List.copyOf(plots);
        notes = List.copyOf(notes);
        if (weights.items() != plots.size()) {
            throw new IllegalArgumentException(weights.items() + " weights, but " + plots.size() + " plots");
        }
    }

    /**
     * Plots drawn at random in one stratum.
     *
     * @param plots in an order that does not go by how they came in
     * @param weights from the plain weights of these plots to those of the estimate
     */
    static Resampling ofPlots(DrawnPlots plots, UnaryOperator<Reweighting> weights, String... notes) {
        int n = plots.plots().size();
        return ofStratum(plots.plotsInStratum(), n, plots.plots(), weights.apply(Reweighting.same(n)), "plots", notes);
    }

    /** One stratum that stands alone; {@link SeparateSample} joins them. */
    static Resampling ofStratum(
            double populationUnits,
            int units,
            List<SampledPlot> plots,
            Reweighting weights,
            String unit,
            String... notes) {
        return new Resampling(
                List.of(new ResampledStratum(1, populationUnits, units)), plots, weights, unit, List.of(notes));
    }
}
