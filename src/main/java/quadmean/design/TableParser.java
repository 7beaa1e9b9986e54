package quadmean.design;

import java.util.List;
import java.util.Optional;
import quadmean.model.Rule;
import quadmean.model.VolumeTable;
import quadmean.model.VolumeTable.Entry;

/** Reads the volume table of an equation: {@code dbh}, {@code height} or {@code logs}, and {@code volumes}. */
final class TableParser {
    private TableParser() {}

    static Optional<VolumeTable> parse(Stated s) {
        Entry entry = entry(s);
        if (s.has("height") && s.has("logs")) {
            String detail = "a volume table goes by height or by logs, not by both: take one out";
            s.at("logs").problem(Rule.DESIGN_VALUE, "logs", "", detail);
        }
        List<Double> dbh = points(s, "dbh", Range.POSITIVE);
        List<Double> columns = points(s, entry.id(), Range.POSITIVE);
        List<List<Double>> volumes = s.at("volumes").requiredNumberRows("volumes", Range.NOT_NEGATIVE);
        boolean usable = !dbh.isEmpty() && !columns.isEmpty() && isFull(s, dbh, entry, columns, volumes);
        return usable ? Optional.of(new VolumeTable(dbh, entry, columns, volumes)) : Optional.empty();
    }

    /** What the table goes by. */
    static Entry entry(Stated s) {
        boolean logs = s.has("logs");
        return logs && !s.has("height") ? Entry.LOGS : Entry.HEIGHT;
    }

    /** Points that increase; empty if they do not, which is noted. */
    private static List<Double> points(Stated s, String key, Range range) {
        List<Double> points = s.at(key).requiredNumbers(key, range);
        if (points.isEmpty() || VolumeTable.increases(points)) {
            return points;
        }
        String detail =
                s.at(key).path() + "." + key + " needs two points or more, each larger than the one before: sort"
                        + " them, and the volumes with them";
        s.at(key).problem(Rule.DESIGN_VALUE, key, points.toString(), detail);
        return List.of();
    }

    private static boolean isFull(
            Stated s, List<Double> dbh, Entry entry, List<Double> columns, List<List<Double>> volumes) {
        if (volumes.isEmpty()) {
            return false; // noted already
        }
        String path = s.at("volumes").path() + ".volumes has ";
        if (volumes.size() != dbh.size()) {
            String rows = volumes.size() + (volumes.size() == 1 ? " row" : " rows");
            note(s, rows, path + rows + " for " + dbh.size() + " points of dbh: write one row for each dbh");
            return false;
        }
        for (int i = 0; i < dbh.size(); i++) {
            int width = volumes.get(i).size();
            if (width != columns.size()) {
                String found = width + (width == 1 ? " volume" : " volumes");
                note(
                        s,
                        found,
                        path + found + " in the row of dbh " + Section.show(dbh.get(i)) + " for " + columns.size()
                                + " points of " + entry.id() + ": write one volume for each");
                return false;
            }
        }
        return true;
    }

    private static void note(Section table, String value, String detail) {
        table.problem(Rule.DESIGN_VALUE, "volumes", value, detail);
    }

    private static void note(Stated s, String value, String detail) {
        note(s.at("volumes"), value, detail);
    }
}
