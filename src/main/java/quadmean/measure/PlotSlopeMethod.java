package quadmean.measure;

/** How the area of a circular plot is kept right on a slope. One plot uses one of them, never both. */
public enum PlotSlopeMethod {
    /** The distance to each tree is reduced to the horizontal; the plot is a true circle on the map. */
    HORIZONTAL_DISTANCES,
    /** One larger circle is laid on the ground; its horizontal area is right, its shape on the map an ellipse. */
    LARGER_RADIUS
}
