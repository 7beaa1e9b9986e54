package quadmean.design;

import org.jspecify.annotations.Nullable;
import quadmean.model.PlotOnSlope;
import quadmean.model.StemPart;

/**
 * How crews decide whether a tree is on the plot.
 *
 * @param limitTo the part of the stem that limiting distances of a point sample reach; null if the design does not say
 * @param onSlope how a fixed plot keeps its horizontal area on a slope
 */
public record PlotRules(@Nullable StemPart limitTo, PlotOnSlope onSlope) {
    /** Nothing said of limiting distances; horizontal distances on slopes. */
    public static final PlotRules STANDARD = new PlotRules(null, PlotOnSlope.HORIZONTAL_DISTANCES);
}
