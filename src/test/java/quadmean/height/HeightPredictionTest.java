package quadmean.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.CurveForm;
import quadmean.model.HeightSource;
import quadmean.model.Tree;
import quadmean.stats.StudentT;
import quadmean.support.Tolerance;
import quadmean.units.UnitSystem;

/** Heights from curves with their errors. */
class HeightPredictionTest {
    private static final double[] NASLUND = {1.8, 0.175};

    /** Näslund on the Idaho heights by Gauss-Newton and gᵀVg in Python (numpy), outside this program. */
    @ParameterizedTest
    @CsvSource({
        "DF,12,11.70101949932203,1.1052284106469932,4.725018739978132",
        "DF,35,25.052282858585244,0.6518565212229691,4.639955730144864",
        "DF,80,34.176579459471114,1.4544908744412068,4.818694424559",
        "GF,12,11.652473608680518,0.5691427908073032,4.091930572722389",
        "GF,35,25.897893416191152,0.39515111380824003,4.071377739585968",
        "GF,80,36.06993146364794,0.949442123737001,4.1619001239792475"
    })
    void errorsAreThoseOfTheLinearisedCurve(String species, double dbh, double h, double curveSe, double treeSe) {
        HeightCurve curve = asked(CurveForm.NASLUND, species);
        HeightPrediction p = curve.predict(dbh);
        Tolerance.FIT.check(h, p.metres(), "height");
        Tolerance.FIT.check(curveSe, p.curveSe(), "standard error of the curve");
        Tolerance.FIT.check(treeSe, p.standardError(), "standard error of prediction");
        double t = StudentT.critical(0.9, curve.heights() - 2);
        HeightBand band = curve.band(dbh, 0.9);
        Tolerance.FIT.check(t * curveSe, band.curveHalf(), "half the confidence band");
        Tolerance.FIT.check(t * treeSe, band.treeHalf(), "half the prediction band");
        assertEquals(p.metres(), band.metres());
    }

    /** The same trees in feet: parameters of the power curve scale, heights and errors do not (by algebra). */
    @Test
    void errorsDoNotDependOnTheUnitsOfTheFit() {
        List<Tree> trees =
                Heights.trees("GF", Heights.generated(CurveForm.POWER, new double[] {2.6, 0.6}, 1.3, 50, 1, 4));
        HeightSettings feet =
                new HeightSettings(UnitSystem.US, 1.3 / 0.3048, Map.of("GF", CurveForm.POWER), Heights.MIN_HEIGHTS, 5);
        HeightSettings metres =
                new HeightSettings(UnitSystem.METRIC, 1.3, Map.of("GF", CurveForm.POWER), Heights.MIN_HEIGHTS, 5);
        HeightPrediction a = own(trees, feet).predict(40);
        HeightPrediction b = own(trees, metres).predict(40);
        Tolerance.FIT.check(b.metres(), a.metres(), "height");
        Tolerance.FIT.check(b.curveSe(), a.curveSe(), "standard error of the curve");
        Tolerance.FIT.check(b.scatterSd(), a.scatterSd(), "scatter");
    }

    /** 95 of 100 new trees lie in the prediction band: of 2000, 1900 give or take four binomial sd of 9.7. */
    @Test
    void theBandHoldsAsManyTreesAsItSays() {
        int inside = 0;
        for (long seed = 1; seed <= 50; seed++) {
            HeightCurve curve = own(
                    Heights.trees("GF", Heights.generated(CurveForm.NASLUND, NASLUND, 1.3, 60, 1.5, seed)),
                    asking(CurveForm.NASLUND, "GF"));
            Heights.Sample fresh = Heights.generated(CurveForm.NASLUND, NASLUND, 1.3, 40, 1.5, 1000 + seed);
            for (int i = 0; i < 40; i++) {
                HeightBand band = curve.band(fresh.d()[i], 0.95);
                inside += Math.abs(fresh.h()[i] - band.metres()) < band.treeHalf() ? 1 : 0;
            }
        }
        assertEquals(1900, inside, 39);
    }

