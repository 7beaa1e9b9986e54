package quadmean.volume;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import quadmean.model.VolumeSpec;

/** Finds the equation of a species: its own, else its group's, else that for all the rest. */
public final class EquationBook {
    private static final String ALL_THE_REST = "*";

    private final Map<String, TreeEquation> byCode = new LinkedHashMap<>();
    private final Map<String, String> groupOf;

    private EquationBook(Map<String, VolumeSpec> specs, Map<String, String> groupOf) {
        specs.forEach((code, spec) -> byCode.put(code, TreeEquation.of(spec)));
        this.groupOf = Map.copyOf(groupOf);
    }

    /**
     * A book of equations.
     *
     * @param specs equations by species code, group, or {@code *}
     * @param groupOf group of each species that has one
     */
    public static EquationBook of(Map<String, VolumeSpec> specs, Map<String, String> groupOf) {
        return new EquationBook(specs, groupOf);
    }

    /** Whether the book has no equation at all. */
    public boolean isEmpty() {
        return byCode.isEmpty();
    }

    /** The equation of a species, if there is one. */
    public Optional<TreeEquation> find(String species) {
        TreeEquation own = byCode.get(species);
        if (own == null) {
            own = byCode.get(groupOf.getOrDefault(species, ALL_THE_REST));
        }
        return Optional.ofNullable(own == null ? byCode.get(ALL_THE_REST) : own);
    }
}
