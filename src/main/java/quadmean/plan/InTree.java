package quadmean.plan;

import quadmean.measure.FixedPlot;
import quadmean.measure.PointGauge;
import quadmean.model.PlotDesign;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.DistanceTo;

/** Up to where a tree is in on fixed plots and points, and what it then stands for. */
final class InTree {
    private InTree() {}

    /** Distance up to which a tree is in (m); on fixed plots that is the radius, to the centre of the stem. */
    static double limitM(PlotDesign plot, double dbhCm, DistanceTo to) {
        if (plot instanceof PlotDesign.Fixed fixed) {
            return FixedPlot.ofArea(fixed.areaHa()).radius();
        }
        if (plot instanceof PlotDesign.Point point) {
            return new PointGauge(point.basalAreaFactor()).limitingDistance(dbhCm, to);
        }
        throw new IllegalArgumentException("only fixed plots and points are compared");
    }

    /** What a tree on the plot stands for: trees/ha, or m²/ha of basal area. */
    static double worth(PlotDesign plot, double dbhCm, Attribute attribute) {
        double basalArea = BasalArea.ofTree(dbhCm);
        double trees = 1 / PlotSizeRule.areaHa(plot, basalArea);
        return attribute == Attribute.TREES ? trees : trees * basalArea;
    }
}
