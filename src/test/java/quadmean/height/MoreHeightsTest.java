package quadmean.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.CurveForm;
import quadmean.model.Tree;
import quadmean.stats.LeastSquaresFit;
import quadmean.support.Tolerance;
import quadmean.units.UnitSystem;

/** Which further heights help, and by how much. */
class MoreHeightsTest {
    private static final double[] NASLUND = {1.8, 0.175};

    /** Twenty measured trees of 20 to 40 cm; unmeasured ones from 8 to 62 cm. */
    private static List<Tree> stand(long seed) {
        List<Tree> trees = new ArrayList<>();
        Heights.Sample s = Heights.generated(CurveForm.NASLUND, NASLUND, 1.3, 20, 1, seed);
        for (int i = 0; i < 20; i++) {
            double d = 20 + i;
            double error = s.h()[i] - 1.3 - RationalCurve.NASLUND.value(s.d()[i], NASLUND);
            trees.add(Heights.tree("DF", i, d, 1.3 + RationalCurve.NASLUND.value(d, NASLUND) + error));
        }
        for (int i = 0; i < 28; i++) {
            trees.add(Heights.tree("DF", 100 + i, 8 + 2 * i, Double.NaN));
        }
        return trees;
    }

    private static HeightCurve curve(List<Tree> trees) {
        HeightSettings naslund =
                new HeightSettings(UnitSystem.METRIC, 1.3, Map.of("DF", CurveForm.NASLUND), Heights.MIN_HEIGHTS, 5);
        HeightCurve curve = CurveTable.fit(trees, naslund).species().get(0).chosen();
        assertNotNull(curve);
        return curve;
    }

    private static double weight(Tree t) {
        return t.dbhCm() * t.dbhCm();
    }

    /** By definition, with matrices inverted: information of all heights, variance of the weighted sum of the rest. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void errorsAreThoseOfTheInformationMatrix(long seed) {
        List<Tree> trees = stand(seed);
        HeightCurve curve = curve(trees);
        MoreHeights more = MoreHeights.of(curve, trees, MoreHeightsTest::weight, 6);
        List<Tree> open =
                new ArrayList<>(trees.stream().filter(t -> t.height() == null).toList());
        List<Tree> chosen = new ArrayList<>();
        check(curve, trees, open, chosen, more.now());
        for (MoreHeights.Step step : more.steps()) {
            chosen.add(step.tree());
            assertTrue(open.remove(step.tree()), "each tree once");
            check(curve, trees, open, chosen, step.after());
        }
        assertEquals(6, more.steps().size());
        assertEquals("DF", more.species());
    }

    private static void check(
            HeightCurve curve, List<Tree> trees, List<Tree> open, List<Tree> chosen, MoreHeights.FillingError error) {
        LeastSquaresFit fit = Objects.requireNonNull(curve.tried().fit());
        double variance = fit.sigma() * fit.sigma();
        RealMatrix information = inverse(new Array2DRowRealMatrix(fit.covariance()));
        for (Tree t : chosen) {
            RealVector g = gradient(fit, t);
            information = information.add(g.outerProduct(g).scalarMultiply(1 / variance));
        }
        RealVector c = new ArrayRealVector(2);
        double own = 0;
        for (Tree t : open) {
            c = c.add(gradient(fit, t).mapMultiply(weight(t)));
            own += weight(t) * weight(t) * variance;
        }
        double sum = trees.stream()
                .mapToDouble(t -> weight(t) * (curve.heightMetres(t.dbhCm()) - 1.3))
                .sum();
        Tolerance inverses = Tolerance.relative("matrices inverted", 1e-8);
        inverses.check(
                100 * Math.sqrt(c.dotProduct(inverse(information).operate(c))) / sum, error.curvePercent(), "curve");
        inverses.check(100 * Math.sqrt(own) / sum, error.treesPercent(), "trees");
        inverses.check(Math.hypot(error.curvePercent(), error.treesPercent()), error.percent(), "both");
    }

    private static RealVector gradient(LeastSquaresFit fit, Tree t) {
        return new ArrayRealVector(RationalCurve.NASLUND.gradient(t.dbhCm(), fit.parameters()));
    }

    private static RealMatrix inverse(RealMatrix m) {
        return new LUDecomposition(m).getSolver().getInverse();
    }

    /** The first step is the best of all single trees, tried one by one. */
    @Test
    void theFirstTreeIsTheBestOne() {
        List<Tree> trees = stand(4);
        HeightCurve curve = curve(trees);
        MoreHeights.Step first =
                MoreHeights.of(curve, trees, MoreHeightsTest::weight, 1).steps().get(0);
        for (Tree other : trees.stream().filter(t -> t.height() == null).toList()) {
            List<Tree> only = new ArrayList<>(
                    trees.stream().filter(t -> t.height() == null && t != other).toList());
            double best = first.after().percent();
            double error = after(curve, trees, only, other);
            assertTrue(best <= error * (1 + 1e-9), "tree of " + other.dbhCm() + ": " + error + " against " + best);
        }
    }

