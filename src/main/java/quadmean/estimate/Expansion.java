package quadmean.estimate;

import quadmean.model.PlotDesign;
import quadmean.units.BasalArea;

/** How many trees per hectare a measured tree stands for. */
public final class Expansion {
    private Expansion() {}

    /**
     * Expansion factor of one tree: 1 over the area of its plot or strip, or the basal area factor over the tree's basal area
     * (Bitterlich's point sampling), doubled by a half sweep; by definition.
     *
     * @param plot kind and size of the plot
     * @param dbhCm dbh (cm), above 0
     * @return trees per hectare; on nested plots a tree on a class limit belongs to the class that starts there (common
     *     practice, no source), and one below the smallest limit stands for none. In a complete tally 1: itself alone, to be divided
     *     by the area of its stratum, as {@link CensusSample} does
     */
    public static double treesPerHa(PlotDesign plot, double dbhCm) {
        if (plot instanceof PlotDesign.Fixed fixed) {
            return 1 / fixed.areaHa();
        }
        if (plot instanceof PlotDesign.Strip strip) {
            return 1 / strip.areaHa();
        }
        if (plot instanceof PlotDesign.Point point) {
            return point.perMeasuredTree() / BasalArea.ofTree(dbhCm);
        }
        if (plot instanceof PlotDesign.Complete) {
            return 1;
        }
        double treesPerHa = 0;
        for (PlotDesign.Ring ring : ((PlotDesign.Nested) plot).rings()) {
            if (dbhCm >= ring.minDbhCm()) {
                treesPerHa = 1 / ring.areaHa();
            }
        }
        return treesPerHa;
    }
}