    @Test
    void filledTreesCarryTheirErrorsAndReach() {
        CurveTable table = CurveTable.fit(
                Heights.trees("GF", Heights.generated(CurveForm.NASLUND, NASLUND, 1.3, 60, 1.5, 2)), Heights.METRIC);
        HeightCurve curve = table.curve("GF");
        assertNotNull(curve);
        HeightedTree inside = table.fill(Heights.tree("GF", 90, 30, Double.NaN));
        assertEquals(curve.predict(30).curveSe(), inside.curveSeM());
        assertEquals(curve.predict(30).scatterSd(), inside.scatterSdM());
        assertEquals(curve.predict(30).standardError(), inside.standardErrorM());
        assertEquals(HeightedTree.Reach.WITHIN, inside.reach());
        HeightedTree beyond = table.fill(Heights.tree("GF", 91, 80, Double.NaN));
        assertEquals(HeightedTree.Reach.EXTRAPOLATED, beyond.reach());
        assertTrue(beyond.curveSeM() > inside.curveSeM(), "the curve is less sure out there");
        HeightedTree measured = table.fill(Heights.tree("GF", 92, 80, 25));
        assertEquals(0, measured.standardErrorM());
        assertEquals(HeightedTree.Reach.WITHIN, measured.reach());
    }

    /** Scaled by a ratio the errors scale too, and that of the ratio joins in (by definition). */
    @Test
    void aRatioBringsItsOwnError() {
        HeightCurve curve = asked(CurveForm.NASLUND, "GF");
        HeightPrediction plain = curve.predict(30);
        HeightPrediction scaled = curve.scaled(new SpeciesRatio(1.1, 0.05, 4)).predict(30);
        double above = plain.metres() - 1.3;
        Tolerance.ROUNDING.check(1.3 + 1.1 * above, scaled.metres(), "height");
        Tolerance.ROUNDING.check(Math.hypot(1.1 * plain.curveSe(), 0.05 * above), scaled.curveSe(), "curve");
        Tolerance.ROUNDING.check(1.1 * plain.scatterSd(), scaled.scatterSd(), "scatter");
    }

    /** Ratios 0.9, 1.0, 1.1: mean 1, sd 0.1, error 0.1/√3 (by hand). */
    @Test
    void aRatioNeedsThreeHeights() {
        SpeciesRatio three = SpeciesRatio.of(new double[] {0.9, 1, 1.1});
        Tolerance.ROUNDING.check(1, three.value(), "ratio");
        Tolerance.ROUNDING.check(0.1 / Math.sqrt(3), three.se(), "its error");
        assertEquals(3, three.heights());
        assertEquals(SpeciesRatio.NONE, SpeciesRatio.of(new double[] {0.9, 1.1}));
        assertEquals(SpeciesRatio.NONE, SpeciesRatio.of(new double[] {}));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void drawsSpreadAboutTheCurveAndRepeat(long seed) {
        ResidualDraw draw = new ResidualDraw(seed);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < 4000; i++) {
            HeightedTree t = filled(i, 20, 2);
            HeightedTree drawn = draw.apply(t);
            assertEquals(drawn, draw.apply(t), "the same seed draws the same");
            assertEquals(0, drawn.scatterSdM());
            assertEquals(0.5, drawn.curveSeM());
            sum += drawn.heightM() - 20;
            squares += Math.pow(drawn.heightM() - 20, 2);
        }
        // four standard errors of a mean and of a standard deviation of 4000 draws
        assertEquals(0, sum / 4000, 4 * 2 / Math.sqrt(4000), "mean, seed " + seed);
        assertEquals(2, Math.sqrt(squares / 4000), 4 * 2 / Math.sqrt(8000), "sd, seed " + seed);
        assertTrue(draw.apply(filled(1, 20, 2)).heightM()
                != new ResidualDraw(seed + 1).apply(filled(1, 20, 2)).heightM());
    }

    @Test
    void measuredTreesAreNotDrawnAndNoneFallsBelowATenth() {
        HeightedTree measured = new HeightedTree(Heights.tree("GF", 1, 30, 22), 22, HeightSource.MEASURED);
        assertEquals(measured, new ResidualDraw(1).apply(measured));
        for (int i = 0; i < 200; i++) {
            assertTrue(new ResidualDraw(7).apply(filled(i, 3, 10)).heightM() >= 0.3);
        }
    }

    private static HeightedTree filled(int number, double h, double scatter) {
        return new HeightedTree(
                Heights.tree("GF", number, 30, Double.NaN),
                h,
                HeightSource.SPECIES_CURVE,
                0.5,
                scatter,
                HeightedTree.Reach.WITHIN);
    }

    private static HeightSettings asking(CurveForm form, String species) {
        return new HeightSettings(UnitSystem.METRIC, 1.3, Map.of(species, form), Heights.MIN_HEIGHTS, 5);
    }

    private static HeightCurve asked(CurveForm form, String species) {
        return own(Heights.trees(species, Heights.idaho(species)), asking(form, species));
    }

    private static HeightCurve own(List<Tree> trees, HeightSettings settings) {
        HeightCurve curve = CurveTable.fit(trees, settings).species().get(0).chosen();
        assertNotNull(curve);
        return curve;
    }
}
