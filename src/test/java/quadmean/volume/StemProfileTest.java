package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.BarkSpec;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.model.TaperForm;
import quadmean.model.TaperSpec;
import quadmean.support.Tolerance;
import quadmean.units.Unit;

/** Values named R come from src/test/resources/reference/stems.R. */
class StemProfileTest {
    private static final Provenance TEST = new Provenance("test", Standing.INVENTED);
    private static final double FOOT = 0.3048;

    static TaperSpec spec(TaperForm form, Optional<BarkSpec> bark, double... coefficients) {
        List<Double> values = new ArrayList<>();
        for (double c : coefficients) {
            values.add(c);
        }
        return new TaperSpec("*", form, values, bark, TEST);
    }

    static Optional<BarkSpec> bark(double a, double b) {
        return Optional.of(new BarkSpec(a, b, Unit.CENTIMETRE, TEST));
    }

    private static StemProfile profile(TaperSpec spec, double dbhCm, double heightM) {
        return StemProfile.of(spec, dbhCm, heightM, 1.3).orElseThrow();
    }

    /** 18 in, 90 ft, form class 78.9, bark ratio 0.9, breast height 4.5 ft. */
    private static StemProfile formClass(double a) {
        TaperSpec spec = spec(TaperForm.FORM_CLASS, bark(0.9, 1), 78.9, a);
        return StemProfile.of(spec, 18 * 2.54, 90 * FOOT, 4.5 * FOOT).orElseThrow();
    }

    /** Solids of revolution above breast height: cone B·L/3, paraboloid B·L/2 (by definition), and B·L/(2p + 1). */
    @ParameterizedTest
    @CsvSource({"1, 3", "0.5, 2", "1.5, 4", "0.7, 2.4"})
    void ormerodIsTheSolidOfItsExponent(double p, double divisor) {
        StemProfile stem = profile(spec(TaperForm.ORMEROD, Optional.empty(), p), 40, 30);
        double base = Math.PI / 4 * 0.4 * 0.4;
        Tolerance.ROUNDING.check(base * 28.7 / divisor, stem.volumeM3(1.3, 30), "volume above breast height (m³)");
        Tolerance.ROUNDING.check(40, stem.dibCm(1.3), "dbh (cm)");
    }

    /** Frusta (formulary 2.1): cone (B + √(Bb) + b)L/3, paraboloid (B + b)L/2; below breast height the stem is thicker. */
    @Test
    void sectionsAreFrusta() {
        StemProfile cone = profile(spec(TaperForm.ORMEROD, Optional.empty(), 1), 30, 31.3);
        double large = Math.PI / 40_000 * 31 * 31;
        double small = Math.PI / 40_000 * 20 * 20;
        Tolerance.ROUNDING.check(31, cone.dibCm(0.3), "at the stump (cm)");
        double frustum = (large + Math.sqrt(large * small) + small) * 11 / 3;
        Tolerance.ROUNDING.check(frustum, cone.volumeM3(0.3, 11.3), "cone");

        StemProfile paraboloid = profile(spec(TaperForm.ORMEROD, Optional.empty(), 0.5), 30, 31.3);
        double at = Math.PI / 40_000 * 900 * 31 / 30;
        double above = Math.PI / 40_000 * 900 * 20 / 30;
        Tolerance.ROUNDING.check((at + above) / 2 * 11, paraboloid.volumeM3(0.3, 11.3), "paraboloid");
    }

    /** b0 = -b1, b2 = 0 is a paraboloid on the base D²·b0: volume B·H/2. */
    @Test
    void kozakWithoutTheSquareIsAParaboloid() {
        StemProfile stem = profile(spec(TaperForm.KOZAK_1969, Optional.empty(), 1.1, -1.1, 0), 40, 30);
        Tolerance.ROUNDING.check(Math.PI / 4 * 0.16 * 1.1 * 30 / 2, stem.volumeM3(0, 30), "volume (m³)");
    }

