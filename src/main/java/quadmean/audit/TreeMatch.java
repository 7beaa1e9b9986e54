package quadmean.audit;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quadmean.model.Tree;

/**
 * A tree as the crew and the checker have it, or as only one of them does.
 *
 * @param plot plot number
 * @param crew crew of the plot
 * @param kind how the two were matched
 * @param cruised the crew's tree; null if the crew does not have it
 * @param checked the checker's tree; null if the checker does not have it
 */
public record TreeMatch(
        String plot,
        String crew,
        Kind kind,
        @Nullable Tree cruised,
        @Nullable Tree checked) {

    /** How trees are matched, the surest first. */
    public enum Kind {
        NUMBER("number", "tree number"),
        SPECIES_AND_SIZE("species_and_size", "species and nearest dbh"),
        /** Trees without numbers whose species differ. */
        SIZE("size", "nearest dbh, species differ"),
        /** The checker has it and the crew does not. */
        MISSED("missed", "missed by the crew"),
        /** The crew has it and the checker does not. */
        EXTRA("extra", "not found by the checker");

        private final String id;
        private final String label;

        Kind(String id, String label) {
            this.id = id;
            this.label = label;
        }

        /** The name used in JSON and CSV. */
        public String id() {
            return id;
        }

        /** The name used on pages. */
        public String label() {
            return label;
        }
    }

    /** Whether both have it. */
    public boolean isPair() {
        return cruised != null && checked != null;
    }

    /** The crew's tree of a pair. */
    public Tree crewTree() {
        return Objects.requireNonNull(cruised, "the crew does not have the tree");
    }

    /** The checker's tree of a pair. */
    public Tree checkTree() {
        return Objects.requireNonNull(checked, "the checker does not have the tree");
    }

    /** Plot and tree number, the crew's where there is one. */
    public String label() {
        return cruised != null ? cruised.label() : checkTree().label();
    }
}
