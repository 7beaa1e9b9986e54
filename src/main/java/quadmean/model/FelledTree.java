package quadmean.model;

/**
 * A tree that was felled and measured whole.
 *
 * @param id what the table calls it; its row where the table has no name
 * @param row line of the table, the header being line 1
 * @param species species code; empty where the table has none
 * @param dbhCm dbh (cm), above 0
 * @param heightM total height (m), above 0
 * @param volumeM3 volume (m³), above 0
 */
public record FelledTree(String id, long row, String species, double dbhCm, double heightM, double volumeM3) {}
