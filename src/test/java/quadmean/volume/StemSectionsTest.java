package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.BarkSpec;
import quadmean.model.CubicRule;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.support.Tolerance;
import quadmean.units.Unit;
import quadmean.volume.StemSections.Side;
import quadmean.volume.StemVolume.Section;

/** Stems that are solids of 40 cm at the foot and 20 m, whose volume and taper are known by algebra. */
class StemSectionsTest {
    private static final double FOOT_CM = 40;
    private static final double HEIGHT = 20;
    private static final Bark NINETY_PER_CENT =
            Bark.of(new BarkSpec(0.9, 1, Unit.CENTIMETRE, new Provenance("test", Standing.INVENTED)));

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "CYLINDER")
    void newtonOverEqualPairsAndTheRightTipIsExact(Solid solid) {
        StemVolume volume = stem(solid, 0, 2, 4, 6, 8).volume(new StemPart(0, 0, CubicRule.NEWTON, solid));
        Tolerance.ROUNDING.check(solid.whole(foot(), HEIGHT), volume.volumeM3(), solid.label());
        assertEquals(
                List.of("Newton", "Newton", "tip as a " + solid.label()),
                volume.sections().stream().map(Section::method).toList());
        assertEquals(HEIGHT, volume.toM());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void smalianIsExactOnAParaboloidMeasuredAnywhere(long seed) {
        Random random = new Random(seed);
        double[] heights = random.doubles(7, 0.1, 18).sorted().toArray();
        heights[0] = 0;
        StemVolume volume =
                stem(Solid.PARABOLOID, heights).volume(new StemPart(0, 0, CubicRule.SMALIAN, Solid.PARABOLOID));
        Tolerance.ROUNDING.check(Solid.PARABOLOID.whole(foot(), HEIGHT), volume.volumeM3(), "seed " + seed);
        assertEquals(7, volume.sections().size());
    }

    @Test
    void huberIsExactOnAParaboloidInEqualPairs() {
        StemVolume volume =
                stem(Solid.PARABOLOID, 0, 3, 6, 8, 10).volume(new StemPart(0, 0, CubicRule.HUBER, Solid.PARABOLOID));
        Tolerance.ROUNDING.check(Solid.PARABOLOID.whole(foot(), HEIGHT), volume.volumeM3(), "paraboloid");
        assertEquals("Huber", volume.sections().get(0).method());
    }

    /** Where no pair of equal sections is left, Smalian serves, and says so. */
    @Test
    void sectionsWithoutAMiddleAreBySmalian() {
        StemVolume volume = stem(Solid.CONE, 0, 1, 3, 5, 6).volume(new StemPart(0, 0, CubicRule.NEWTON, Solid.CONE));
        assertEquals(
                List.of("Smalian", "Newton", "Smalian", "tip as a cone"),
                volume.sections().stream().map(Section::method).toList());
    }

    /** The top diameter in the tip; heights and volumes by R (integrals of the solids). */
    @ParameterizedTest
    @CsvSource({
        "PARABOLOID, 15, 1.17809724509617",
        "CONE, 10, 0.733038285837618",
        "NEILOID, 7.40078950105127, 0.529364562856637"
    })
    void aTopDiameterInTheTipIsFoundOnItsSolid(Solid solid, double top, double expected) {
        StemVolume volume = stem(solid, 0, 2, 4).volume(new StemPart(0, 20, CubicRule.NEWTON, solid));
        Tolerance.R_SCRIPT.check(top, volume.toM(), "height of 20 cm");
        Tolerance.R_SCRIPT.check(expected, volume.volumeM3(), solid.label());
    }

    /** A cone loses 2 cm a metre: 25 cm lies at 7.5 m, between two points; Newton is exact on the pair cut there. */
    @Test
    void aTopDiameterBetweenPointsIsFoundOnTheStraightLine() {
        StemVolume volume = stem(Solid.CONE, 0, 3.75, 10).volume(new StemPart(0, 25, CubicRule.NEWTON, Solid.CONE));
        Tolerance.ROUNDING.check(7.5, volume.toM(), "height of 25 cm");
        double expected = Solid.CONE.frustum(foot(), CubicVolume.section(25), 7.5);
        Tolerance.ROUNDING.check(expected, volume.volumeM3(), "cone");
        assertEquals(1, volume.sections().size());
    }

    /** A cone of 40 cm at the ground has 38 cm at a stump of 1 m. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 11})
    void theStumpIsCutOff(double stump) {
        StemVolume volume = stem(Solid.CONE, 0, 10).volume(new StemPart(stump, 0, CubicRule.SMALIAN, Solid.CONE));
        double base = CubicVolume.section(FOOT_CM * (HEIGHT - stump) / HEIGHT);
        double tip = Solid.CONE.whole(CubicVolume.section(Math.min(20, 40 - 2 * stump)), Math.min(10, HEIGHT - stump));
        double below = stump < 10 ? CubicVolume.smalian(base, CubicVolume.section(20), 10 - stump) : 0;
        Tolerance.ROUNDING.check(below + tip, volume.volumeM3(), "stump " + stump);
        assertEquals(stump, volume.fromM());
        assertEquals(stump, volume.sections().get(0).fromM());
    }

    /** k = 0.90 all along leaves 0.81 of the volume. */
    @Test
    void barkComesOffByTheFormula() {
        StemPart cut = new StemPart(0.3, 0, CubicRule.SMALIAN, Solid.CONE);
        StemSections outside = stem(Solid.CONE, 0, 1.3, 5, 9);
        StemSections inside = outside.insideBark(Optional.of(NINETY_PER_CENT));
        Tolerance.ROUNDING.check(
                0.81 * outside.volume(cut).volumeM3(), inside.volume(cut).volumeM3(), "volume inside bark");
        assertEquals(Side.INSIDE_BARK, inside.side());
        assertSame(inside, inside.insideBark(Optional.empty()));
    }

    @Test
    void measuredBarkGoesBeforeTheFormula() {
        StemSections outside =
                StemSections.of(List.of(new StemPoint(0, 40, 1.5), StemPoint.of(5, 30)), Double.NaN, Side.OUTSIDE_BARK);
        StemSections inside = outside.insideBark(Optional.of(NINETY_PER_CENT));
        assertEquals(37, inside.points().get(0).diameterCm());
        Tolerance.ROUNDING.check(27, inside.points().get(1).diameterCm(), "by the formula");
        String message = assertThrows(IllegalArgumentException.class, () -> outside.insideBark(Optional.empty()))
                .getMessage();
        assertEquals("no bark measured and no bark formula at heights of 5.0 m", message);
    }

    @Test
    void withoutATotalHeightTheVolumeEndsAtTheHighestPointAndSaysSo() {
        StemSections stem =
                StemSections.of(List.of(StemPoint.of(0, 40), StemPoint.of(5, 30)), Double.NaN, Side.INSIDE_BARK);
        StemVolume volume = stem.volume(new StemPart(0, 10, CubicRule.SMALIAN, Solid.CONE));
        assertEquals(5, volume.toM());
        assertEquals(1, volume.remarks().size());
        assertTrue(volume.remarks().get(0).contains("5.0 m, where the stem is 30.0 cm thick"));
        assertEquals(
                List.of(),
                stem.volume(new StemPart(0, 30, CubicRule.SMALIAN, Solid.CONE)).remarks());
    }

    @Test
    void aStemNoThickerThanTheTopDiameterHasNoVolumeAndSaysSo() {
        StemVolume volume = stem(Solid.CONE, 0, 5).volume(new StemPart(0, 40, CubicRule.SMALIAN, Solid.CONE));
        assertEquals(0, volume.volumeM3());
        assertEquals(0, volume.toM());
        assertEquals(List.of("The stem is no thicker than the top diameter at the stump."), volume.remarks());
    }

    @Test
    void diametersThatGrowUpwardAreKeptAndFlagged() {
        StemSections stem = StemSections.of(
                List.of(StemPoint.of(0, 40), StemPoint.of(2, 30), StemPoint.of(4, 32)), 20, Side.INSIDE_BARK);
        List<String> expected = List.of("The diameter grows upward, from 30.0 cm at 2.0 m to 32.0 cm at 4.0 m.");
        assertEquals(expected, stem.remarks());
        StemVolume volume = stem.volume(new StemPart(0, 0, CubicRule.SMALIAN, Solid.CONE));
        assertEquals(expected, volume.remarks());
        assertEquals(3, volume.sections().size());
        StemVolume toLimit = stem.volume(new StemPart(0, 31, CubicRule.SMALIAN, Solid.CONE));
        Tolerance.ROUNDING.check(1.8, toLimit.toM(), "the first place as thin as the top diameter");
    }

    @Test
    void allThatIsWrongIsSaidAtOnce() {
        List<StemPoint> points = List.of(
                new StemPoint(1, 40, 25),
                new StemPoint(0.5, -3, Double.NaN),
                new StemPoint(Double.NaN, 20, Double.NaN));
        String message = assertThrows(
                        IllegalArgumentException.class, () -> StemSections.of(points, 0.2, Side.OUTSIDE_BARK))
                .getMessage();
        assertEquals(
                List.of(
                        "point 1: bark must lie between zero and half the diameter of 40.0, got 25.0",
                        "point 2: diameter must be above zero, got -3.0",
                        "point 3: height must be zero or more, got NaN",
                        "point 2: height must exceed that of the point below, 1.0, got 0.5",
                        "total height must exceed that of the highest point, NaN, got 0.2"),
                List.of(message.split("; ")));
    }

    @Test
    void tooFewPointsAndBarkInsideBarkAreRefused() {
        refused(
                "a stem needs two points",
                () -> StemSections.of(List.of(StemPoint.of(1, 3)), Double.NaN, Side.INSIDE_BARK));
        refused("a stem needs two points", () -> StemSections.of(List.of(), 20, Side.INSIDE_BARK));
        refused(
                "point 1: a diameter inside bark has no bark",
                () -> StemSections.of(List.of(new StemPoint(1, 30, 1)), 20, Side.INSIDE_BARK));
    }

    @Test
    void cutsOutsideWhatIsKnownAreRefused() {
        StemSections stem = stem(Solid.CONE, 0.5, 5);
        refused("stump of 0.2 m must lie", () -> stem.volume(new StemPart(0.2, 0, CubicRule.SMALIAN, Solid.CONE)));
        refused("stump of 20.0 m must lie", () -> stem.volume(new StemPart(20, 0, CubicRule.SMALIAN, Solid.CONE)));
        refused("stump (m) must", () -> new StemPart(Double.NaN, 0, CubicRule.SMALIAN, Solid.CONE));
        refused("top diameter (cm) must", () -> new StemPart(0, -1, CubicRule.SMALIAN, Solid.CONE));
        refused("a tip must taper", () -> new StemPart(0, 0, CubicRule.SMALIAN, Solid.CYLINDER));
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void aSmallerTopDiameterAndALowerStumpNeverLeaveLess(long seed) {
        Random random = new Random(seed);
        StemSections stem =
                stem(Solid.NEILOID, random.doubles(6, 0, 15).sorted().toArray());
        double first = stem.points().get(0).heightM();
        double before = 0;
        for (double top = 36; top >= 0; top -= 0.5) {
            double now = stem.volume(new StemPart(first, top, CubicRule.SMALIAN, Solid.CONE))
                    .volumeM3();
            assertTrue(now >= before, "seed " + seed + " " + top + " cm");
            before = now;
        }
        double lower = stem.volume(new StemPart(first + 1, 0, CubicRule.SMALIAN, Solid.CONE))
                .volumeM3();
        assertTrue(lower < before, "seed " + seed);
    }

    private static void refused(String start, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(start), message);
    }

    private static double foot() {
        return CubicVolume.section(FOOT_CM);
    }

    private static StemSections stem(Solid solid, double... heights) {
        List<StemPoint> points = new ArrayList<>();
        for (double h : heights) {
            double share = (HEIGHT - h) / HEIGHT;
            points.add(StemPoint.of(h, FOOT_CM * Math.pow(share, solid.exponent() / 2.0)));
        }
        return StemSections.of(points, HEIGHT, Side.OUTSIDE_BARK);
    }
}
