package quadmean.design;

import java.util.OptionalDouble;

/**
 * What plots cost, in any unit that all costs of a design share.
 *
 * @param unit its name, such as hours
 * @param fixed cost whatever the number of plots
 * @param plot cost of a plot; empty where the design says nothing of costs
 * @param budget what may be spent
 */
public record PlanCosts(String unit, double fixed, OptionalDouble plot, OptionalDouble budget) {
    /** No costs: what is counted is plots. */
    static final PlanCosts NONE = new PlanCosts("plots", 0, OptionalDouble.empty(), OptionalDouble.empty());

    /** Cost of a plot; 1 where the design says nothing, so that costs count plots. */
    public double perPlot() {
        return plot.orElse(1);
    }

    /** Whether the design says what a plot costs. */
    public boolean areStated() {
        return plot.isPresent();
    }
}
