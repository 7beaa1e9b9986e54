package quadmean.design;

import org.jspecify.annotations.Nullable;
import quadmean.units.DistanceTo;
import quadmean.units.PlotOnSlope;

/**
 * How crews decide whether a tree is on the plot.
 *
 * @param limitTo the part of the stem that limiting distances of a point sample reach; null if the design does not say
 * @param onSlope how a fixed plot keeps its horizontal area on a slope
 */
public record PlotRules(@Nullable DistanceTo limitTo, PlotOnSlope onSlope) {
    /** Nothing said of limiting distances; horizontal distances on slopes. */
    public static final PlotRules STANDARD = new PlotRules(null, PlotOnSlope.HORIZONTAL_DISTANCES);
}
