package quadmean.design;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Ways of sampling that a plan compares with single plots.
 *
 * @param cluster plots in clusters, each read whole
 * @param twoStage plots drawn in units that were drawn first
 * @param doubled a cheap reading on many plots and the dear one on some
 * @param count points counted and trees measured
 * @param threeP trees predicted and some measured with chance by prediction
 */
public record PlanSamples(
        Optional<Clusters> cluster,
        Optional<Clusters> twoStage,
        Optional<Doubled> doubled,
        Optional<CountRatio> count,
        Optional<Predicted> threeP) {
    /** None of them. */
    public static final PlanSamples NONE =
            new PlanSamples(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * Plots in clusters or units.
     *
     * @param plots plots of a cluster; empty for the number that costs least
     * @param correlation of plots of a cluster, in [0, 1)
     * @param cost of coming to a cluster, beside that of its plots
     * @param units clusters in the population; empty for no correction
     * @param unitPlots plots that a unit has room for; empty for any number
     */
    public record Clusters(
            OptionalInt plots, double correlation, double cost, OptionalDouble units, OptionalDouble unitPlots) {}

    /**
     * Double sampling.
     *
     * @param correlation of the cheap reading and the dear one, in (0, 1)
     * @param countCost cost of the cheap reading on a plot; the dear one adds that of a plot
     */
    public record Doubled(double correlation, double countCost) {}

    /**
     * Counts and ratios.
     *
     * @param countCvPercent coefficient of variation of counts between points (percent); empty for that of the target
     * @param ratioCvPercent coefficient of variation of volume per basal area between trees (percent)
     * @param countCost cost of counting a point
     * @param treeCost cost of measuring a tree
     */
    public record CountRatio(OptionalDouble countCvPercent, double ratioCvPercent, double countCost, double treeCost) {}

    /**
     * Predictions.
     *
     * @param where whose trees are predicted
     * @param trees trees in all, or on a plot
     * @param meanPrediction mean prediction of a tree, in any unit; empty where the limit is not asked for
     * @param ratioCvPercent coefficient of variation of measured over predicted value between trees (percent)
     * @param visitCost cost of predicting a tree
     * @param treeCost cost of measuring one
     */
    public record Predicted(
            Where where,
            double trees,
            OptionalDouble meanPrediction,
            double ratioCvPercent,
            double visitCost,
            double treeCost) {
        /** Whose trees are predicted. */
        public enum Where {
            EVERY_TREE("every_tree"),
            ON_PLOTS("on_plots");

            private final String id;

            Where(String id) {
                this.id = id;
            }

            /** The name used in design files. */
            public String id() {
                return id;
            }
        }
    }
}
