package quadmean.estimate;

/**
 * One number of the stand or stock table: an estimate of the trees of one diameter class, which as a domain of the whole
 * stand counts zero on plots without them.
 *
 * @param size the class
 * @param row the estimate with its error; species {@code *} for all
 */
public record ClassRow(DiameterClass size, EstimateRow row) {}
