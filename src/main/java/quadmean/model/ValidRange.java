package quadmean.model;

/**
 * Sizes of the trees that an equation was fitted to; NaN where the source states no limit.
 *
 * @param minDbhCm smallest dbh (cm)
 * @param maxDbhCm largest dbh (cm)
 * @param minHeightM smallest height (m)
 * @param maxHeightM largest height (m)
 */
public record ValidRange(double minDbhCm, double maxDbhCm, double minHeightM, double maxHeightM) {
    /** A range of which nothing is known. */
    public static final ValidRange NOT_STATED = new ValidRange(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    /** Whether a tree lies outside a limit that is stated; a height of NaN is not held against it. */
    public boolean excludes(double dbhCm, double heightM) {
        return dbhCm < minDbhCm || dbhCm > maxDbhCm || heightM < minHeightM || heightM > maxHeightM;
    }
}
