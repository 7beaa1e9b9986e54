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
 * @param counted its trees that were counted, or predicted, and not measured
 */
public record SampledPlot(
        String id, String stratum, List<Stem> stems, double inside, PlotFacts facts, List<CountedStem> counted) {
    public SampledPlot {
        stems = List.copyOf(stems);
        counted = List.copyOf(counted);
        if (!(inside > 0 && inside <= 1)) {
            throw new IllegalArgumentException("the share inside must lie in (0, 1], got " + inside);
        }
    }

    /** A plot whose trees are all measured. */
    public SampledPlot(String id, String stratum, List<Stem> stems, double inside, PlotFacts facts) {
        this(id, stratum, stems, inside, facts, List.of());
    }

    /** The same plot with a single one of its measured trees. */
    SampledPlot only(Stem stem) {
        return new SampledPlot(id, stratum, List.of(stem), inside, facts);
    }

    /** A plot that lies wholly inside its stratum. */
    public SampledPlot(String id, String stratum, List<Stem> stems) {
        this(id, stratum, stems, 1, PlotFacts.NONE);
    }
}
