package quadmean.volume;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Finds what a design states for a species: for itself, else for its group, else for all the rest.
 *
 * @param <T> what it states
 */
public final class CodeBook<T> {
    private static final String ALL_THE_REST = "*";

    private final Map<String, T> byCode;
    private final Map<String, String> groupOf;

    private CodeBook(Map<String, T> byCode, Map<String, String> groupOf) {
        this.byCode = Collections.unmodifiableMap(new LinkedHashMap<>(byCode));
        this.groupOf = Map.copyOf(groupOf);
    }

    /**
     * A book.
     *
     * @param byCode entries by species code, group, or {@code *}
     * @param groupOf group of each species that has one
     */
    public static <T> CodeBook<T> of(Map<String, T> byCode, Map<String, String> groupOf) {
        return new CodeBook<>(byCode, groupOf);
    }

    /** Whether the book has no entry at all. */
    public boolean isEmpty() {
        return byCode.isEmpty();
    }

    /** All entries, as the design has them. */
    public Collection<T> entries() {
        return byCode.values();
    }

    /** The entry of a species, if there is one. */
    public Optional<T> find(String species) {
        T own = byCode.get(species);
        if (own == null) {
            own = byCode.get(groupOf.getOrDefault(species, ALL_THE_REST));
        }
        return Optional.ofNullable(own == null ? byCode.get(ALL_THE_REST) : own);
    }
}
