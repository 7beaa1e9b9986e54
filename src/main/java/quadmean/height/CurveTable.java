package quadmean.height;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quadmean.model.CurveForm;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.model.Progress;
import quadmean.model.Tree;

/** The curves of a stand, species by species, and the filling of heights from them. */
public final class CurveTable implements HeightFiller {
    private final SpeciesCurve pooled;
    private final Map<String, SpeciesCurve> byGroup;
    private final Map<String, SpeciesCurve> bySpecies;
    private final Map<String, String> groupBySpecies;

    private CurveTable(
            SpeciesCurve pooled,
            Map<String, SpeciesCurve> byGroup,
            Map<String, SpeciesCurve> bySpecies,
            Map<String, String> groupBySpecies) {
        this.pooled = pooled;
        this.byGroup = byGroup;
        this.bySpecies = bySpecies;
        this.groupBySpecies = groupBySpecies;
    }

    /**
     * Fits the curves: one for each species with enough heights, one for each group of species, one for all together.
     *
     * @param trees every tree; those with a field height are fitted to
     */
    public static CurveTable fit(List<Tree> trees, HeightSettings settings) {
        return fit(trees, settings, Progress.SILENT);
    }

    /**
     * The same, telling how far it has come.
     *
     * @param progress told of each search done
     */
    public static CurveTable fit(List<Tree> trees, HeightSettings settings, Progress progress) {
        return fit(trees, settings, List.of(CurveForm.values()), progress);
    }

    static CurveTable fit(List<Tree> trees, HeightSettings settings, List<CurveForm> forms) {
        return fit(trees, settings, forms, Progress.SILENT);
    }

    private static CurveTable fit(List<Tree> trees, HeightSettings settings, List<CurveForm> forms, Progress progress) {
        return fit(trees, trees, settings, forms, progress);
    }

    /**
     * Fits the curves where heights are many: that of all species together, which hardly a tree is filled from, to some of the trees.
     *
     * @param forPooled trees for the curve of all species together
     */
    public static CurveTable fit(List<Tree> trees, List<Tree> forPooled, HeightSettings settings) {
        return fit(trees, forPooled, settings, List.of(CurveForm.values()), Progress.SILENT);
    }

    private static CurveTable fit(
            List<Tree> trees, List<Tree> forPooled, HeightSettings settings, List<CurveForm> forms, Progress progress) {
        CurveChoice choice = new CurveChoice(settings, forms);
        Map<String, List<Tree>> groups =
                parted(trees, t -> settings.groupBySpecies().getOrDefault(t.species(), ""));
        groups.remove("");
        Map<String, List<Tree>> kinds = parted(trees, Tree::species);
        int searches = 1 + groups.size() + kinds.size();
        SpeciesCurve pooled = choice.pooled(forPooled);
        progress.report(Progress.Work.CURVES, 1, searches);
        Map<String, SpeciesCurve> byGroup = new LinkedHashMap<>();
        groups.forEach((group, members) -> {
            byGroup.put(group, choice.search(group, CurveScope.GROUP, members, pooled));
            progress.report(Progress.Work.CURVES, 1 + byGroup.size(), searches);
        });
        Map<String, SpeciesCurve> bySpecies = new LinkedHashMap<>();
        kinds.forEach((species, members) -> {
            SpeciesCurve lender = byGroup.getOrDefault(settings.groupBySpecies().getOrDefault(species, ""), pooled);
            bySpecies.put(species, choice.search(species, CurveScope.SPECIES, members, lender));
            progress.report(Progress.Work.CURVES, 1 + byGroup.size() + bySpecies.size(), searches);
        });
        return new CurveTable(pooled, byGroup, bySpecies, settings.groupBySpecies());
    }

    private static Map<String, List<Tree>> parted(List<Tree> trees, Function<Tree, String> by) {
        return trees.stream().collect(Collectors.groupingBy(by, TreeMap::new, Collectors.toList()));
    }

    /** The curve of all species together. */
    public SpeciesCurve pooled() {
        return pooled;
    }

    /** The curve searches of groups in order of their names. */
    public List<SpeciesCurve> groups() {
        return List.copyOf(byGroup.values());
    }

    /** The curve searches in order of species code. */
    public List<SpeciesCurve> species() {
        return List.copyOf(bySpecies.values());
    }

