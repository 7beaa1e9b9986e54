package quadmean.layout;

import java.util.OptionalDouble;
import quadmean.measure.FixedPlot;
import quadmean.measure.PointGauge;
import quadmean.model.Boundary;
import quadmean.model.PlotDesign;
import quadmean.units.DistanceTo;

/** How far trees of a plot can lie from its centre. */
final class PlotReach {
    private PlotReach() {}

    /**
     * How far from a line a plot can be and still have trees that the boundary treatment counts more than once (m): the reach, and
     * under walkthrough twice the reach, for the walk ends as far again beyond the tree (by algebra).
     */
    static double ofTreatment(double reachM, Boundary boundary) {
        return boundary == Boundary.WALKTHROUGH ? 2 * reachM : reachM;
    }

    /** Reach (m): radius of the largest circle, limiting distance of the largest tree, half the diagonal of a strip. */
    static OptionalDouble of(PlotDesign plot, double largestDbhCm) {
        if (plot instanceof PlotDesign.Fixed f) {
            return OptionalDouble.of(FixedPlot.ofArea(f.areaHa()).radius());
        }
        if (plot instanceof PlotDesign.Nested n) {
            return n.rings().stream()
                    .mapToDouble(r -> FixedPlot.ofArea(r.areaHa()).radius())
                    .max();
        }
        if (plot instanceof PlotDesign.Point p) {
            return OptionalDouble.of(
                    new PointGauge(p.basalAreaFactor()).limitingDistance(largestDbhCm, DistanceTo.CENTRE));
        }
        if (plot instanceof PlotDesign.Strip s) {
            return OptionalDouble.of(Math.hypot(s.widthM(), s.lengthM()) / 2);
        }
        return OptionalDouble.empty();
    }
}
