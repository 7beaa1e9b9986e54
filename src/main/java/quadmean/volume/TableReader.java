package quadmean.volume;

import java.util.List;
import quadmean.model.VolumeTable;

/** Reads volume tables between their points. */
final class TableReader {
    /** Share by which a tree on the edge may miss it: what conversion of units leaves in the last digits. */
    private static final double HAIR = 1e-9;

    private TableReader() {}

    /** Bilinear between the four points around a tree; NaN outside the table, and for NaN. */
    static double volume(VolumeTable table, double dbh, double column) {
        double i = position(table.dbh(), dbh);
        double j = position(table.columns(), column);
        if (Double.isNaN(i) || Double.isNaN(j)) {
            return Double.NaN;
        }
        int row = Math.min((int) i, table.dbh().size() - 2);
        double share = i - row;
        return (1 - share) * along(table.volumes().get(row), j)
                + share * along(table.volumes().get(row + 1), j);
    }

    private static double along(List<Double> row, double position) {
        int left = Math.min((int) position, row.size() - 2);
        double share = position - left;
        return (1 - share) * row.get(left) + share * row.get(left + 1);
    }

    /** Where a value lies among points, counted from 0: 1.25 is a quarter of the way from the second to the third. */
    private static double position(List<Double> points, double value) {
        int last = points.size() - 1;
        double hair = HAIR * Math.abs(value);
        if (!(value >= points.get(0) - hair && value <= points.get(last) + hair)) {
            return Double.NaN;
        }
        double inside = Math.min(Math.max(value, points.get(0)), points.get(last));
        int left = 0;
        while (left < last - 1 && points.get(left + 1) <= inside) {
            left++;
        }
        return left + (inside - points.get(left)) / (points.get(left + 1) - points.get(left));
    }
}
