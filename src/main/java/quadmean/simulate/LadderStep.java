package quadmean.simulate;

/**
 * The same design with more plots.
 *
 * @param plots plots (or clusters) asked for
 * @param coverage how often the limits of the design held the truth
 */
public record LadderStep(int plots, Coverage coverage) {}
