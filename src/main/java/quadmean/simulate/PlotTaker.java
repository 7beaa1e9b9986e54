package quadmean.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import quadmean.design.Design;
import quadmean.measure.FixedPlot;
import quadmean.measure.PointGauge;
import quadmean.model.Boundary;
import quadmean.model.MappedTree;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Sweep;
import quadmean.units.DistanceTo;

/** Takes plots of a design in a known forest: which trees are on the plot at a place, and how often each counts. */
final class PlotTaker {
    private final Forest forest;
    private final Boundary boundary;
    private final Sweep sweep;
    private final double[] reach;
    private final double[] largerReach;
    private final double farthest;
    private final ZoneIndex index;

    private PlotTaker(Design design, Forest forest, double[] reach, double[] largerReach) {
        this.forest = forest;
        this.boundary = design.plotRules().boundary();
        this.sweep = design.plot() instanceof PlotDesign.Point p ? p.sweep() : Sweep.FULL;
        this.reach = reach;
        this.largerReach = largerReach;
        this.farthest = java.util.Arrays.stream(reach).max().orElse(0);
        this.index = new ZoneIndex(forest.trees(), reach, forest.box());
    }

    /**
     * A tree on a plot.
     *
     * @param tree its place in the forest's list
     * @param times how often it counts
     * @param measuredTimes how often it counts by the factor that chooses trees to measure; the same where there is only one
     */
    record Seen(int tree, int times, int measuredTimes) {}

    /** Plots of fixed area, nested plots and points; others have no place at which they could be taken. */
    static PlotTaker of(Design design, Forest forest) {
        double[] reach = reach(forest, t -> reach(design.plot(), t.dbhCm()));
        double[] larger = design.plot().measuring() instanceof Measuring.LargerFactor f
                ? reach(forest, t -> ofGauge(f.basalAreaFactor(), t.dbhCm()))
                : reach;
        return new PlotTaker(design, forest, reach, larger);
    }

    private static double[] reach(Forest forest, ToDoubleFunction<MappedTree> of) {
        return forest.trees().stream().mapToDouble(of).toArray();
    }

    private static double reach(PlotDesign plot, double dbhCm) {
        if (plot instanceof PlotDesign.Fixed f) {
            return FixedPlot.ofArea(f.areaHa()).radius();
        }
        if (plot instanceof PlotDesign.Point p) {
            return ofGauge(p.basalAreaFactor(), dbhCm);
        }
        if (plot instanceof PlotDesign.Nested n) {
            double radius = 0;
            for (PlotDesign.Ring ring : n.rings()) {
                radius = dbhCm >= ring.minDbhCm()
                        ? FixedPlot.ofArea(ring.areaHa()).radius()
                        : radius;
            }
            return radius;
        }
        throw new IllegalArgumentException("no plot of such a kind is taken at a place: " + plot);
    }

    private static double ofGauge(double factor, double dbhCm) {
        return new PointGauge(factor).limitingDistance(dbhCm, DistanceTo.CENTRE);
    }

    /** How far from its place a plot may reach (m). */
    double farthestM() {
        return farthest;
    }

    /**
     * The trees on the plot at a place, in the order of the forest.
     *
     * @param ground the ground whose line is the boundary of the plot
     * @param stratum the stratum that trees must stand in, as in {@link Forest#stratumOf}; below 0 for any
     */
    List<Seen> at(double x, double y, Ground ground, int stratum) {
        List<Seen> seen = new ArrayList<>();
        double line = ground.lineM(x, y);
        int cell = index.cellAt(x, y);
        for (int at = index.from(cell); at < index.to(cell); at++) {
            int i = index.tree(at);
            MappedTree t = forest.trees().get(i);
            double dx = t.x() - x;
            double dy = t.y() - y;
            double square = dx * dx + dy * dy;
            if (square > reach[i] * reach[i] || (stratum >= 0 && forest.stratumOf(i) != stratum) || !isSwept(dx, dy)) {
                continue;
            }
            int times = times(x, y, t, reach[i], ground, line);
            if (times == 0) {
                continue;
            }
            int measured = square > largerReach[i] * largerReach[i]
                    ? 0
                    : largerReach == reach ? times : times(x, y, t, largerReach[i], ground, line);
            seen.add(new Seen(i, times, measured));
        }
        return seen;
    }

    /** Half a sweep takes the north, a quarter the north-east: a side fixed by rule. */
    private boolean isSwept(double dx, double dy) {
        return switch (sweep) {
            case FULL -> true;
            case HALF -> dy >= 0;
            case QUARTER -> dy >= 0 && dx >= 0;
        };
    }

    /** How often a tree within its limit counts. */
    private int times(double x, double y, MappedTree t, double limit, Ground ground, double line) {
        return switch (boundary) {
            case NOT_STATED, IGNORED -> 1;
            case MIRAGE -> line >= limit ? 1 : ground.mirage(x, y, t.x(), t.y(), limit);
            // where the way through the tree ends is at most twice its limit away
            case WALKTHROUGH -> line >= 2 * limit ? 1 : ground.walkthrough(x, y, t.x(), t.y());
            case INWARD_SWEEP ->
                inward(x, t.x(), ground.box().getMinX(), ground.box().getMaxX())
                        * inward(y, t.y(), ground.box().getMinY(), ground.box().getMaxY());
        };
    }

    /** Twice toward the inside where a side of the rectangle lies within reach of the plot, not at all toward that side. */
    private int inward(double at, double tree, double low, double high) {
        boolean nearLow = at - low < farthest;
        boolean nearHigh = high - at < farthest;
        if (!nearLow && !nearHigh) {
            return 1;
        }
        boolean isUpward = nearLow && (!nearHigh || at - low <= high - at);
        return (isUpward ? tree >= at : tree <= at) ? 2 : 0;
    }
}