    /** b0 = b2 is a cone. */
    @Test
    void kozakWithEqualEndsIsACone() {
        StemProfile stem = profile(spec(TaperForm.KOZAK_1969, Optional.empty(), 1, -2, 1), 40, 30);
        Tolerance.ROUNDING.check(20, stem.dibCm(15), "half way up (cm)");
        Tolerance.ROUNDING.check(Math.PI / 4 * 0.16 * 30 / 3, stem.volumeM3(0, 30), "volume (m³)");
    }

    /** Where the exponent of the bark leaves no polynomial: (1 - z)^0.8 by algebra, H/1.8 for its integral over z·H. */
    @Test
    void barkOfAnExponentLeavesKozaksVolumeWithinItsStatedError() {
        StemProfile stem = profile(spec(TaperForm.KOZAK_1969, bark(0.9, 0.8), 1, -1, 0), 40, 30);
        double base = Math.PI / 40_000 * 0.81 * Math.pow(40, 1.6);
        Tolerance.relative("one part in a million", 1e-6).check(base * 30 / 1.8, stem.volumeM3(0, 30), "volume (m³)");
    }

    @Test
    void barkIsTakenOffAsInR() {
        StemProfile kozak = profile(spec(TaperForm.KOZAK_1969, bark(0.903563, 0.989388), 0.95, -1.15, 0.2), 40, 30);
        Tolerance.R_SCRIPT.check(33.68102889718864, kozak.dibCm(0.3), "Kozak at the stump (cm)");
        Tolerance.R_SCRIPT.check(22.76059456477361, kozak.dibCm(15), "Kozak half way up (cm)");
        Tolerance.relative("one part in a million", 1e-6)
                .check(1.23813989883205, kozak.volumeM3(0.3, 30), "Kozak (m³)");

        StemProfile ormerod = profile(spec(TaperForm.ORMEROD, bark(0.9, 0.97), 0.7), 40, 30);
        Tolerance.R_SCRIPT.check(32.228545138579477, ormerod.dibCm(1.3), "Ormerod at breast height (cm)");
        Tolerance.R_SCRIPT.check(15.752115703291230, ormerod.dibCm(20), "Ormerod at 20 m (cm)");
        Tolerance.R_SCRIPT.check(0.920626300949171, ormerod.volumeM3(2, 25), "Ormerod (m³)");
    }

    /** Girard's definition: 14.2 in at 17.3 ft of an 18-in tree is 78.9 (formulary 2.3; 14.2/18 = 0.78889). */
    @Test
    void formClassIsTheDiameterAtTheTopOfTheFirstLog() {
        TaperSpec spec = spec(TaperForm.FORM_CLASS, bark(0.9, 1), 100 * 14.2 / 18, 0.38);
        StemProfile stem =
                StemProfile.of(spec, 18 * 2.54, 90 * FOOT, 4.5 * FOOT).orElseThrow();
        Tolerance.ROUNDING.check(14.2, stem.dibCm(17.3 * FOOT) / 2.54, "at 17.3 ft (in)");
        Tolerance.ROUNDING.check(0.9 * 18, stem.dibCm(4.5 * FOOT) / 2.54, "dbh inside bark (in)");
    }

    @Test
    void formClassIsTheHyperbolaOverTheLineAsInR() {
        StemProfile stem = formClass(0.38);
        Tolerance.R_SCRIPT.check(16.746328125, stem.dibCm(FOOT) / 2.54, "at the stump (in)");
        Tolerance.R_SCRIPT.check(10.83584480982718, stem.dibCm(50 * FOOT) / 2.54, "at 50 ft (in)");
        Tolerance.R_SCRIPT.check(1.74668437978728, stem.volumeM3(FOOT, 90 * FOOT), "volume (m³)");
    }

    /** With y = a + (1 - a)·x the integral of (x/y)² dx is (y - 2a·ln y - a²/y)/(1 - a)³ (algebra). */
    @ParameterizedTest
    @CsvSource({"0.1", "0.2", "0.38", "0.6", "0.9"})
    void behresVolumeIsNearItsClosedForm(double a) {
        double formM = 18 * 0.0254 * 0.789;
        double whole = (primitive(a, 1) - primitive(a, a)) / Math.pow(1 - a, 3);
        double expected = Math.PI / 4 * formM * formM * whole * (90 - 17.3) * FOOT;
        Tolerance.ROUNDING.check(expected, formClass(a).volumeM3(17.3 * FOOT, 90 * FOOT), "a = " + a);
    }

