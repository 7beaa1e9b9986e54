package quadmean.height;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.model.Tree;

/**
 * Finds heights far off the curve of their species, by a scale that outliers do not move: 1.4826 times the median
 * absolute residual, which for normal scatter is the standard deviation.
 */
public final class HeightScreen {
    private static final double MAD_TO_SD = 1.4826;
    private static final int MAX_ROUNDS = 20;

    /** Heights are read to a decimetre at best, so no scatter is smaller than half of one (m). */
    private static final double LEAST_SCALE = 0.05;

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
        HeightSettings pooledOnly = new HeightSettings(
                settings.units(), settings.breastHeight(), Map.of(), Integer.MAX_VALUE, settings.offCurve());
        List<Outlier> found = outliers(trees, CurveTable.fit(trees, pooledOnly), settings);
        Set<Tree> suspects = new HashSet<>();
        int round = 0;
        do {
            suspects.addAll(found.stream().map(Outlier::tree).toList());
            List<Tree> trusted = trees.stream()
                    .map(t -> suspects.contains(t) ? t.withoutHeight() : t)
                    .toList();
            found = outliers(trees, CurveTable.fit(trusted, settings), settings);
            round++;
        } while (round < MAX_ROUNDS
                && !suspects.containsAll(found.stream().map(Outlier::tree).toList()));
        return found;
    }

    private static List<Outlier> outliers(List<Tree> trees, CurveTable curves, HeightSettings settings) {
        List<Outlier> found = new ArrayList<>();
        for (SpeciesCurve species : curves.species()) {
            HeightCurve curve = species.chosen();
            if (curve == null) {
                continue;
            }
            boolean pooled = curve.species().equals(SpeciesCurve.POOLED);
            List<Tree> peers = CurveChoice.measured(trees).stream()
                    .filter(t -> pooled || t.species().equals(species.species()))
                    .toList();
            double scale = Math.max(LEAST_SCALE, MAD_TO_SD * medianAbsolute(residuals(peers, curve)));
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

    private static double[] residuals(List<Tree> trees, HeightCurve curve) {
        return trees.stream()
                .mapToDouble(t -> CurveChoice.height(t).metres() - curve.heightMetres(t.dbhCm()))
                .toArray();
    }

    private static double medianAbsolute(double[] residuals) {
        double[] sorted = Arrays.stream(residuals).map(Math::abs).sorted().toArray();
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }
}
