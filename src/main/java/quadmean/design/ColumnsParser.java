package quadmean.design;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.model.Rule;
import quadmean.units.AngleScale;
import quadmean.units.Quantity;
import quadmean.units.Unit;

/** Reads {@code [tally.columns]}. */
final class ColumnsParser {
    private static final Map<String, Unit> LENGTHS = Options.of(Unit.of(Quantity.LENGTH), Unit::symbol);
    private static final Map<String, AngleScale> ANGLES = Options.of(AngleScale.values(), AngleScale::id);

    private ColumnsParser() {}

    static Map<ColumnRole, ColumnSpec> parse(Section s) {
        Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(ColumnRole.class);
        for (ColumnRole role : ColumnRole.values()) {
            if (s.has(role.key())) {
                columns.put(role, column(s, role));
            }
        }
        for (ColumnRole needed : List.of(ColumnRole.PLOT, ColumnRole.SPECIES)) {
            if (!columns.containsKey(needed)) {
                s.problem(Rule.DESIGN_MISSING, needed.key(), "", "a tally needs a column for " + needed.key());
            }
        }
        checkThickness(s, columns);
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

    private static void checkThickness(Section s, Map<ColumnRole, ColumnSpec> columns) {
        boolean dbh = columns.containsKey(ColumnRole.DBH);
        boolean girth = columns.containsKey(ColumnRole.GIRTH);
        if (!dbh && !girth) {
            s.problem(Rule.DESIGN_MISSING, "dbh", "", "a tally needs a column for dbh, or for girth");
        } else if (dbh && girth) {
            s.problem(Rule.DESIGN_VALUE, "girth", "", "a tally has a column for dbh or for girth, not for both");
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
        if (top != null && base != null && top.scale() != null && base.scale() != null && top.scale() != base.scale()) {
            s.problem(Rule.DESIGN_VALUE, "base", "", "top and base must be read on the same scale");
        }
    }

    /** A column of lengths under a key that is no role of a tally. */
    static ColumnSpec length(Section s, String key) {
        return column(s, key, ColumnRole.DISTANCE);
    }

    private static ColumnSpec column(Section s, ColumnRole role) {
        return column(s, role.key(), role);
    }

    private static ColumnSpec column(Section s, String key, ColumnRole role) {
        if (!role.measure().hasUnit()) {
            return new ColumnSpec(s.requiredText(key), null, null);
        }
        if (s.isText(key)) {
            String name = s.requiredText(key);
            if (!saysUnit(role, name)) {
                String detail = s.path() + "." + key + " needs a unit: write { name = \"...\", unit = \"...\" }";
                s.problem(Rule.DESIGN_TYPE, key, name, detail);
            }
            return new ColumnSpec(name, null, null);
        }
        Section column = s.table(key);
        String name = column.requiredText("name");
        boolean open = saysUnit(role, name);
        ColumnSpec spec = role.measure() == ColumnRole.Measure.ANGLE
                ? new ColumnSpec(name, null, unit(column, open, ANGLES))
                : new ColumnSpec(name, unit(column, open, LENGTHS), null, entry(column, role));
        column.close();
        return spec;
    }

    /** Whether a header of this name ends with a unit of the right kind. */
    private static boolean saysUnit(ColumnRole role, String name) {
        return role.measure() == ColumnRole.Measure.ANGLE
                ? HeaderUnits.angle(name).isPresent()
                : HeaderUnits.length(name).isPresent();
    }

    private static <T> @Nullable T unit(Section column, boolean isInHeader, Map<String, T> units) {
        Optional<T> unit = isInHeader ? column.choice("unit", units) : column.requiredChoice("unit", units);
        return unit.orElse(null);
    }

    private static ColumnSpec.Entry entry(Section column, ColumnRole role) {
        boolean thickness = role == ColumnRole.DBH || role == ColumnRole.GIRTH;
        return thickness
                ? column.choice("classes", Map.of("midpoint", ColumnSpec.Entry.MIDPOINT))
                        .orElse(ColumnSpec.Entry.PLAIN)
                : ColumnSpec.Entry.PLAIN;
    }
}
