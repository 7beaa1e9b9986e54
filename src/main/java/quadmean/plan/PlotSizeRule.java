package quadmean.plan;

import quadmean.model.PlotDesign;
import quadmean.units.BasalArea;

/** How the variation between plots follows from their size, where no data show it. */
public final class PlotSizeRule {
    private PlotSizeRule() {}

    /**
     * The coefficient of variation between plots of another size: CV₂ = CV₁·(A₁/A₂)^¼ (Freese 1961, from memory).
     *
     * @param cvPercent coefficient of variation between plots (percent), above 0
     * @param areaHa their area (ha), above 0
     * @param otherHa area of the other plots (ha), above 0
     * @return percent
     */
    public static double cvPercent(double cvPercent, double areaHa, double otherHa) {
        return cvPercent * Math.pow(areaHa / otherHa, 0.25);
    }

    /**
     * The area that a plot counts with in that rule. A point counts as the plot on which the tree of mean basal area is in:
     * basal area of that tree over the factor, which is the fixed plot with as many trees as the point. An assumption, no
     * source.
     *
     * @param plot kind and size of the plot
     * @param meanTreeM2 mean basal area of a tree (m²)
     * @return area (ha); NaN for plots that have no one size
     */
    public static double areaHa(PlotDesign plot, double meanTreeM2) {
        if (plot instanceof PlotDesign.Fixed fixed) {
            return fixed.areaHa();
        }
        if (plot instanceof PlotDesign.Strip strip) {
            return strip.areaHa();
        }
        return plot instanceof PlotDesign.Point point ? meanTreeM2 / point.perTree() : Double.NaN;
    }

    /** Mean basal area of a tree (m²) from basal area (m²/ha) and stems (trees/ha). */
    static double meanTreeM2(double basalArea, double trees) {
        return BasalArea.ofTree(BasalArea.quadraticMeanDiameter(basalArea, trees));
    }
}
