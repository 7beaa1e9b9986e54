package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.BarkSpec;
import quadmean.model.CubicRule;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.support.Tolerance;
import quadmean.units.Unit;

class BarkTest {
    /** Volume goes with the square of diameter: 0.90² = 0.81. */
    @Test
    void aRatioOf90PerCentLeaves81PerCentOfTheVolume() {
        Bark bark = bark(0.90, 1, Unit.CENTIMETRE);
        Tolerance.ROUNDING.check(0.81, bark.volumeRatio().orElseThrow(), "k²");
        double outside = CubicVolume.ofDiameters(CubicRule.NEWTON, 40, 34, 27, 5);
        double inside =
                CubicVolume.ofDiameters(CubicRule.NEWTON, bark.insideCm(40), bark.insideCm(34), bark.insideCm(27), 5);
        Tolerance.ROUNDING.check(0.81 * outside, inside, "volume inside bark");
    }

    /** dib = 0.903563·dob^0.989388 in inches (Larsen & Hann 1985, coefficients from memory); values by R. */
    @Test
    void coefficientsServeInTheirOwnUnit() {
        Bark bark = bark(0.903563, 0.989388, Unit.INCH);
        Tolerance.R_SCRIPT.check(8.81751970105613 * 2.54, bark.insideCm(25.4), "10 in");
        Tolerance.R_SCRIPT.check(26.4058759097932, bark.insideCm(30), "30 cm");
        assertEquals(OptionalDouble.empty(), bark.volumeRatio());
    }

    @Test
    void barkIsNeverLessThanNothing() {
        assertEquals(0.5, bark(0.95, 0.5, Unit.CENTIMETRE).insideCm(0.5));
        assertEquals(0, bark(0.95, 0.5, Unit.CENTIMETRE).insideCm(0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -0.9, Double.POSITIVE_INFINITY})
    void coefficientsOutOfTheirDomainAreRefused(double bad) {
        refused("bark coefficient a", bad, () -> bark(bad, 1, Unit.INCH));
        refused("bark coefficient b", bad, () -> bark(0.9, bad, Unit.INCH));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, Double.POSITIVE_INFINITY})
    void diametersOutOfTheirDomainAreRefused(double bad) {
        refused("diameter outside bark", bad, () -> bark(0.9, 1, Unit.INCH).insideCm(bad));
    }

    private static void refused(String start, double value, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(start) && message.endsWith("got " + value), message);
    }

    private static Bark bark(double a, double b, Unit unit) {
        return Bark.of(new BarkSpec(a, b, unit, new Provenance("test", Standing.INVENTED)));
    }
}
