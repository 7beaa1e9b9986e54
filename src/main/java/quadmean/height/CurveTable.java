package quadmean.height;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.model.Tree;

/** The curves of a stand, species by species, and the filling of heights from them. */
public final class CurveTable {
    private final SpeciesCurve pooled;
    private final Map<String, SpeciesCurve> bySpecies;

    private CurveTable(SpeciesCurve pooled, Map<String, SpeciesCurve> bySpecies) {
        this.pooled = pooled;
        this.bySpecies = bySpecies;
    }

    /**
     * Fits the curves: one for each species with enough heights, one for all together.
     *
     * @param trees every tree; those with a field height are fitted to
     */
    public static CurveTable fit(List<Tree> trees, HeightSettings settings) {
        SpeciesCurve pooled = CurveChoice.pooled(trees, settings);
        Map<String, SpeciesCurve> bySpecies = new LinkedHashMap<>();
        Map<String, List<Tree>> groups = new TreeMap<>();
        for (Tree tree : trees) {
            groups.computeIfAbsent(tree.species(), k -> new java.util.ArrayList<>())
                    .add(tree);
        }
        groups.forEach(
                (species, group) -> bySpecies.put(species, CurveChoice.forSpecies(species, group, pooled, settings)));
        return new CurveTable(pooled, bySpecies);
    }

    /** The curve of all species together. */
    public SpeciesCurve pooled() {
        return pooled;
    }

    /** The curve searches in order of species code. */
    public List<SpeciesCurve> species() {
        return List.copyOf(bySpecies.values());
    }

    /** The curve in use for a species, null if there is none. */
    public @Nullable HeightCurve curve(String species) {
        SpeciesCurve found = bySpecies.get(species);
        return found == null ? pooled.chosen() : found.chosen();
    }

    /** The tree with its field height, or one filled from the curve of its species. */
    public HeightedTree fill(Tree tree) {
        FieldHeight field = tree.height();
        if (field != null) {
            return new HeightedTree(tree, field.metres(), field.source());
        }
        HeightCurve curve = curve(tree.species());
        if (curve == null) {
            return new HeightedTree(tree, Double.NaN, HeightSource.NONE);
        }
        HeightSource source =
                curve.species().equals(SpeciesCurve.POOLED) ? HeightSource.POOLED_CURVE : HeightSource.SPECIES_CURVE;
        return new HeightedTree(tree, curve.heightMetres(tree.dbhCm()), source);
    }
}