    private static double primitive(double a, double y) {
        return y - 2 * a * Math.log(y) - a * a / y;
    }

    static Stream<StemProfile> stems() {
        return Stream.of(
                profile(spec(TaperForm.ORMEROD, Optional.empty(), 0.7), 40, 30),
                profile(spec(TaperForm.KOZAK_1969, bark(0.9, 0.98), 0.95, -1.15, 0.2), 40, 30),
                formClass(0.38));
    }

    @ParameterizedTest
    @MethodSource("stems")
    void everyStemThinsToNothingAndItsHeightsAreFoundAgain(StemProfile stem) {
        double top = stem.totalHeightM();
        assertEquals(0, stem.dibCm(top));
        assertEquals(0, stem.dibCm(top + 1));
        assertEquals(0, stem.volumeM3(top, top + 5));
        assertEquals(0, stem.volumeM3(9, 8));
        assertEquals(top, stem.heightAt(0));
        assertEquals(Double.NaN, stem.heightAt(stem.dibCm(0) + 0.1));
        for (int i = 1; i < 50; i++) {
            double h = top * i / 50;
            assertTrue(stem.dibCm(h) < stem.dibCm(top * (i - 1) / 50), "thinner at " + h);
            Tolerance.relative("bisection", 1e-9).check(h, stem.heightAt(stem.dibCm(h)), "height (m)");
            double whole = stem.volumeM3(0, top);
            Tolerance.relative("two integrals", 1e-7)
                    .check(whole, stem.volumeM3(0, h) + stem.volumeM3(h, top), "parts add up (m³)");
        }
        Tolerance.relative("two integrals", 1e-12)
                .check(stem.volumeM3(0, top), stem.volumeM3(0, top + 3), "nothing above the tip");
    }

    @Test
    void aTreeThatTheFormDoesNotReachHasNoProfile() {
        TaperSpec ormerod = spec(TaperForm.ORMEROD, Optional.empty(), 1);
        TaperSpec formClass = spec(TaperForm.FORM_CLASS, bark(0.9, 1), 78, 0.38);
        TaperSpec thickAbove = spec(TaperForm.FORM_CLASS, bark(0.75, 1), 78, 0.38);
        assertTrue(StemProfile.of(ormerod, 20, 1.3, 1.3).isEmpty(), "no higher than breast height");
        assertTrue(StemProfile.of(ormerod, 20, Double.NaN, 1.3).isEmpty(), "no height");
        assertTrue(StemProfile.of(formClass, 20, 17.3 * FOOT, 1.3).isEmpty(), "no higher than 17.3 ft");
        assertTrue(StemProfile.of(formClass, 20, 17.4 * FOOT, 1.3).isPresent(), "higher than 17.3 ft");
        assertTrue(StemProfile.of(thickAbove, 20, 20, 1.3).isEmpty(), "thicker above");
    }

    @Test
    void aSpeciesHasItsOwnProfileOrItsGroupsOrTheRest() {
        TaperSpec own = spec(TaperForm.ORMEROD, Optional.empty(), 1);
        TaperSpec group = spec(TaperForm.ORMEROD, Optional.empty(), 0.8);
        TaperSpec rest = spec(TaperForm.ORMEROD, Optional.empty(), 0.5);
        Map<String, String> groupOf = Map.of("DF", "firs", "GF", "firs");
        ProfileBook book = ProfileBook.of(Map.of("DF", own, "firs", group, "*", rest), groupOf, 1.3);
        assertEquals(Optional.of(own), book.find("DF"));
        assertEquals(Optional.of(group), book.find("GF"));
        assertEquals(Optional.of(rest), book.find("WL"));
        assertEquals(20, book.profile("DF", 40, 21.3).orElseThrow().dibCm(11.3), 1e-9);
        assertTrue(ProfileBook.of(Map.of("DF", own), groupOf, 1.3)
                .profile("GF", 40, 20)
                .isEmpty());
    }
}
