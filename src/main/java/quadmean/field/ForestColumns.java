package quadmean.field;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quadmean.design.HeaderUnits;
import quadmean.model.ForestData.Kind;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** The columns of a file of a forest, by their names. */
final class ForestColumns {

    private final Map<Role, Column> columns;
    private final Kind kind;
    private final int width;

    private ForestColumns(Map<Role, Column> columns, Kind kind, int width) {
        this.columns = columns;
        this.kind = kind;
        this.width = width;
    }

    /** What a column may hold. */
    enum Role {
        X("place to the east", Unit.METRE, Set.of("x", "east", "easting")),
        Y("place to the north", Unit.METRE, Set.of("y", "north", "northing")),
        DBH("dbh", Unit.CENTIMETRE, Set.of("dbh", "diameter", "diam", "d")),
        HEIGHT("height", Unit.METRE, Set.of("height", "ht", "h")),
        TREES(
                "number of trees",
                Unit.TREES_PER_HECTARE,
                Set.of("trees_per_ha", "trees_per_ac", "trees per ha", "trees per ac")),
        SPECIES("species", null, Set.of("species", "sp")),
        STRATUM("stratum", null, Set.of("stratum"));

        private final String word;
        private final Unit inside;

        @SuppressWarnings("ImmutableEnumChecker") // a set that nothing changes
        private final Set<String> names;

        Role(String word, @org.jspecify.annotations.Nullable Unit inside, Set<String> names) {
            this.word = word;
            this.inside = inside == null ? Unit.TREE : inside;
            this.names = names;
        }

        String word() {
            return word;
        }

        private boolean isLength() {
            return this != TREES && this != SPECIES && this != STRATUM;
        }
    }

    /**
     * A column in use.
     *
     * @param name its name in the header
     * @param at its place, from 0 on
     * @param unit unit of its numbers
     * @param role what it holds
     */
    record Column(String name, int at, Unit unit, Role role) {
        double toInside(double value) {
            return unit == role.inside ? value : unit.convert(value, role.inside);
        }
    }

    /** Finds the columns; what is missing, there twice or without a unit is noted. */
    static ForestColumns of(String file, List<String> header, List<Problem> problems) {
        Map<Role, Column> found = new EnumMap<>(Role.class);
        for (int i = 0; i < header.size(); i++) {
            String name = header.get(i).strip();
            Optional<Role> role = role(name);
            if (role.isEmpty()) {
                continue;
            }
            Optional<Unit> unit = unit(name, role.get());
            if (unit.isEmpty()) {
                problems.add(
                        problem(file, name, "the column says no unit; write it behind the name, as in " + name + "_m"));
            } else if (found.putIfAbsent(role.get(), new Column(name, i, unit.get(), role.get())) != null) {
                problems.add(
                        problem(file, name, "two columns hold the " + role.get().word()));
            }
        }
        Kind kind = found.containsKey(Role.X) || found.containsKey(Role.Y)
                ? Kind.MAP
                : found.containsKey(Role.TREES) ? Kind.STAND_TABLE : Kind.HEIGHTS;
        missing(found, kind).forEach(r -> problems.add(problem(file, "", "there is no column for the " + r.word())));
        return new ForestColumns(found, kind, header.size());
    }

    private static List<Role> missing(Map<Role, Column> found, Kind kind) {
        List<Role> needed = new ArrayList<>(List.of(Role.DBH));
        if (kind == Kind.MAP) {
            needed.addAll(List.of(Role.X, Role.Y));
        } else if (kind == Kind.HEIGHTS) {
            needed.add(Role.HEIGHT);
        }
        return needed.stream().filter(r -> !found.containsKey(r)).toList();
    }

    private static Problem problem(String file, String column, String detail) {
        return new Problem(file, 1, column, "", Rule.FOREST_COLUMN, Policy.REFUSE, detail);
    }

    private static Optional<Role> role(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        String bare = HeaderUnits.bare(plain);
        for (Role role : Role.values()) {
            if (role.names.contains(role.isLength() ? bare : plain)) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }

    private static Optional<Unit> unit(String name, Role role) {
        if (role == Role.TREES) {
            boolean perAcre = name.toLowerCase(Locale.ROOT).endsWith("ac");
            return Optional.of(perAcre ? Unit.TREES_PER_ACRE : Unit.TREES_PER_HECTARE);
        }
        return role.isLength() ? HeaderUnits.length(name) : Optional.of(role.inside);
    }

    Kind kind() {
        return kind;
    }

    int width() {
        return width;
    }

    Optional<Column> find(Role role) {
        return Optional.ofNullable(columns.get(role));
    }
}
