package quadmean.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.height.HeightScreen.Outlier;
import quadmean.model.CurveForm;
import quadmean.model.Tree;
import quadmean.support.Tolerance;

class HeightScreenTest {
    private static final double[] TRUTH = {1.8, 0.175};

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void nothingIsFoundInCleanHeights(long seed) {
        assertEquals(List.of(), HeightScreen.find(clean("DF", 60, seed), Heights.METRIC), "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aPlantedHeightIsFoundAndNothingElse(long seed) {
        List<Tree> trees = clean("DF", 60, seed);
        Tree planted = Heights.tree("DF", 61, 57.5, 3.4);
        trees.add(planted);
        List<Outlier> found = HeightScreen.find(trees, Heights.METRIC);
        assertEquals(List.of(planted), found.stream().map(Outlier::tree).toList(), "seed " + seed);
        // the true curve at 57.5 cm; 60 trees with errors of 1 m leave the fitted one within 1 m of it
        double truth = 1.3 + RationalCurve.NASLUND.value(57.5, TRUTH);
        assertEquals(truth, found.get(0).expectedM(), 1, "seed " + seed);
        assertTrue(found.get(0).deviations() > 10, "seed " + seed);
    }

    /** Heights read in feet and written as metres bend the curve upwards; they may not hide one another. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void severalWrongHeightsDoNotHideOneAnother(long seed) {
        List<Tree> trees = clean("DF", 40, seed);
        Set<Tree> planted = new HashSet<>();
        for (int i = 0; i < 4; i++) {
            planted.add(Heights.tree("DF", 50 + i, 25 + 8 * i, 55 + 6 * i));
        }
        trees.addAll(planted);
        Set<Tree> found = new HashSet<>(HeightScreen.find(trees, Heights.METRIC).stream()
                .map(Outlier::tree)
                .toList());
        assertEquals(planted, found, "seed " + seed);
    }

    /** 1.4826 times the median absolute residual from the curve of the others, for odd and even numbers of heights. */
    @ParameterizedTest
    @ValueSource(ints = {40, 41})
    void deviationsAreRobustStandardDeviations(int others) {
        List<Tree> trees = clean("DF", others, 21);
        HeightCurve curve = HeightScreen.curves(trees, Heights.METRIC).curve("DF");
        assertNotNull(curve);
        Tree planted = Heights.tree("DF", 61, 57.5, 3.4);
        trees.add(planted);
        double[] off = trees.stream()
                .mapToDouble(t -> Math.abs(CurveChoice.height(t).metres() - curve.heightMetres(t.dbhCm())))
                .sorted()
                .toArray();
        // the two middle ones, which are one and the same where the number is odd
        double median = (off[(off.length - 1) / 2] + off[off.length / 2]) / 2;
        double expected = (curve.heightMetres(57.5) - 3.4) / (1.4826 * median);
        Outlier found = HeightScreen.find(trees, Heights.METRIC).get(0);
        Tolerance.ROUNDING.check(expected, found.deviations(), "robust standard deviations");
    }

    @Test
    void aRareSpeciesIsHeldAgainstThePooledCurve() {
        List<Tree> trees = clean("DF", 40, 11);
        Tree planted = Heights.tree("PP", 50, 40, 2.5);
        trees.add(planted);
        trees.add(Heights.tree("PP", 51, 30, 1.3 + RationalCurve.NASLUND.value(30, TRUTH)));
        List<Outlier> found = HeightScreen.find(trees, Heights.METRIC);
        assertEquals(List.of(planted), found.stream().map(Outlier::tree).toList());
    }

    /** Upper Flat Creek, tree 67-6: 3.4 m written for 57.5 cm, a known slip in the real tally (a larch there; here put among grand firs). */
    @Test
    void theSlipInTheIdahoTallyIsFound() {
        List<Tree> trees = Heights.trees("GF", Heights.idaho("GF"));
        Tree slip = Heights.tree("GF", 999, 57.5, 3.4);
        trees.add(slip);
        assertTrue(HeightScreen.find(trees, Heights.METRIC).stream()
                .anyMatch(o -> o.tree().equals(slip)));
    }

    /** Heights without any scatter, such as a made-up stand: rounding is no reason to suspect a tree. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void heightsOnTheCurveItselfAreNotSuspect(long seed) {
        List<Tree> trees = Heights.trees("DF", Heights.generated(CurveForm.NASLUND, TRUTH, 1.3, 40, 0, seed));
        assertEquals(List.of(), HeightScreen.find(trees, Heights.METRIC), "seed " + seed);
    }

    @Test
    void withoutACurveNothingIsSuspect() {
        List<Tree> trees = List.of(Heights.tree("DF", 1, 30, 90), Heights.tree("DF", 2, 20, 2));
        assertEquals(List.of(), HeightScreen.find(trees, Heights.METRIC));
        assertEquals(List.of(), HeightScreen.find(List.of(), Heights.METRIC));
    }

    private static List<Tree> clean(String species, int n, long seed) {
        return new ArrayList<>(Heights.trees(species, Heights.generated(CurveForm.NASLUND, TRUTH, 1.3, n, 1, seed)));
    }
}
