package quadmean.estimate;

/**
 * What a number of plots is expected to bring, if they vary like those already run.
 *
 * @param plots plots in all
 * @param errorPercent sampling error to expect (percent)
 */
public record GainPoint(int plots, double errorPercent) {}
