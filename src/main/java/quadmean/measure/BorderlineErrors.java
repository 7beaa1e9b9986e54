package quadmean.measure;

/**
 * Errors of what decides a borderline tree.
 *
 * @param distanceSd standard deviation of the taped distance (m), 0 or more
 * @param dbhSd standard deviation of the dbh (cm), 0 or more
 * @param slopeSd standard deviation of the slope of the line to the tree (radians), 0 or more
 */
public record BorderlineErrors(double distanceSd, double dbhSd, double slopeSd) {
    /** @throws IllegalArgumentException if an sd is negative */
    public BorderlineErrors {
        Checks.notNegative(distanceSd, "the distance sd");
        Checks.notNegative(dbhSd, "the dbh sd");
        Checks.notNegative(slopeSd, "the slope sd");
    }

    /** The defaults of {@link CommonPractice}: 0.03 m, 0.254 cm (0.1 in), 0.5° of slope. No source. */
    public static BorderlineErrors commonPractice() {
        return new BorderlineErrors(
                CommonPractice.BORDERLINE_DISTANCE_SD, CommonPractice.DBH_SD, CommonPractice.SLOPE_SD);
    }

    /** These errors with another distance error (m, 0 or more). */
    public BorderlineErrors withDistanceSd(double other) {
        return new BorderlineErrors(other, dbhSd, slopeSd);
    }

    /** These errors with another dbh error (cm, 0 or more). */
    public BorderlineErrors withDbhSd(double other) {
        return new BorderlineErrors(distanceSd, other, slopeSd);
    }

    /** These errors with another slope error (radians, 0 or more). */
    public BorderlineErrors withSlopeSd(double other) {
        return new BorderlineErrors(distanceSd, dbhSd, other);
    }
}
