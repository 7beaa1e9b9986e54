package quadmean.height;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quadmean.model.CurveForm;
import quadmean.model.Tree;
import quadmean.stats.Robust;

/**
 * Finds heights far off the curve of their species, by a scale that outliers do not move: 1.4826 times the median
 * absolute residual, which for normal scatter is the standard deviation.
 */
public final class HeightScreen {
    private static final int MAX_ROUNDS = 20;

    /** Heights are read to a decimetre at best, so no scatter is smaller than half of one (m). */
    private static final double LEAST_SCALE = 0.05;

    private static final List<CurveForm> FORMS =
            List.of(CurveForm.NASLUND, CurveForm.WYKOFF, CurveForm.CURTIS, CurveForm.POWER, CurveForm.HYPERBOLIC);

    private HeightScreen() {}

    /**
     * A height that does not belong.
     *
     * @param tree the tree
     * @param expectedM height on the curve of the others (m)
     * @param deviations how many robust standard deviations away
     */
    public record Outlier(Tree tree, double expectedM, double deviations) {}

    /**
     * The heights off the curve. Those far off the pooled curve are suspects first, so that a wild height cannot hide
     * behind the curve of its own species that it bent; curves are then fitted without the suspects until no further one
     * is found.
     */
    public static List<Outlier> find(List<Tree> trees, HeightSettings settings) {
        List<Outlier> found = outliers(trees, curves(trees, settings.pooledOnly()), settings);
        Set<Tree> suspects = new HashSet<>();
        int round = 0;
        do {
            suspects.addAll(found.stream().map(Outlier::tree).toList());
            List<Tree> trusted = trees.stream()
                    .map(t -> suspects.contains(t) ? t.withoutHeight() : t)
                    .toList();
            found = outliers(trees, curves(trusted, settings), settings);
            round++;
        } while (round < MAX_ROUNDS
                && !suspects.containsAll(found.stream().map(Outlier::tree).toList()));
        return found;
    }

    /** Curves of two parameters, which a wild height bends least and which hardly ever fail. */
    static CurveTable curves(List<Tree> trees, HeightSettings settings) {
        return CurveTable.fit(trees, settings.uncalibrated(), FORMS);
    }

    private static List<Outlier> outliers(List<Tree> trees, CurveTable curves, HeightSettings settings) {
        List<Outlier> found = new ArrayList<>();
        for (SpeciesCurve species : curves.species()) {
            HeightCurve chosen = species.chosen();
            if (chosen == null) {
                continue;
            }
            // as it is: a wild height must not draw the curve to itself by the ratio of its species
            HeightCurve curve = chosen.scaled(SpeciesRatio.NONE);
            List<Tree> peers = peers(trees, species, curve, settings);
            double scale = Math.max(LEAST_SCALE, Robust.sd(residuals(peers, curve), 0));
            for (Tree tree : peers) {
                double expected = curve.heightMetres(tree.dbhCm());
                double off = Math.abs(CurveChoice.height(tree).metres() - expected) / scale;
                if (tree.species().equals(species.species()) && off > settings.offCurve()) {
                    found.add(new Outlier(tree, expected, off));
                }
            }
        }
        return found;
    }

    /** The measured trees that the curve in use was fitted to. */
    private static List<Tree> peers(List<Tree> trees, SpeciesCurve search, HeightCurve curve, HeightSettings settings) {
        return CurveChoice.measured(trees).stream()
                .filter(t -> switch (curve.scope()) {
                    case SPECIES -> t.species().equals(search.species());
                    case GROUP ->
                        curve.species().equals(settings.groupBySpecies().get(t.species()));
                    case POOLED -> true;
                })
                .toList();
    }

    private static double[] residuals(List<Tree> trees, HeightCurve curve) {
        return trees.stream()
                .mapToDouble(t -> CurveChoice.height(t).metres() - curve.heightMetres(t.dbhCm()))
                .toArray();
    }
}
