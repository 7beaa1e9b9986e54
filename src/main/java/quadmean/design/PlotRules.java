package quadmean.design;

import org.jspecify.annotations.Nullable;
import quadmean.model.Boundary;
import quadmean.units.DistanceTo;
import quadmean.units.PlotOnSlope;

/**
 * How crews decide whether a tree is on the plot.
 *
 * @param limitTo the part of the stem that limiting distances of a point sample reach; null if the design does not say
 * @param onSlope how a fixed plot keeps its horizontal area on a slope
 * @param boundary what is done where a plot reaches over the line of the tract
 */
public record PlotRules(@Nullable DistanceTo limitTo, PlotOnSlope onSlope, Boundary boundary) {
    /** Nothing said of limiting distances; horizontal distances on slopes. */
    public static final PlotRules STANDARD = new PlotRules(null, PlotOnSlope.HORIZONTAL_DISTANCES, Boundary.NOT_STATED);
}
