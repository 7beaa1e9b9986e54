package quadmean.estimate;

/**
 * What one tally row adds to the value of its plot.
 *
 * @param stem the tree
 * @param counts whether it counts in the attribute; if not it adds nothing
 * @param expansion trees per hectare that one tree of a plot wholly inside its stratum stands for
 * @param perTree the attribute of one tree (metric)
 * @param perHa what the row adds per hectare (metric)
 */
public record StemWorking(Stem stem, boolean counts, double expansion, double perTree, double perHa) {
    /** Factor that the sampling adds beside expansion and number of trees, such as for a tree near a boundary; NaN where nothing is added. */
    public double further(double inside) {
        return perHa / (expansion * stem.count() * perTree / inside);
    }
}
