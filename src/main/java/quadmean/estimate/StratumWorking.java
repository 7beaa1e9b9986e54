package quadmean.estimate;

import java.util.List;
import quadmean.model.PlotFacts;
import quadmean.stats.MeanEstimate;

/**
 * The plots of one stratum and the estimate from them alone.
 *
 * @param stratum stratum code
 * @param areaHa its area (ha)
 * @param weight its share of the area estimated
 * @param populationUnits plots that fit into it, for the finite population correction; infinity for none
 * @param plots plot numbers
 * @param facts what the list of plots says of each, in the same order
 * @param values values of the plots per hectare (metric), in the same order
 * @param mean the estimate from these plots
 */
public record StratumWorking(
        String stratum,
        double areaHa,
        double weight,
        double populationUnits,
        List<String> plots,
        List<PlotFacts> facts,
        List<Double> values,
        MeanEstimate mean) {
    public StratumWorking {
        plots = List.copyOf(plots);
        facts = List.copyOf(facts);
        values = List.copyOf(values);
    }

    /** Sum of the values. */
    public double sum() {
        return mean.mean() * values.size();
    }

    /** Whether the finite population correction is in its error. */
    public boolean isCorrected() {
        return populationUnits < Double.POSITIVE_INFINITY;
    }
}
