package quadmean.volume;

import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import quadmean.model.TaperSpec;

/** Finds the stem profile of a species: its own, else its group's, else that for all the rest. */
public final class ProfileBook {
    private final CodeBook<TaperSpec> specs;
    private final double breastHeightM;

    private ProfileBook(CodeBook<TaperSpec> specs, double breastHeightM) {
        this.specs = specs;
        this.breastHeightM = breastHeightM;
    }

    /**
     * A book of profiles.
     *
     * @param specs profiles by species code, group, or {@code *}
     * @param groupOf group of each species that has one
     * @param breastHeightM breast height of the cruise (m)
     */
    public static ProfileBook of(Map<String, TaperSpec> specs, Map<String, String> groupOf, double breastHeightM) {
        return new ProfileBook(CodeBook.of(specs, groupOf), breastHeightM);
    }

    /** What serves a species, if there is anything. */
    public Optional<TaperSpec> find(String species) {
        return specs.find(species);
    }

    /**
     * The profile of a tree.
     *
     * @param species species code
     * @param dbhCm dbh outside bark (cm)
     * @param heightM total height, to the tip of a broken tree too (m)
     * @return empty if nothing serves the species, or the form has no profile for such a tree
     */
    public Optional<StemProfile> profile(String species, double dbhCm, double heightM) {
        return find(species).flatMap(spec -> StemProfile.of(spec, dbhCm, heightM, breastHeightM));
    }

    /**
     * Volume inside bark of the whole stem, ground to tip, by the profile of a species.
     *
     * @return m³ of dbh (cm) and total height (m), NaN for a tree that the form has no profile for; empty if nothing
     *     serves the species
     */
    public Optional<DoubleBinaryOperator> stem(String species) {
        return find(species)
                .map(spec -> (dbhCm, heightM) -> StemProfile.of(spec, dbhCm, heightM, breastHeightM)
                        .map(p -> p.volumeM3(0, p.totalHeightM()))
                        .orElse(Double.NaN));
    }
}
