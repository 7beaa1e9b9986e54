package quadmean.audit;

import quadmean.stats.MeanEstimate;

/**
 * A reading of all matched trees.
 *
 * @param reading what was read
 * @param bias mean of crew less checker, with the error that trees of a plot have in common; in the unit of the reading
 * @param sd standard deviation of the differences
 * @param rms root mean square of the differences
 * @param judgement the share within the limit
 */
public record ReadingCheck(Reading reading, MeanEstimate bias, double sd, double rms, Judgement judgement) {}
