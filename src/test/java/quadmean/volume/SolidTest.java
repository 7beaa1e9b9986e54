package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.Tolerance;

/** Solids of revolution, by algebra. */
class SolidTest {
    private static final Tolerance DIFFERENCE = Tolerance.relative("difference of doubles ten times as large", 1e-11);

    /** Base 1/4·π·0.4² m², length 20 m; integrals by R. */
    @ParameterizedTest
    @CsvSource({
        "CYLINDER, 2.51327412287183",
        "PARABOLOID, 1.25663706143592",
        "CONE, 0.837758040957278",
        "NEILOID, 0.628318530717959"
    })
    void wholeSolids(Solid solid, double expected) {
        Tolerance.R_SCRIPT.check(expected, solid.whole(Math.PI * 0.04, 20), solid.label());
    }

    /** 30 to 20 cm, 5 m: the cone equals Newton with a middle of 25 cm, the paraboloid Smalian. */
    @ParameterizedTest
    @CsvSource({"PARABOLOID, 0.255254", "CONE, 0.248709", "NEILOID, 0.246515"})
    void frusta(Solid solid, double expected) {
        double volume = solid.frustum(CubicVolume.section(30), CubicVolume.section(20), 5);
        Tolerance.printed(6).check(expected, volume, solid.label());
    }

    @ParameterizedTest
    @EnumSource
    void aFrustumUpToTheTipIsTheWholeSolid(Solid solid) {
        double top = solid == Solid.CYLINDER ? 3 : 0;
        Tolerance.ROUNDING.check(solid.whole(3, 7), solid.frustum(3, top, 7), solid.label());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void newtonIsExactOnFrustaOfAllFour(long seed) {
        Random random = new Random(seed);
        for (Solid solid : Solid.values()) {
            double base = 0.01 + random.nextDouble();
            double length = 1 + 40 * random.nextDouble();
            double lower = 0.5 + 0.5 * random.nextDouble();
            double upper = lower * random.nextDouble();
            double large = solid.section(base, lower);
            double middle = solid.section(base, (lower + upper) / 2);
            double small = solid.section(base, upper);
            double cut = (lower - upper) * length;
            String what = "seed " + seed + " " + solid;
            double frustum = solid.frustum(large, small, cut);
            Tolerance.ROUNDING.check(frustum, CubicVolume.newton(large, middle, small, cut), what);
            if (solid.exponent() <= 1) {
                Tolerance.ROUNDING.check(frustum, CubicVolume.smalian(large, small, cut), what);
                Tolerance.ROUNDING.check(frustum, CubicVolume.huber(middle, cut), what);
            } else {
                assertTrue(CubicVolume.smalian(large, small, cut) > frustum, what);
                assertTrue(CubicVolume.huber(middle, cut) < frustum, what);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void aFrustumIsTheWholeLessItsTop(long seed) {
        Random random = new Random(seed);
        for (Solid solid : Solid.values()) {
            double base = 0.01 + random.nextDouble();
            double length = 1 + 40 * random.nextDouble();
            double share = 0.1 + 0.8 * random.nextDouble();
            double small = solid.section(base, share);
            double expected = solid.whole(base, length) - solid.whole(small, share * length);
            DIFFERENCE.check(expected, solid.frustum(base, small, (1 - share) * length), "seed " + seed + " " + solid);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, Double.POSITIVE_INFINITY})
    void sizesOutOfTheirDomainAreRefusedByName(double bad) {
        refused("base", () -> Solid.CONE.whole(bad, 1));
        refused("length", () -> Solid.CONE.whole(1, bad));
        refused("large end", () -> Solid.CONE.frustum(bad, 1, 1));
        refused("small end", () -> Solid.CONE.frustum(2, bad, 1));
        refused("share", () -> Solid.CONE.section(1, bad));
    }

    @Test
    void endsThatDoNotFitTheSolidAreRefused() {
        refused("the small end, 3.0", () -> Solid.CONE.frustum(2, 3, 1));
        refused("the ends of a cylinder", () -> Solid.CYLINDER.frustum(2, 1, 1));
        refused("length", () -> Solid.CONE.whole(1, 0));
    }

    private static void refused(String start, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(start), message);
    }
}
