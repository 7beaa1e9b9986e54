package quadmean.model;

/**
 * A line of a stand table: the trees of one species and size.
 *
 * @param stratum code of the stratum it belongs to; empty for all strata alike
 * @param species species code
 * @param dbhCm middle of the class (cm), above zero
 * @param treesPerHa number of trees (1/ha), 0 or more; NaN in a table of heights alone
 * @param heightM mean height of the class (m); NaN if it is not known
 */
public record StandClass(String stratum, String species, double dbhCm, double treesPerHa, double heightM) {}
