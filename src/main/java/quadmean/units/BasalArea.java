package quadmean.units;

/** Cross-section area of a stem at breast height, and the diameter that goes with it. */
public final class BasalArea {
    /** Square metres per square centimetre of dbh: π/40 000 (by definition). */
    public static final double M2_PER_CM2 = Math.PI / 40_000;

    private BasalArea() {}

    /**
     * Basal area of one tree.
     *
     * @param dbhCm dbh (cm)
     * @return basal area (m²)
     */
    public static double ofTree(double dbhCm) {
        return M2_PER_CM2 * dbhCm * dbhCm;
    }

    /**
     * Quadratic mean diameter: the dbh of the tree of mean basal area.
     *
     * @param basalArea basal area (m²/ha)
     * @param trees number of trees (trees/ha), above zero
     * @return diameter (cm)
     */
    public static double quadraticMeanDiameter(double basalArea, double trees) {
        return Math.sqrt(basalArea / trees / M2_PER_CM2);
    }
}
