package quadmean.plan;

import java.util.OptionalInt;
import quadmean.model.PlotDesign;

/**
 * A kind of plot, and what a cruise with it takes to reach the target.
 *
 * @param plot kind and size: a fixed plot or a point
 * @param areaHa the area that it counts with in the plot-size rule (ha)
 * @param treesPerPlot trees expected on a plot
 * @param cvByRulePercent coefficient of variation by the plot-size rule (percent); NaN where it has nothing to start from
 * @param cvByMapPercent the same from the map of stems; NaN without one
 * @param cvByPilotPercent the same from a pilot with distances; NaN without one, and for a kind that reaches farther
 * @param plots plots that the target takes; empty if no number reaches it
 * @param work what they take; all NaN if no number reaches it
 */
public record KindOption(
        PlotDesign plot,
        double areaHa,
        double treesPerPlot,
        double cvByRulePercent,
        double cvByMapPercent,
        double cvByPilotPercent,
        OptionalInt plots,
        Work work) {
    /** Fewest and most trees on a point: common practice, no source. */
    public static final double FEWEST_TREES = 4;

    /** Most trees on a point: common practice, no source. */
    public static final double MOST_TREES = 8;

    /** How the trees of a point compare with the usual 4 to 8; of fixed plots nothing is said. */
    public enum TreeCount {
        TOO_FEW,
        USUAL,
        TOO_MANY,
        NOT_JUDGED
    }

    /**
     * What so many plots take.
     *
     * @param walkM length of the walk between plots (m)
     * @param walkingHours time on the walk (h)
     * @param setUpHours time to set plots up (h)
     * @param treeHours time with trees (h)
     */
    public record Work(double walkM, double walkingHours, double setUpHours, double treeHours) {
        /** What cannot be worked out. */
        static final Work UNKNOWN = new Work(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

        /** Hours in all. */
        public double hours() {
            return walkingHours + setUpHours + treeHours;
        }
    }

    /** The coefficient of variation that counts (percent): the pilot's where it has one, else the map's, else the rule's. */
    public double cvPercent() {
        return counting(cvByRulePercent, cvByMapPercent, cvByPilotPercent);
    }

    static double counting(double byRule, double byMap, double byPilot) {
        double byData = Double.isNaN(byPilot) ? byMap : byPilot;
        return Double.isNaN(byData) ? byRule : byData;
    }

    /** Trees on all plots; NaN if no number of plots reaches the target. */
    public double treesInAll() {
        return plots.isPresent() ? plots.getAsInt() * treesPerPlot : Double.NaN;
    }

    /** How its trees compare with what is usual on a point. */
    public TreeCount treeCount() {
        if (!(plot instanceof PlotDesign.Point)) {
            return TreeCount.NOT_JUDGED;
        }
        if (treesPerPlot < FEWEST_TREES) {
            return TreeCount.TOO_FEW;
        }
        return treesPerPlot > MOST_TREES ? TreeCount.TOO_MANY : TreeCount.USUAL;
    }
}
