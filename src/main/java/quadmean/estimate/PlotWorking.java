package quadmean.estimate;

import java.util.List;
import quadmean.stats.Moments;

/**
 * The value of a plot and what it is made of.
 *
 * @param plot the plot
 * @param stems its trees, those that are left out not among them
 * @param perHa its value per hectare (metric)
 */
public record PlotWorking(SampledPlot plot, List<StemWorking> stems, double perHa) {
    public PlotWorking {
        stems = List.copyOf(stems);
    }

    /** What is in its value beside the trees listed (metric, per hectare), such as trees counted and not measured. */
    public double rest() {
        return perHa
                - Moments.sum(stems.stream().mapToDouble(StemWorking::perHa).toArray());
    }
}