    private static double after(HeightCurve curve, List<Tree> trees, List<Tree> open, Tree measured) {
        LeastSquaresFit fit = Objects.requireNonNull(curve.tried().fit());
        double variance = fit.sigma() * fit.sigma();
        RealVector g = gradient(fit, measured);
        RealMatrix information = inverse(new Array2DRowRealMatrix(fit.covariance()))
                .add(g.outerProduct(g).scalarMultiply(1 / variance));
        RealVector c = new ArrayRealVector(2);
        double own = 0;
        for (Tree t : open) {
            c = c.add(gradient(fit, t).mapMultiply(weight(t)));
            own += weight(t) * weight(t) * variance;
        }
        double sum = trees.stream()
                .mapToDouble(t -> weight(t) * (curve.heightMetres(t.dbhCm()) - 1.3))
                .sum();
        return 100 * Math.sqrt(c.dotProduct(inverse(information).operate(c)) + own) / sum;
    }

    /** Every height lowers the error; the fourth comes from a quarter of the dbh range without heights. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void errorsFallAndHeightsSpread(long seed) {
        List<Tree> trees = stand(seed);
        MoreHeights more = MoreHeights.of(curve(trees), trees, MoreHeightsTest::weight, 100);
        assertEquals(28, more.steps().size(), "all that can be measured");
        double before = more.now().percent();
        for (MoreHeights.Step step : more.steps()) {
            assertTrue(step.after().percent() < before, "seed " + seed);
            before = step.after().percent();
        }
        // when all are measured nothing is filled; what is left is rounding
        assertEquals(0, before, 1e-4);
        // quarters of 8 to 62 cm end at 21.5, 35 and 48.5; the measured trees lie in the middle two and the first end
        double fourth = more.steps().get(3).tree().dbhCm();
        long inQuarter = more.steps().subList(0, 3).stream()
                .filter(s -> s.tree().dbhCm() > 48.5)
                .count();
        assertTrue(inQuarter > 0 || fourth > 48.5, "seed " + seed + ", fourth tree " + fourth);
    }

    /** Planned afresh, all trees are open; with all but the last measured next to nothing is left. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aPlanStartsFromNextToNothing(long seed) {
        List<Tree> trees = stand(seed);
        HeightCurve curve = curve(trees);
        MoreHeights plan = MoreHeights.afresh(curve, trees, MoreHeightsTest::weight, 100);
        assertEquals(trees.size(), plan.steps().size());
        assertTrue(plan.now().percent() > plan.steps().get(9).after().percent());
        assertTrue(plan.steps().get(46).after().percent() < 0.5, "one tree left to fill");
        // ten well-chosen heights tell the curve of all trees about as well as twenty in the middle (within a factor of
        // two)
        MoreHeights asItIs = MoreHeights.of(curve, trees, MoreHeightsTest::weight, 0);
        double ten = plan.steps().get(9).after().curvePercent();
        assertTrue(
                ten < 2 * asItIs.now().curvePercent(),
                ten + " against " + asItIs.now().curvePercent());
        // information of one average tree: the covariance of the fit times its number of heights (by definition)
        double sum = trees.stream()
                .mapToDouble(t -> weight(t) * (curve.heightMetres(t.dbhCm()) - 1.3))
                .sum();
        LeastSquaresFit fit = Objects.requireNonNull(curve.tried().fit());
        RealVector c = new ArrayRealVector(2);
        for (Tree t : trees) {
            c = c.add(gradient(fit, t).mapMultiply(weight(t)));
        }
        RealMatrix v = new Array2DRowRealMatrix(fit.covariance()).scalarMultiply(20);
        Tolerance.relative("matrices multiplied", 1e-9)
                .check(
                        100 * Math.sqrt(c.dotProduct(v.operate(c))) / sum,
                        plan.now().curvePercent(),
                        "curve");
    }

    @Test
    void nothingToFillNeedsNothing() {
        List<Tree> measured = stand(1).stream().filter(t -> t.height() != null).toList();
        MoreHeights none = MoreHeights.of(curve(measured), measured, MoreHeightsTest::weight, 5);
        assertEquals(List.of(), none.steps());
        assertEquals(0, none.now().percent());
    }
}
