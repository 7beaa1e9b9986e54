package quadmean.model;

import java.util.List;
import java.util.Set;

/**
 * A product that logs are cut for.
 *
 * @param code short code
 * @param name name for people
 * @param species species codes or groups that it is cut from; empty for all
 * @param grades grades of tree that it is cut from; empty for all
 * @param lengthsM lengths it is cut to (m), the one preferred most first, without trim
 * @param minSmallEndCm smallest diameter inside bark at the small end (cm)
 * @param maxLargeEndCm largest diameter inside bark at the large end (cm); infinite if there is no limit
 * @param measure what its logs are measured in
 * @param defect share of a log taken off for defect that cannot be seen on the tree, in [0, 1]
 */
public record Product(
        String code,
        String name,
        Set<String> species,
        Set<String> grades,
        List<Double> lengthsM,
        double minSmallEndCm,
        double maxLargeEndCm,
        Measure measure,
        double defect) {
    public Product {
        species = Set.copyOf(species);
        grades = Set.copyOf(grades);
        lengthsM = List.copyOf(lengthsM);
    }

    /** What logs are measured in. */
    public enum Measure {
        /** Board feet where there is a log rule, and cubic volume. */
        BOARD_FEET("board_feet"),
        /** Cubic volume alone, as for pulpwood: they add no board feet. */
        CUBIC("cubic");

        private final String id;

        Measure(String id) {
            this.id = id;
        }

        /** The word used in design files. */
        public String id() {
            return id;
        }
    }
}
