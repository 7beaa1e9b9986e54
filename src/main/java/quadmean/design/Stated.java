package quadmean.design;

import java.util.Map;
import java.util.Optional;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.units.Quantity;
import quadmean.units.Unit;

/**
 * What a table states of an equation. A set of the library shares the rest with its collection; in a design a table
 * stands for itself.
 *
 * @param own the table
 * @param shared where a key is looked for that {@code own} does not have
 */
record Stated(Section own, Section shared) {
    private static final Map<String, Standing> STANDINGS =
            Options.of(Standing.values(), s -> s.label().replace(' ', '_'));

    static Stated alone(Section table) {
        return new Stated(table, table);
    }

    /** The table to ask for a key. */
    Section at(String key) {
        return own.has(key) ? own : shared;
    }

    boolean has(String key) {
        return at(key).has(key);
    }

    <T> Optional<T> required(String key, Map<String, T> options) {
        return at(key).requiredChoice(key, options);
    }

    double required(String key, Range range) {
        return at(key).requiredNumber(key, range);
    }

    /** A unit; the first of its quantity stands in for one that is missing or wrong, which is noted. */
    Unit unit(String key, Quantity quantity) {
        Map<String, Unit> units = Options.of(Unit.of(quantity), Unit::symbol);
        return required(key, units).orElse(Unit.of(quantity).get(0));
    }

    /** Source and standing, both required. */
    Provenance provenance() {
        String source = at("source").requiredText("source");
        Standing standing = required("standing", STANDINGS).orElse(Standing.FROM_MEMORY);
        return new Provenance(source.isBlank() ? "missing" : source, standing);
    }
}
