package quadmean.model;

import java.util.Locale;
import quadmean.units.BasalArea;

/**
 * How much of the cylinder of its dbh and height a stem fills.
 *
 * @param share volume over that of the cylinder
 */
public record StemFullness(double share) {
    /** Usual limits (common practice, no source). */
    private static final double SLENDEREST = 0.1;

    private static final double FULLEST = 1;

    /** So much less or more is no stem at all (common practice, no source). */
    private static final double FAR_OFF = 0.02;

    private static final double FAR_OVER = 2;

    /**
     * The fullness of a whole stem.
     *
     * @param dbhCm dbh (cm), above 0
     * @param heightM total height (m), above 0
     * @param volumeM3 volume (m³)
     */
    public static StemFullness of(double dbhCm, double heightM, double volumeM3) {
        return new StemFullness(volumeM3 / (BasalArea.ofTree(dbhCm) * heightM));
    }

    /** Whether it is outside the usual limits. */
    public boolean isUnlikely() {
        return share < SLENDEREST || share > FULLEST;
    }

    /** Whether it is so far outside that there is no such stem. */
    public boolean isNoStem() {
        return share < FAR_OFF || share > FAR_OVER;
    }

    /** What is wrong, in words. */
    public String words() {
        String percent = share < 0.001 ? "below 0.1 %" : String.format(Locale.ROOT, "%.3g %%", 100 * share);
        return "the volume is " + percent + " of the cylinder of dbh and height"
                + (isNoStem() ? ", as of no stem" : "");
    }

    /** Whether so many trees are unlikely that a unit must be wrong. */
    public static boolean isWrongUnit(long unlikely, long trees) {
        return 2 * unlikely > trees;
    }

    /** What is wrong with them all, in words. */
    public static String wrongUnit(long unlikely, long trees) {
        return "the volume of " + unlikely + " of " + trees
                + " trees is below 10 or above 100 % of the cylinder of dbh and height: a unit is wrong";
    }
}
