package quadmean.estimate;

import java.util.List;

/**
 * A plot as the estimate sees it.
 *
 * @param id plot number
 * @param stratum stratum code
 * @param stems its trees; none makes it a plot of zero
 */
public record SampledPlot(String id, String stratum, List<Stem> stems) {
    public SampledPlot {
        stems = List.copyOf(stems);
    }
}
