package quadmean.estimate;

/**
 * What the estimate needs of a tree.
 *
 * @param species species code
 * @param dbhCm dbh (cm)
 * @param volumeM3 volume (m³); NaN if it is not known
 */
public record Stem(String species, double dbhCm, double volumeM3) {}
