package quadmean.volume;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;

/** Finds the equation of a species: its own, else its group's, else that for all the rest. */
public final class EquationBook {
    private final CodeBook<VolumeSpec> specs;
    private final Function<String, Optional<DoubleBinaryOperator>> stems;
    private final Map<String, Optional<TreeEquation>> bySpecies = new ConcurrentHashMap<>();

    private EquationBook(CodeBook<VolumeSpec> specs, Function<String, Optional<DoubleBinaryOperator>> stems) {
        this.specs = specs;
        this.stems = stems;
    }

    /**
     * A book of equations without stem profiles; those of the form {@link VolumeForm#TAPER} then give no volume.
     *
     * @param specs equations by species code, group, or {@code *}
     * @param groupOf group of each species that has one
     */
    public static EquationBook of(Map<String, VolumeSpec> specs, Map<String, String> groupOf) {
        return of(specs, groupOf, species -> Optional.empty());
    }

    /**
     * A book of equations.
     *
     * @param specs equations by species code, group, or {@code *}
     * @param groupOf group of each species that has one
     * @param stems volume of the stem (m³) of dbh (cm) and height (m) by the profile of a species, where it has one
     */
    public static EquationBook of(
            Map<String, VolumeSpec> specs,
            Map<String, String> groupOf,
            Function<String, Optional<DoubleBinaryOperator>> stems) {
        return new EquationBook(CodeBook.of(specs, groupOf), stems);
    }

    /** Whether the book has no equation at all. */
    public boolean isEmpty() {
        return specs.isEmpty();
    }

    /** The equation of a species, if there is one. */
    public Optional<TreeEquation> find(String species) {
        // a look without a lock serves all but the first tree of a species
        Optional<TreeEquation> known = bySpecies.get(species);
        return known == null ? bySpecies.computeIfAbsent(species, this::equation) : known;
    }

    private Optional<TreeEquation> equation(String species) {
        return specs.find(species).map(spec -> {
            Optional<DoubleBinaryOperator> stem =
                    spec.form() == VolumeForm.TAPER ? stems.apply(species) : Optional.empty();
            return stem.map(s -> TreeEquation.of(spec, s)).orElseGet(() -> TreeEquation.of(spec));
        });
    }
}
