package quadmean.height;

/**
 * A curve at one dbh with its bands (m).
 *
 * @param metres the height on the curve
 * @param curveHalf half the width of the confidence band: where the curve lies
 * @param treeHalf half the width of the prediction band: where a tree lies
 */
public record HeightBand(double metres, double curveHalf, double treeHalf) {}
