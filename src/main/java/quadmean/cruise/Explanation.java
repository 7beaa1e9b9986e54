package quadmean.cruise;

import java.util.List;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.MeanWorking;
import quadmean.estimate.PlotWorking;
import quadmean.estimate.RatioWorking;

/** One number with everything that it is made of. */
public sealed interface Explanation {
    /** What was asked for. */
    ExplainRequest request();

    /**
     * The value of a plot, or the part of one tree in it.
     *
     * @param request what was asked for
     * @param plot the plot with its value
     * @param trees the trees to show
     */
    record OfPlot(ExplainRequest request, PlotWorking plot, List<TreeWorking> trees) implements Explanation {
        public OfPlot {
            trees = List.copyOf(trees);
        }
    }

    /**
     * A mean over plots and its total.
     *
     * @param request what was asked for
     * @param mean the mean with its strata
     * @param perArea the row of the estimate per unit area
     * @param total the row of the total
     */
    record OfTotal(ExplainRequest request, MeanWorking mean, EstimateRow perArea, EstimateRow total)
            implements Explanation {}

    /**
     * The quadratic mean diameter.
     *
     * @param request what was asked for
     * @param ratio basal area over trees
     * @param row the row of the estimate
     */
    record OfDiameter(ExplainRequest request, RatioWorking ratio, EstimateRow row) implements Explanation {}
}
