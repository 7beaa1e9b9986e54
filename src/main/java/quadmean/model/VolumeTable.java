package quadmean.model;

import java.util.List;

/**
 * A volume table by dbh and height or number of logs, in the units of its equation.
 *
 * @param dbh diameters, one for each row, increasing, two or more
 * @param entry what the columns stand for
 * @param columns heights or numbers of logs, increasing, two or more
 * @param volumes one row for each diameter, each with one volume for each column
 */
public record VolumeTable(List<Double> dbh, Entry entry, List<Double> columns, List<List<Double>> volumes) {
    public VolumeTable {
        dbh = List.copyOf(dbh);
        columns = List.copyOf(columns);
        volumes = volumes.stream().map(List::copyOf).toList();
        int width = columns.size();
        if (!increases(dbh) || !increases(columns)) {
            throw new IllegalArgumentException("a volume table needs two increasing points or more in each direction");
        }
        if (volumes.size() != dbh.size() || volumes.stream().anyMatch(row -> row.size() != width)) {
            throw new IllegalArgumentException("a volume table needs one volume for each dbh and column");
        }
    }

    /** What the columns of a table stand for. */
    public enum Entry {
        /** Total height. */
        HEIGHT("height"),
        /** Number of 16-ft logs. */
        LOGS("logs");

        private final String id;

        Entry(String id) {
            this.id = id;
        }

        /** The key in design files. */
        public String id() {
            return id;
        }
    }

    /** Whether points are two or more and each is larger than the one before. */
    public static boolean increases(List<Double> points) {
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i) > points.get(i - 1))) {
                return false;
            }
        }
        return points.size() > 1;
    }
}
