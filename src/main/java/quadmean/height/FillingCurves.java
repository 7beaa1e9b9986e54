package quadmean.height;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quadmean.model.CurveForm;
import quadmean.model.FieldHeight;
import quadmean.model.FillingCurve;
import quadmean.model.HeightSource;
import quadmean.model.Tree;
import quadmean.stats.Robust;

/** The curves of a region, which millions of heights are filled from: no more of them than that takes. */
public final class FillingCurves implements HeightFiller {
    /** Heights are read to a decimetre at best, so no scatter is smaller than half of one (m). */
    private static final double LEAST_SCATTER = 0.05;

    private final Map<String, FillingCurve> bySpecies;

    private FillingCurves(Map<String, FillingCurve> bySpecies) {
        this.bySpecies = bySpecies;
    }

    /** Curves by the species that they fill, {@link SpeciesCurve#POOLED} for those without one of their own. */
    public static FillingCurves of(List<FillingCurve> curves) {
        Map<String, FillingCurve> bySpecies = new TreeMap<>();
        curves.forEach(c -> bySpecies.put(c.species(), c));
        return new FillingCurves(bySpecies);
    }

    /**
     * The curves in use of a table.
     *
     * @param trees the trees that they were fitted to
     */
    public static FillingCurves of(CurveTable table, List<Tree> trees) {
        List<FillingCurve> curves = new ArrayList<>();
        List<SpeciesCurve> searches = new ArrayList<>(table.species());
        searches.add(table.pooled());
        for (SpeciesCurve search : searches) {
            HeightCurve chosen = search.chosen();
            if (chosen != null) {
                curves.add(curve(search.species(), chosen, scatter(search.species(), chosen, trees)));
            }
        }
        return of(curves);
    }

    private static FillingCurve curve(String species, HeightCurve curve, double scatterM) {
        return new FillingCurve(
                species,
                CurveTable.source(curve.scope()),
                curve.form(),
                curve.parameters(),
                curve.ratio().value(),
                curve.units(),
                curve.breastHeight(),
                curve.heights(),
                scatterM,
                curve.minDbhCm(),
                curve.maxDbhCm());
    }

    /**
     * Height of a tree on a curve.
     *
     * @param dbhCm dbh (cm), above 0
     * @return total height (m)
     */
    public static double heightMetres(FillingCurve c, double dbhCm) {
        return HeightCurve.heightMetres(c.form(), c.parameters(), c.ratio(), c.units(), c.breastHeight(), dbhCm);
    }

    /** Number of parameters that a form has. */
    public static int parametersOf(CurveForm form) {
        return CurveModel.of(form).parameters();
    }

    private static double scatter(String species, HeightCurve curve, List<Tree> trees) {
        double[] residuals = trees.stream()
                .filter(t -> t.height() != null
                        && (species.equals(SpeciesCurve.POOLED) || t.species().equals(species)))
                .mapToDouble(t -> CurveChoice.height(t).metres() - curve.heightMetres(t.dbhCm()))
                .toArray();
        return Math.max(LEAST_SCATTER, Robust.sd(residuals, 0));
    }

    /** All curves, by species. */
    public List<FillingCurve> curves() {
        return List.copyOf(bySpecies.values());
    }

    private @Nullable FillingCurve curve(String species) {
        FillingCurve own = bySpecies.get(species);
        return own == null ? bySpecies.get(SpeciesCurve.POOLED) : own;
    }

    @Override
    public HeightedTree fill(Tree tree) {
        FieldHeight field = tree.height();
        if (field != null) {
            return new HeightedTree(tree, field.metres(), field.source());
        }
        FillingCurve curve = curve(tree.species());
        return curve == null
                ? new HeightedTree(tree, Double.NaN, HeightSource.NONE)
                : new HeightedTree(tree, heightMetres(curve, tree.dbhCm()), curve.source());
    }

    /** A measured height too far off its curve, by the scatter of the heights that the curve was fitted to. */
    public Optional<HeightScreen.Outlier> offCurve(Tree tree, double deviations) {
        FillingCurve curve = curve(tree.species());
        FieldHeight field = tree.height();
        if (curve == null || field == null || Double.isNaN(curve.scatterM())) {
            return Optional.empty();
        }
        double expected = heightMetres(curve, tree.dbhCm());
        double off = Math.abs(field.metres() - expected) / curve.scatterM();
        return off > deviations ? Optional.of(new HeightScreen.Outlier(tree, expected, off)) : Optional.empty();
    }
}
