package quadmean.design;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.design.KindsSettings.StemMapFile;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** Reads what {@code [plan.kinds]} says of a map of stems. */
final class StemMapParser {
    private static final List<String> COLUMNS = List.of("x", "y", "dbh");
    private static final List<ColumnRole> ROLES = List.of(StemMapFile.X, StemMapFile.Y, ColumnRole.DBH);

    private final Section s;

    StemMapParser(Section s) {
        this.s = s;
    }

    Optional<StemMapFile> parse(Path designFile) {
        s.knows("columns", "corners");
        if (!s.has("stem_map")) {
            for (String key : List.of("columns", "corners")) {
                if (s.has(key)) {
                    s.problem(
                            Rule.DESIGN_MISSING,
                            "stem_map",
                            "",
                            key + " goes with stem_map, the file of a map of stems");
                }
            }
            return Optional.empty();
        }
        String written = s.requiredText("stem_map");
        Optional<Path> path = new TallyPaths(designFile).resolve(s, written);
        Map<ColumnRole, ColumnSpec> columns = columns();
        List<Double> corners = corners(columns);
        return path.map(p ->
                new StemMapFile(new TallyFile(p, String.valueOf(p.getFileName()), TallyFormat.OPEN, columns), corners));
    }

    private Map<ColumnRole, ColumnSpec> columns() {
        Section section = s.requiredTable("columns");
        Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(ColumnRole.class);
        for (int i = 0; i < COLUMNS.size(); i++) {
            String key = COLUMNS.get(i);
            if (section.has(key)) {
                columns.put(ROLES.get(i), ColumnsParser.length(section, key));
            } else if (s.isTable("columns")) {
                section.problem(Rule.DESIGN_MISSING, key, "", "a map of stems needs a column for " + key);
            }
        }
        section.close();
        return columns;
    }

    /** Corners in metres; they are written in the units of the columns. */
    private List<Double> corners(Map<ColumnRole, ColumnSpec> columns) {
        if (!s.has("corners")) {
            return List.of();
        }
        List<Double> corners = s.requiredNumbers("corners", Range.FINITE);
        boolean apart = corners.size() == 4 && corners.get(0) < corners.get(2) && corners.get(1) < corners.get(3);
        if (!corners.isEmpty() && !apart) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "corners",
                    corners.toString(),
                    "corners are x and y of the lower left and then of the upper right corner, in the units of the columns,"
                            + " such as [0, 0, 200, 200]");
        }
        if (!apart) {
            return List.of();
        }
        Unit x = unit(columns.get(StemMapFile.X));
        Unit y = unit(columns.get(StemMapFile.Y));
        return List.of(
                x.convert(corners.get(0), Unit.METRE),
                y.convert(corners.get(1), Unit.METRE),
                x.convert(corners.get(2), Unit.METRE),
                y.convert(corners.get(3), Unit.METRE));
    }

    /** The unit of a column; metres stand in where it has none, which is a problem already. */
    private static Unit unit(@Nullable ColumnSpec column) {
        if (column == null) {
            return Unit.METRE;
        }
        return column.unit() == null ? HeaderUnits.length(column.name()).orElse(Unit.METRE) : column.unit();
    }
}
