package quadmean.height;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.CurveForm;
import quadmean.support.Tolerance;

class CurveModelTest {
    private static final double[] DIAMETERS = {5, 10, 20, 40};

    /** Example parameters, in cm and m, and heights at dbh 5, 10, 20 and 40 cm, computed from the formulas. */
    static Stream<Arguments> checkValues() {
        return Stream.of(
                Arguments.of(
                        CurveModel.NASLUND, new double[] {1.8, 0.175}, new double[] {4.7938, 9.2349, 15.5399, 21.9612}),
                Arguments.of(
                        CurveModel.WYKOFF, new double[] {3.45, -9.5}, new double[] {7.7667, 14.5814, 21.3378, 26.2854}),
                Arguments.of(CurveModel.CHAPMAN_RICHARDS, new double[] {28, 0.05, 1.2}, new double[] {
                    5.8803, 10.4422, 17.4480, 24.8166
                }),
                Arguments.of(
                        CurveModel.POWER, new double[] {2.6, 0.63}, new double[] {8.4668, 12.3911, 18.4641, 27.8626}));
    }

    @ParameterizedTest
    @MethodSource("checkValues")
    void heightsAreThoseOfTheFormula(CurveModel model, double[] p, double[] heights) {
        for (int i = 0; i < DIAMETERS.length; i++) {
            double h = Heights.BREAST_HEIGHT_M + model.value(DIAMETERS[i], p);
            Tolerance.printed(4).check(heights[i], h, model + " at " + DIAMETERS[i] + " cm");
        }
    }

    /**
     * Wykoff, Crookston and Stage 1982 (GTR INT-133), inches and feet, breast height 4.5 ft; coefficients from memory,
     * so this checks the arithmetic in US units, not the coefficients.
     */
    @ParameterizedTest
    @CsvSource({"Douglas-fir,4.81519,-7.29306,41.09,68.07,91.67", "ponderosa pine,4.9288,-9.32795,33.70,63.69,93.14"})
    void theFormsWorkInFeetToo(String species, double a, double b, double at5, double at10, double at20) {
        double[] expected = {at5, at10, at20};
        for (int i = 0; i < expected.length; i++) {
            double h = 4.5 + CurveModel.WYKOFF.value(DIAMETERS[i], new double[] {a, b});
            Tolerance.printed(2).check(expected[i], h, species + " at " + DIAMETERS[i] + " in");
        }
    }

    /** Asymptotes by algebra: 1/b², exp(a), a. */
    @Test
    void hugeTreesApproachTheAsymptote() {
        Tolerance nearly = Tolerance.relative("dbh of 1e9", 1e-6);
        nearly.check(1 / (0.175 * 0.175), CurveModel.NASLUND.value(1e9, new double[] {1.8, 0.175}), "Näslund");
        nearly.check(Math.exp(3.45), CurveModel.WYKOFF.value(1e9, new double[] {3.45, -9.5}), "Wykoff");
        nearly.check(28, CurveModel.CHAPMAN_RICHARDS.value(1e9, new double[] {28, 0.05, 1.2}), "Chapman-Richards");
    }

    /** As b goes to 0 with a·b^c held, Chapman-Richards becomes the power curve (by algebra). */
    @Test
    void chapmanRichardsTendsToThePowerCurve() {
        double b = 1e-9;
        double[] p = {2.6 * Math.pow(b, -0.63), b, 0.63};
        for (double d : DIAMETERS) {
            double power = CurveModel.POWER.value(d, new double[] {2.6, 0.63});
            Tolerance.relative("b of 1e-9", 1e-7).check(power, CurveModel.CHAPMAN_RICHARDS.value(d, p), "d " + d);
        }
    }

    @ParameterizedTest
    @MethodSource("checkValues")
    void gradientsAgreeWithCentralDifferences(CurveModel model, double[] p, double[] heights) {
        Tolerance difference = Tolerance.relative("central difference", 1e-8);
        for (double d : DIAMETERS) {
            double[] gradient = model.gradient(d, p);
            assertEquals(model.parameters(), gradient.length);
            for (int k = 0; k < gradient.length; k++) {
                difference.check(
                        centralDifference(model, d, p, k), gradient[k], model + " at " + d + ", parameter " + k);
            }
        }
    }

    /** On points of the curve itself the linear forms give the very parameters. */
    @ParameterizedTest
    @EnumSource(
            value = CurveModel.class,
            names = {"NASLUND", "WYKOFF", "POWER"})
    void linearFormsStartAtTheTruth(CurveModel model) {
        double[] p = (double[]) checkValues()
                .filter(a -> a.get()[0] == model)
                .findFirst()
                .orElseThrow()
                .get()[1];
        double[] d = IntStream.rangeClosed(5, 60).asDoubleStream().toArray();
        double[] y = IntStream.range(0, d.length)
                .mapToDouble(i -> model.value(d[i], p))
                .toArray();
        List<double[]> starts = model.starts(d, y);
        Tolerance.relative("straight-line regression", 1e-10).check(p, starts.get(0), model.toString());
    }

    /** The tallest tree stands at 1/1.1 of the asymptote: then the first start is the truth (by algebra). */
    @Test
    void chapmanRichardsStartsFromATenthAboveTheTallest() {
        double[] d = {5, 10, 20, 30, Math.log(11) / 0.05};
        double[] y = Arrays.stream(d).map(x -> 28 * (1 - Math.exp(-0.05 * x))).toArray();
        List<double[]> starts = CurveModel.CHAPMAN_RICHARDS.starts(d, y);
        Tolerance.relative("straight-line regression", 1e-10).check(new double[] {28, 0.05, 1}, starts.get(0), "start");
    }

    @ParameterizedTest
    @EnumSource(CurveForm.class)
    void everyFormHasItsModel(CurveForm form) {
        assertEquals(form.name(), CurveModel.of(form).name());
    }

    /** Fourth-order central difference. */
    private static double centralDifference(CurveModel model, double d, double[] p, int k) {
        double step = 1e-3 * Math.abs(p[k]);
        double near = at(model, d, p, k, step) - at(model, d, p, k, -step);
        double far = at(model, d, p, k, 2 * step) - at(model, d, p, k, -2 * step);
        return (8 * near - far) / (12 * step);
    }

    private static double at(CurveModel model, double d, double[] p, int k, double shift) {
        double[] moved = p.clone();
        moved[k] += shift;
        return model.value(d, moved);
    }
}
