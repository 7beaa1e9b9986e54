package quadmean.estimate;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import quadmean.model.EstimatorRules;
import quadmean.model.ListedPlot;
import quadmean.model.Stratum;
import quadmean.stats.StratumSample;

/**
 * The plots of one stratum with what the design knows of it.
 *
 * @param stratum the stratum
 * @param plots its plots
 * @param settings how to estimate
 */
record DrawnPlots(Stratum stratum, List<SampledPlot> plots, EstimateSettings settings) {
    DrawnPlots {
        plots = List.copyOf(plots);
    }

    /** The same plots in the order of their numbers, so that the order in which they came in does not show in resamples. */
    DrawnPlots inOrder() {
        return new DrawnPlots(
                stratum,
                plots.stream().sorted(Comparator.comparing(SampledPlot::id)).toList(),
                settings);
    }

    EstimatorRules rules() {
        return settings.rules().estimation();
    }

    /** A value of each plot. */
    double[] values(ToDoubleFunction<SampledPlot> value) {
        return plots.stream().mapToDouble(value).toArray();
    }

    /** The auxiliary of each plot. */
    double[] auxiliary() {
        return values(p -> p.facts().auxiliary());
    }

    /** Values as a simple random sample of the plots that fit into the stratum. */
    StratumSample sample(double[] values) {
        return new StratumSample(1, plotsInStratum(), values);
    }

    /** Plots that fit into the stratum; infinity without correction. */
    double plotsInStratum() {
        return settings.finitePopulation().plotsIn(settings.plot(), stratum.areaHa());
    }

    /** All plots of the plan that lie in the stratum: the first phase of double sampling. */
    List<ListedPlot> firstPhase() {
        return settings.listed().stream()
                .filter(p -> p.stratum().equals(stratum.code()))
                .toList();
    }

    /** Those of its plots that pass a filter. */
    DrawnPlots only(Predicate<SampledPlot> filter) {
        return new DrawnPlots(stratum, plots.stream().filter(filter).toList(), settings);
    }
}
