package quadmean.volume;

/**
 * A log cut from a stem; diameters inside bark.
 *
 * @param number place in the stem, 1 for the butt log
 * @param product product code
 * @param fromM height of its large end above ground (m)
 * @param lengthM length without trim (m)
 * @param largeEndCm diameter at the large end (cm)
 * @param smallEndCm diameter at the small end of the scaled length (cm)
 * @param cubicM3 gross cubic volume (m³)
 * @param boardFeet gross board feet by the log rule in use
 * @param defect share taken off for defect, in [0, 1]
 * @param value what the net log fetches, in the currency of the price list; NaN without prices, 0 without a price for it
 */
public record CutLog(
        int number,
        String product,
        double fromM,
        double lengthM,
        double largeEndCm,
        double smallEndCm,
        double cubicM3,
        double boardFeet,
        double defect,
        double value) {
    /** What stands for the logs of a tree that cannot be cut, because its height or its profile is not known. */
    public static CutLog unknown() {
        return new CutLog(0, "", Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, 0, Double.NaN);
    }

    /** Whether it stands for logs that are not known. */
    public boolean isUnknown() {
        return number == 0;
    }

    /** Cubic volume less defect (m³). */
    public double netM3() {
        return cubicM3 * (1 - defect);
    }

    /** Board feet less defect. */
    public double netBoardFeet() {
        return boardFeet * (1 - defect);
    }
}
