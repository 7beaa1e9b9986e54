package quadmean.design;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quadmean.model.Rule;
import quadmean.units.AngleScale;
import quadmean.units.Quantity;
import quadmean.units.Unit;

/** Reads {@code [[tally]]} and {@code [tally.columns]}. */
final class TallyParser {
    private static final Map<String, Character> SEPARATORS =
            Options.of(List.of(',', ';', '\t', '|'), c -> c == '\t' ? "tab" : c.toString());
    private static final Map<String, Character> DECIMALS = Options.of(List.of('.', ','), Object::toString);

    private TallyParser() {}

    static List<TallyFile> parse(Section root, Path designFile) {
        TallyPaths paths = new TallyPaths(designFile);
        List<TallyFile> files = new ArrayList<>();
        List<String> written = new ArrayList<>();
        for (Section s : root.tableList("tally")) {
            String name = s.requiredText("file");
            Path path = paths.resolve(s, name).orElse(designFile);
            TallyPaths.checkNew(s, path, name, files);
            char separator = s.choice("separator", SEPARATORS).orElse(',');
            char decimal = s.choice("decimal", DECIMALS).orElse('.');
            if (separator == decimal) {
                s.problem(Rule.DESIGN_VALUE, "decimal", ",", "separator and decimal mark cannot both be a comma");
            }
            Section columns = s.requiredTable("columns");
            files.add(new TallyFile(path, fileName(path), separator, decimal, columns(columns)));
            written.add(name);
            columns.close();
            s.close();
        }
        return TallyPaths.named(files, written);
    }

    private static String fileName(Path path) {
        Path name = path.getFileName();
        return name == null ? path.toString() : name.toString();
    }

    private static Map<ColumnRole, ColumnSpec> columns(Section s) {
        Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(ColumnRole.class);
        for (ColumnRole role : ColumnRole.values()) {
            if (s.has(role.key())) {
                columns.put(role, column(s, role));
            }
        }
        for (ColumnRole needed : List.of(ColumnRole.PLOT, ColumnRole.SPECIES, ColumnRole.DBH)) {
            if (!columns.containsKey(needed)) {
                s.problem(Rule.DESIGN_MISSING, needed.key(), "", "a tally needs a column for " + needed.key());
            }
        }
        checkReadings(s, columns);
        checkNames(s, columns);
        checkScales(s, columns);
        return columns;
    }

    /** Readings are of use only together: tip and base, and one way to the distance. */
    private static void checkReadings(Section s, Map<ColumnRole, ColumnSpec> columns) {
        together(s, columns, ColumnRole.TOP, ColumnRole.BASE);
        together(s, columns, ColumnRole.TOP_2, ColumnRole.BASE_2);
        together(s, columns, ColumnRole.SLOPE_DISTANCE, ColumnRole.GROUND_SLOPE);
        boolean laser = columns.containsKey(ColumnRole.TOP_DISTANCE);
        if (laser && !columns.containsKey(ColumnRole.BASE_DISTANCE)) {
            s.problem(Rule.DESIGN_MISSING, "top_distance", "", "a laser's top_distance needs base_distance beside it");
        }
        List<ColumnRole> ways = List.of(ColumnRole.DISTANCE, ColumnRole.SLOPE_DISTANCE, ColumnRole.BASE_DISTANCE);
        boolean measured = ways.stream().anyMatch(columns::containsKey);
        boolean pair = columns.containsKey(ColumnRole.TOP) == columns.containsKey(ColumnRole.BASE);
        if (pair && columns.containsKey(ColumnRole.TOP) != measured) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "top",
                    "",
                    "readings need top, base and a distance: distance, slope_distance with ground_slope, or"
                            + " base_distance");
        }
        for (ColumnRole further : List.of(ColumnRole.TOP_2, ColumnRole.MERCHANTABLE_TOP)) {
            if (columns.containsKey(further) && !columns.containsKey(ColumnRole.TOP)) {
                s.problem(Rule.DESIGN_MISSING, further.key(), "", further.key() + " needs top and base beside it");
            }
        }
    }

    private static void together(Section s, Map<ColumnRole, ColumnSpec> columns, ColumnRole one, ColumnRole other) {
        if (columns.containsKey(one) != columns.containsKey(other)) {
            s.problem(Rule.DESIGN_MISSING, one.key(), "", one.key() + " and " + other.key() + " go together");
        }
    }

    /** Notes a column that is said to hold two things: one of them is a slip. */
    private static void checkNames(Section s, Map<ColumnRole, ColumnSpec> columns) {
        Map<String, ColumnRole> roles = new HashMap<>();
        columns.forEach((role, spec) -> {
            ColumnRole other = spec.name().isEmpty() ? null : roles.putIfAbsent(spec.name(), role);
            if (other != null) {
                s.problem(
                        Rule.DESIGN_VALUE,
                        role.key(),
                        spec.name(),
                        "the column \"" + spec.name() + "\" holds " + other.key() + " already");
            }
        });
    }

    private static void checkScales(Section s, Map<ColumnRole, ColumnSpec> columns) {
        ColumnSpec top = columns.get(ColumnRole.TOP);
        ColumnSpec base = columns.get(ColumnRole.BASE);
        if (top != null && base != null && top.scale() != base.scale()) {
            s.problem(Rule.DESIGN_VALUE, "base", "", "top and base must be read on the same scale");
        }
    }

    private static ColumnSpec column(Section s, ColumnRole role) {
        if (role.measure() == ColumnRole.Measure.TEXT) {
            return new ColumnSpec(s.requiredText(role.key()), null, null);
        }
        if (s.isText(role.key())) {
            s.problem(
                    Rule.DESIGN_TYPE,
                    role.key(),
                    s.requiredText(role.key()),
                    s.path() + "." + role.key() + " needs a unit: write { name = \"...\", unit = \"...\" }");
            return new ColumnSpec("", Unit.METRE, AngleScale.PERCENT);
        }
        Section column = s.table(role.key());
        ColumnSpec spec = role.measure() == ColumnRole.Measure.LENGTH
                ? new ColumnSpec(column.requiredText("name"), length(column), null)
                : new ColumnSpec(column.requiredText("name"), null, angle(column));
        column.close();
        return spec;
    }

    private static Unit length(Section column) {
        return column.requiredChoice("unit", Options.of(Unit.of(Quantity.LENGTH), Unit::symbol))
                .orElse(Unit.METRE);
    }

    private static AngleScale angle(Section column) {
        return column.requiredChoice("unit", Options.of(AngleScale.values(), AngleScale::id))
                .orElse(AngleScale.PERCENT);
    }
}
