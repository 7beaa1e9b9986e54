package quadmean.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Design;
import quadmean.design.HeaderUnits;
import quadmean.design.TallyFile;
import quadmean.units.AngleScale;
import quadmean.units.Unit;

/**
 * The columns of a tally form: those of the design's tally, in the order of its roles.
 *
 * @param columns columns to be filled in for each tree
 */
record TallyColumns(List<Column> columns) {
    /** What crews write of a tree where the design names no tally yet. */
    private static final List<ColumnRole> USUAL = List.of(
            ColumnRole.TREE,
            ColumnRole.SPECIES,
            ColumnRole.DBH,
            ColumnRole.TOP,
            ColumnRole.BASE,
            ColumnRole.DISTANCE,
            ColumnRole.STATUS);

    TallyColumns {
        columns = List.copyOf(columns);
    }

    /**
     * A column.
     *
     * @param role what it holds
     * @param unit unit to be written in, empty for text and numbers
     * @param header name of the column in the file, empty where there is no file
     */
    record Column(ColumnRole role, String unit, String header) {}

    static TallyColumns of(Design design, AngleScale scale) {
        Map<ColumnRole, Column> columns = new EnumMap<>(ColumnRole.class);
        for (TallyFile tally : design.tallies()) {
            tally.columns().forEach((role, spec) -> columns.putIfAbsent(role, column(role, spec)));
        }
        if (design.tallies().isEmpty()) {
            USUAL.forEach(role -> columns.put(role, new Column(role, unit(role, design, scale), "")));
        }
        // these stand once at the head of the form
        columns.remove(ColumnRole.PLOT);
        columns.remove(ColumnRole.STRATUM);
        return new TallyColumns(new ArrayList<>(columns.values()));
    }

    boolean has(ColumnRole role) {
        return columns.stream().anyMatch(c -> c.role() == role);
    }

    /** The same without the column of one role. */
    TallyColumns without(ColumnRole role) {
        return new TallyColumns(columns.stream().filter(c -> c.role() != role).toList());
    }

    private static Column column(ColumnRole role, ColumnSpec spec) {
        String unit = switch (role.measure()) {
            case LENGTH ->
                java.util.Optional.ofNullable(spec.unit())
                        .or(() -> HeaderUnits.length(spec.name()))
                        .map(Unit::label)
                        .orElse("");
            case ANGLE ->
                java.util.Optional.ofNullable(spec.scale())
                        .or(() -> HeaderUnits.angle(spec.name()))
                        .map(TallyColumns::sign)
                        .orElse("");
            case TEXT, NUMBER -> "";
        };
        return new Column(role, unit, spec.name());
    }

    private static String unit(ColumnRole role, Design design, AngleScale scale) {
        return switch (role.measure()) {
            case LENGTH ->
                (role == ColumnRole.DBH
                                ? design.units().diameter()
                                : design.units().length())
                        .label();
            case ANGLE -> sign(scale);
            case TEXT, NUMBER -> "";
        };
    }

    /** A scale as it stands in the head of a column. */
    static String sign(AngleScale scale) {
        return switch (scale) {
            case PERCENT -> "%";
            case DEGREES -> "°";
            case TOPOGRAPHIC -> "topo";
            case METRES_AT_15 -> "15 m";
            case METRES_AT_20 -> "20 m";
        };
    }

    /** The head of a column in the words of the woods. */
    static String words(ColumnRole role) {
        return switch (role) {
            case STAND -> "stand";
            case PLOT -> "plot";
            case STRATUM -> "stratum";
            case TREE -> "tree no.";
            case SPECIES -> "species";
            case DBH -> "dbh";
            case GIRTH -> "girth";
            case HEIGHT -> "height";
            case TOP -> "top, + or −";
            case BASE -> "base, + or −";
            case DISTANCE -> "distance, level";
            case SLOPE_DISTANCE -> "distance, along slope";
            case GROUND_SLOPE -> "slope of tape";
            case BASE_DISTANCE -> "eye to base";
            case TOP_DISTANCE -> "eye to tip";
            case TOP_2 -> "top again";
            case BASE_2 -> "base again";
            case DISTANCE_2 -> "distance again";
            case MERCHANTABLE_TOP -> "merch. top";
            case MERCHANTABLE_HEIGHT -> "merch. height";
            case STATUS -> "status";
            case BROKEN -> "broken top";
            case POINT_DISTANCE -> "centre to tree, level";
            case RING -> "ring";
            case COUNT -> "count";
            case LOGS -> "16-ft logs";
            case GRADE -> "grade";
            case DEFECT -> "defect (%)";
            case EDGE -> "times at edge";
            case PREDICTION -> "prediction";
        };
    }
}
