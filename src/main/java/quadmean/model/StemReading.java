package quadmean.model;

/**
 * A point of a felled or sighted stem.
 *
 * @param row line of the table
 * @param heightM height above ground (m), 0 or more
 * @param diameterCm diameter there (cm), above 0
 * @param barkCm thickness of the bark on one side (cm); NaN where the table has none
 */
public record StemReading(long row, double heightM, double diameterCm, double barkCm) {}
