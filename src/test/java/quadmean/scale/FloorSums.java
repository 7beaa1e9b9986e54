package quadmean.scale;

/** What the floor has read: rows, and the sums that show that it did read them. */
final class FloorSums {
    private long rows;
    private long trees;
    private long heights;
    private double dbhSum;
    private double heightSum;

    /** A data row; what is empty is NaN. */
    void row(double dbh, double height) {
        rows++;
        if (!Double.isNaN(dbh)) {
            trees++;
            dbhSum += dbh;
        }
        if (!Double.isNaN(height)) {
            heights++;
            heightSum += height;
        }
    }

    void add(FloorSums other) {
        rows += other.rows;
        trees += other.trees;
        heights += other.heights;
        dbhSum += other.dbhSum;
        heightSum += other.heightSum;
    }

    long rows() {
        return rows;
    }

    long trees() {
        return trees;
    }

    long heights() {
        return heights;
    }

    /** Sum of dbh, in centimetres. */
    double dbhSum() {
        return dbhSum;
    }

    /** Sum of heights, in metres. */
    double heightSum() {
        return heightSum;
    }
}
