package quadmean.volume;

import quadmean.model.Standing;

/**
 * A piece of a log as it is scaled; a log of bearable length is one piece.
 *
 * @param inches small-end diameter inside bark as the convention rounds it (in)
 * @param feet scaled length (ft)
 * @param boardFeet board feet
 * @param coverage whether the log rule has a figure of its own for it
 * @param standing whether anybody checked that figure
 */
public record ScaledPiece(double inches, double feet, double boardFeet, Coverage coverage, Standing standing) {}
