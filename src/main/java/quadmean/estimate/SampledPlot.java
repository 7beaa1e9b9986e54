package quadmean.estimate;

import java.util.List;
import quadmean.model.PlotFacts;

/**
 * A plot as the estimate sees it.
 *
 * @param id plot number
 * @param stratum stratum code
 * @param stems its trees; none makes it a plot of zero
 * @param inside share of the plot's area that lies inside its stratum, in (0, 1]; its trees are expanded by 1/inside
 * @param facts what the list of plots says of it
 */
public record SampledPlot(String id, String stratum, List<Stem> stems, double inside, PlotFacts facts) {
    public SampledPlot {
        stems = List.copyOf(stems);
        if (!(inside > 0 && inside <= 1)) {
            throw new IllegalArgumentException("the share inside must lie in (0, 1], got " + inside);
        }
    }

    /** A plot that lies wholly inside its stratum. */
    public SampledPlot(String id, String stratum, List<Stem> stems) {
        this(id, stratum, stems, 1, PlotFacts.NONE);
    }
}
