package quadmean.field;

import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.model.Policy;
import quadmean.units.Quantity;
import quadmean.units.Unit;

/**
 * How to read a table of felled trees: a row a tree, or a row a point of a stem where a column of points is named.
 *
 * @param columns what the user says of a column, {@code NAME} or {@code NAME:UNIT}; the rest is read off the header
 * @param badRows what happens to a row that cannot be used: refuse or drop
 */
public record FelledOptions(Map<Measure, String> columns, Policy badRows) {
    public FelledOptions {
        columns = Collections.unmodifiableMap(new TreeMap<>(columns));
        if (badRows == Policy.KEEP) {
            throw new IllegalArgumentException("a row that cannot be used cannot be kept");
        }
    }

    /** Whether each row is a point of a stem, so that volumes have to be summed. */
    public boolean isOfPoints() {
        return columns.containsKey(Measure.AT) || columns.containsKey(Measure.DIAMETER);
    }

    /** Whether the table must have such a column. */
    boolean needs(Measure measure) {
        return switch (measure) {
            case DBH, HEIGHT -> true;
            case VOLUME -> !isOfPoints();
            case TREE, AT, DIAMETER -> isOfPoints();
            case SPECIES, BARK -> false;
        };
    }

    /** What a column holds. */
    public enum Measure {
        TREE("tree", "name", null, 0, ColumnRole.TREE),
        SPECIES("species", "species", null, 0, ColumnRole.SPECIES),
        DBH("dbh", "dbh", Unit.CENTIMETRE, 1_200, ColumnRole.DBH),
        HEIGHT("height", "height", Unit.METRE, 130, ColumnRole.HEIGHT),
        VOLUME("volume", "volume", Unit.CUBIC_METRE, 2_000, ColumnRole.COUNT),
        /** Height of a point of the stem above ground. */
        AT("at", "height above ground", Unit.METRE, 130, ColumnRole.POINT_DISTANCE),
        DIAMETER("diameter", "diameter", Unit.CENTIMETRE, 1_200, ColumnRole.GIRTH),
        /** Bark at that point, on one side. */
        BARK("bark", "bark thickness", Unit.CENTIMETRE, 100, ColumnRole.BASE_DISTANCE);

        private final String option;
        private final String word;
        private final @Nullable Unit inside;
        private final double most;
        private final ColumnRole role;

        Measure(String option, String word, @Nullable Unit inside, double most, ColumnRole role) {
            this.option = option;
            this.word = word;
            this.inside = inside;
            this.most = most;
            this.role = role;
        }

        /** Its option on the command line, without dashes. */
        public String option() {
            return option;
        }

        /** What it measures; null for names. */
        public @Nullable Quantity quantity() {
            return inside == null ? null : inside.quantity();
        }

        /** What messages call it. */
        String word() {
            return word;
        }

        /** The unit it has inside. */
        Unit inside() {
            return Objects.requireNonNull(inside);
        }

        /** No tree has as much (from memory). */
        double most() {
            return most;
        }

        /** Whether zero makes sense: a point on the ground, a stem without bark. */
        boolean isFromZero() {
            return this == AT || this == BARK;
        }

        /** Whether it belongs to a point of the stem, not to the tree. */
        boolean isOfPoint() {
            return this == AT || this == DIAMETER || this == BARK;
        }

        /** The role under which rows of tallies are read; what tallies have not goes under one of the same kind. */
        ColumnRole role() {
            return role;
        }
    }
}
