package quadmean.model;

import java.util.List;

/**
 * A tree whose stem was measured at several heights.
 *
 * @param id what the table calls it
 * @param row line of its first point, the header being line 1
 * @param species species code; empty where the table has none
 * @param dbhCm dbh (cm), above 0
 * @param heightM total height (m), above that of the highest point
 * @param readings its points, the lowest first
 */
public record FelledStem(
        String id, long row, String species, double dbhCm, double heightM, List<StemReading> readings) {
    public FelledStem {
        readings = List.copyOf(readings);
    }

    /**
     * What to say of its rows when the tree is left out for one of them.
     *
     * @param file name of the table
     * @param column column of tree names
     * @param cause the row to blame, which has its own problem
     */
    public List<Problem> leftOut(String file, String column, long cause) {
        return readings.stream()
                .filter(r -> r.row() != cause)
                .map(r -> new Problem(
                        file,
                        r.row(),
                        column,
                        id,
                        Rule.FELLED_STEM,
                        Policy.DROP,
                        "tree " + id + " is left out for row " + cause))
                .toList();
    }
}
