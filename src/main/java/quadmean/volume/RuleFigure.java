package quadmean.volume;

import quadmean.model.Standing;

/**
 * What a log rule says of one log or piece.
 *
 * @param boardFeet board feet, never negative
 * @param coverage whether that is the rule's own figure
 * @param standing whether anybody checked it against a print
 */
public record RuleFigure(double boardFeet, Coverage coverage, Standing standing) {}
