package quadmean.model;

/**
 * A stem on a map.
 *
 * @param xM x (m)
 * @param yM y (m)
 * @param dbhCm dbh (cm), above 0
 */
public record MappedStem(double xM, double yM, double dbhCm) {}