    /** All curve searches: the pooled one, groups, species. */
    public List<SpeciesCurve> searches() {
        List<SpeciesCurve> all = new ArrayList<>(List.of(pooled));
        all.addAll(byGroup.values());
        all.addAll(bySpecies.values());
        return all;
    }

    /** The curve in use for a species, null if there is none. */
    public @Nullable HeightCurve curve(String species) {
        return search(species).chosen();
    }

    private SpeciesCurve search(String species) {
        return bySpecies.getOrDefault(species, pooled);
    }

    /** The tree with its field height, or one filled from the curve of its species, calibrated to its plot where it can be. */
    @Override
    public HeightedTree fill(Tree tree) {
        FieldHeight field = tree.height();
        if (field != null) {
            return new HeightedTree(tree, field.metres(), field.source());
        }
        SpeciesCurve search = search(tree.species());
        HeightCurve curve = search.chosen();
        if (curve == null) {
            return new HeightedTree(tree, Double.NaN, HeightSource.NONE);
        }
        boolean isExtrapolated = curve.isExtrapolated(tree.dbhCm());
        PlotCalibration calibration = search.used();
        if (calibration != null && calibration.covers(tree.plot())) {
            HeightPrediction p = calibration.predict(tree.plot(), tree.dbhCm());
            return HeightedTree.filled(tree, p, HeightSource.CALIBRATED_CURVE, isExtrapolated);
        }
        return HeightedTree.filled(tree, curve.predict(tree.dbhCm()), source(curve), isExtrapolated);
    }

    /** What the filled height of a tree shares with other trees; nothing where it has a field height, or no curve. */
    public List<SharedError> sharedErrors(Tree tree) {
        SpeciesCurve search = search(tree.species());
        HeightCurve curve = search.chosen();
        if (tree.height() != null || curve == null) {
            return List.of();
        }
        PlotCalibration calibration = search.used();
        return calibration != null && calibration.covers(tree.plot())
                ? calibration.sharedErrors(tree.plot(), tree.dbhCm(), search.species())
                : curve.sharedErrors(tree.dbhCm(), search.species());
    }

    /** What a measured tree moves in the curves that it was fitted to: those of all species, of its group, and its own. */
    public List<Influence> influences(Tree tree) {
        FieldHeight field = tree.height();
        if (field == null) {
            return List.of();
        }
        List<Influence> influences = new ArrayList<>();
        for (SpeciesCurve search : searches()) {
            HeightCurve curve = search.chosen();
            if (curve == null || !isFittedTo(search, tree)) {
                continue;
            }
            if (search.isOwn()) {
                influences.add(curve.influence(tree.dbhCm(), field.metres()));
            } else if (curve.ratio().se() > 0) {
                influences.add(curve.ratioInfluence(search.species(), tree.dbhCm(), field.metres()));
            }
        }
        return influences;
    }

    private boolean isFittedTo(SpeciesCurve search, Tree tree) {
        return switch (search.scope()) {
            case POOLED -> true;
            case GROUP -> search.species().equals(groupBySpecies.get(tree.species()));
            case SPECIES -> search.species().equals(tree.species());
        };
    }

    /**
     * The same curves fitted again to other trees: each species and group keeps the form and the scope that it has here. Where a
     * curve cannot be fitted to the trees, it stays as it is.
     *
     * @param trees every tree, those with a field height are fitted to
     */
    public CurveTable refit(List<Tree> trees, HeightSettings settings) {
        return CurveRefit.of(this, trees, settings);
    }

    /** The same table with other curves. */
    CurveTable with(
            SpeciesCurve otherPooled, Map<String, SpeciesCurve> otherGroups, Map<String, SpeciesCurve> otherSpecies) {
        return new CurveTable(otherPooled, otherGroups, otherSpecies, groupBySpecies);
    }

    Map<String, SpeciesCurve> byGroup() {
        return byGroup;
    }

    Map<String, SpeciesCurve> bySpecies() {
        return bySpecies;
    }

    private static HeightSource source(HeightCurve curve) {
        return source(curve.scope());
    }

    static HeightSource source(CurveScope scope) {
        return switch (scope) {
            case SPECIES -> HeightSource.SPECIES_CURVE;
            case GROUP -> HeightSource.GROUP_CURVE;
            case POOLED -> HeightSource.POOLED_CURVE;
        };
    }
}
