package quadmean.simulate;

/**
 * What one cruise takes, on average.
 *
 * @param plots plots visited
 * @param measured trees measured
 * @param counted trees counted, or predicted, and not measured
 * @param heights heights measured
 * @param walkM length of the walk from plot to plot, on the way there and back included (m); NaN where there is no walk
 * @param hours working time: the walk, the plots, and what the design says of trees
 */
public record Cost(double plots, double measured, double counted, double heights, double walkM, double hours) {}
