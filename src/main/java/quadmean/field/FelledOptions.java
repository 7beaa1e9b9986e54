package quadmean.field;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quadmean.model.Policy;
import quadmean.units.Quantity;

/**
 * How to read a table of felled trees.
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

    /** What a column holds. */
    public enum Measure {
        TREE("tree", null),
        SPECIES("species", null),
        DBH("dbh", Quantity.LENGTH),
        HEIGHT("height", Quantity.LENGTH),
        VOLUME("volume", Quantity.VOLUME);

        private final String option;
        private final @Nullable Quantity quantity;

        Measure(String option, @Nullable Quantity quantity) {
            this.option = option;
            this.quantity = quantity;
        }

        /** Its option on the command line, without dashes. */
        public String option() {
            return option;
        }

        /** What it measures; null for names. */
        public @Nullable Quantity quantity() {
            return quantity;
        }
    }
}
