package quadmean.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.CurveForm;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/** Values, derivatives, asymptotes and inflections of every form. */
class CurveModelTest {
    private static final double[] DIAMETERS = {5, 10, 20, 40};

    /** Names of forms in hd-models.csv that differ from ours. */
    private static final Map<String, String> OURS = Map.of(
            "naslund_k2", "naslund", "naslund_k3", "naslund3", "curtis_ratio", "curtis", "hossfeld4", "hossfeld");

    /** hd-models.csv: example parameters in cm and m with heights computed from the formula outside this program. */
    static Stream<Arguments> examples() {
        return ReferenceFiles.csv("hd-models.csv").stream()
                .filter(r -> r.getField("species").equals("example only"))
                .map(r -> Arguments.of(
                        form(r.getField("model")),
                        Stream.of(r.getField("parameters").split(";"))
                                .mapToDouble(Double::parseDouble)
                                .toArray(),
                        IntStream.of(5, 10, 20, 40)
                                .mapToDouble(d -> ReferenceFiles.number(r, "h_at_d" + d))
                                .toArray()));
    }

    private static CurveForm form(String name) {
        String id = OURS.getOrDefault(name, name);
        return Arrays.stream(CurveForm.values())
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no form " + name));
    }

    /** The example parameters of a form. */
    static double[] example(CurveForm form) {
        return examples()
                .filter(a -> a.get()[0] == form)
                .map(a -> (double[]) a.get()[1])
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyFormHasItsExample() {
        assertEquals(
                List.of(CurveForm.values()),
                examples().map(a -> (CurveForm) a.get()[0]).sorted().toList());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void heightsAreThoseOfTheFormula(CurveForm form, double[] p, double[] heights) {
        for (int i = 0; i < DIAMETERS.length; i++) {
            double h = Heights.BREAST_HEIGHT_M + CurveModel.of(form).value(DIAMETERS[i], p);
            Tolerance.printed(4).check(heights[i], h, form + " at " + DIAMETERS[i] + " cm");
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
            double h = 4.5 + ExponentialCurve.WYKOFF.value(DIAMETERS[i], new double[] {a, b});
            Tolerance.printed(2).check(expected[i], h, species + " at " + DIAMETERS[i] + " in");
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void gradientsAgreeWithCentralDifferences(CurveForm form, double[] p, double[] heights) {
        checkGradient(CurveModel.of(form), p);
    }

    @ParameterizedTest
    @EnumSource(LimitCurve.class)
    void gradientsOfLimitsToo(LimitCurve limit) {
        checkGradient(limit, Arrays.copyOf(new double[] {2.6, 0.03}, limit.parameters()));
    }

    private static void checkGradient(CurveModel model, double[] p) {
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

    /** A tree of dbh 1e12 stands within a hair of the asymptote (Korf, which goes as d^-0.8, within 1e-8). */
    @ParameterizedTest
    @EnumSource(CurveForm.class)
    void hugeTreesApproachTheAsymptote(CurveForm form) {
        CurveModel model = CurveModel.of(form);
        double asymptote = model.asymptote(example(form));
        double huge = model.value(1e12, example(form));
        if (form == CurveForm.POWER) {
            assertEquals(Double.POSITIVE_INFINITY, asymptote);
            assertTrue(huge > 1e6, "still rising: " + huge);
        } else {
            Tolerance.relative("dbh of 1e12", 1e-8).check(asymptote, huge, form.label());
        }
    }

    /** The second difference changes its sign at the inflection, from above to below zero; without one it stays below. */
    @ParameterizedTest
    @EnumSource(CurveForm.class)
    void theCurveBendsOverAtItsInflection(CurveForm form) {
        CurveModel model = CurveModel.of(form);
        double at = model.inflection(example(form));
        if (Double.isNaN(at)) {
            assertTrue(
                    DoubleStream.of(0.5, 2, 5, 10, 20, 40).allMatch(d -> bend(model, d, example(form)) < 0),
                    form.label());
        } else {
            assertTrue(at > 0, form + ": " + at);
            assertTrue(bend(model, at * 0.99, example(form)) > 0, form + " below " + at);
            assertTrue(bend(model, at * 1.01, example(form)) < 0, form + " above " + at);
        }
    }

    /** Parameters at which these forms bend the same way for all dbh above 0, by algebra: the limits of the formulas. */
    @ParameterizedTest
    @CsvSource({
        "CURTIS,31 1",
        "WYKOFF,3.4 -2",
        "CHAPMAN_RICHARDS,28 0.05 1",
        "WEIBULL,28 0.03 1",
        "RATKOWSKY,32 12 6",
        "LOGISTIC,27 1 0.1",
        "GOMPERTZ,27 1 0.1",
        "HOSSFELD,32 0.01 1",
        "PRODAN,0 0.9 0.02"
    })
    void someCurvesHaveNoInflection(CurveForm form, String values) {
        double[] p =
                Stream.of(values.split(" ")).mapToDouble(Double::parseDouble).toArray();
        CurveModel model = CurveModel.of(form);
        assertTrue(Double.isNaN(model.inflection(p)), form.label());
        assertTrue(DoubleStream.of(1, 5, 10, 20).allMatch(d -> bend(model, d, p) < 0), form.label());
    }

    private static double bend(CurveModel model, double d, double[] p) {
        double step = 1e-3 * d;
        return model.value(d + step, p) - 2 * model.value(d, p) + model.value(d - step, p);
    }

    /** Parameters far out on the way to infinity, chosen by algebra so that the limit has these parameters. */
    static Stream<Arguments> nearlyLimits() {
        double far = 1e9;
        return Stream.of(
                Arguments.of(
                        CurveForm.CHAPMAN_RICHARDS, new double[] {2.6 * Math.pow(far, 0.63), 1 / far, 0.63}, 2.6, 0.63),
                Arguments.of(CurveForm.WEIBULL, new double[] {2.6 * far, 1 / far, 0.63}, 2.6, 0.63),
                Arguments.of(CurveForm.HOSSFELD, new double[] {2.6 * far, 1 / far, 0.63}, 2.6, 0.63),
                // ln a - b·(1 - c·ln d + ...) with b·c = 0.63; a of e^630 is still a double
                Arguments.of(CurveForm.KORF, new double[] {2.6 * Math.exp(630), 630, 1e-3}, 2.6, 0.63),
                Arguments.of(CurveForm.LOGISTIC, new double[] {2.6 * far, far, 0.03}, 2.6, 0.03),
                Arguments.of(CurveForm.GOMPERTZ, new double[] {2.6 * Math.exp(300), 300, 1e-4}, 2.6, 0.03),
                Arguments.of(CurveForm.RATKOWSKY, new double[] {2.6 * Math.exp(300), 3e6, 1e4}, 2.6, 0.03),
                Arguments.of(CurveForm.MEYER, new double[] {0.7 * far, 1 / far}, 0.7, 0),
                Arguments.of(CurveForm.HYPERBOLIC, new double[] {0.7 * far, far}, 0.7, 0));
    }

    /** Each form with a limit comes near it; the bound is the first neglected term at dbh 40 (by algebra). */
    @ParameterizedTest
    @MethodSource("nearlyLimits")
    void formsTendToTheirLimits(CurveForm form, double[] p, double a, double b) {
        LimitCurve limit = CurveModel.of(form).limit().orElseThrow();
        double[] q = Arrays.copyOf(new double[] {a, b}, limit.parameters());
        Tolerance near = Tolerance.relative("on the way to infinity", 5e-3);
        for (double d : DIAMETERS) {
            near.check(limit.value(d, q), CurveModel.of(form).value(d, p), form + " at " + d);
        }
        assertTrue(limit.words().contains("a·"), limit.words());
    }

    @Test
    void everyLimitIsReached() {
        assertEquals(
                Arrays.stream(CurveForm.values())
                        .filter(f -> CurveModel.of(f).limit().isPresent())
                        .toList(),
                nearlyLimits().map(a -> (CurveForm) a.get()[0]).sorted().toList());
    }

    /** On points of the curve itself the linear forms give the very parameters. */
    @ParameterizedTest
    @EnumSource(
            value = CurveForm.class,
            names = {"NASLUND", "NASLUND_CUBED", "MICHAILOFF", "CURTIS", "WYKOFF", "POWER", "HYPERBOLIC"})
    void linearFormsStartAtTheTruth(CurveForm form) {
        double[] p = example(form);
        double[] d = IntStream.rangeClosed(5, 60).asDoubleStream().toArray();
        double[] y = Arrays.stream(d).map(x -> CurveModel.of(form).value(x, p)).toArray();
        List<double[]> starts = CurveModel.of(form).starts(d, y);
        Tolerance.relative("straight-line regression", 1e-10).check(p, starts.get(0), form.label());
    }

    @ParameterizedTest
    @EnumSource(LimitCurve.class)
    void limitsStartAtTheTruth(LimitCurve limit) {
        double[] p = Arrays.copyOf(new double[] {2.6, 0.03}, limit.parameters());
        double[] d = IntStream.rangeClosed(5, 60).asDoubleStream().toArray();
        double[] y = Arrays.stream(d).map(x -> limit.value(x, p)).toArray();
        Tolerance.relative("straight-line regression", 1e-10)
                .check(p, limit.starts(d, y).get(0), limit.words());
    }

    /** The tallest tree stands at 1/1.05 of the asymptote: then the first start is the truth (by algebra). */
    @ParameterizedTest
    @EnumSource(
            value = CurveForm.class,
            names = {"WEIBULL", "KORF", "LOGISTIC", "GOMPERTZ", "HOSSFELD", "MEYER"})
    void sigmoidsStartFromJustAboveTheTallest(CurveForm form) {
        double[] p = example(form);
        CurveModel model = CurveModel.of(form);
        double top = diameterAt(model, p, p[0] / 1.05);
        double[] d = IntStream.rangeClosed(1, 50).mapToDouble(i -> top * i / 50).toArray();
        double[] y = Arrays.stream(d).map(x -> model.value(x, p)).toArray();
        assertEquals(p[0] / 1.05, y[y.length - 1], 1e-9 * p[0], "the last tree is the tallest");
        Tolerance.relative("straight-line regression", 1e-8)
                .check(p, model.starts(d, y).get(0), form.label());
    }

    private static double diameterAt(CurveModel model, double[] p, double y) {
        double low = 1;
        double high = 1e6;
        for (int i = 0; i < 200; i++) {
            double d = Math.sqrt(low * high);
            if (model.value(d, p) < y) {
                low = d;
            } else {
                high = d;
            }
        }
        return high;
    }

    @ParameterizedTest
    @EnumSource(CurveForm.class)
    void examplesLieInTheDomain(CurveForm form) {
        CurveModel model = CurveModel.of(form);
        double[] p = example(form);
        assertEquals(model.parameters(), p.length);
        assertTrue(model.accepts(p));
        double[] nan = p.clone();
        nan[0] = Double.NaN;
        boolean isUnbounded = model.limit().isEmpty();
        assertEquals(isUnbounded, model.accepts(nan), "forms with a limit keep to their domain, NaN lies outside");
    }

    @ParameterizedTest
    @CsvSource({"RATKOWSKY,32 12 -1", "RATKOWSKY,32 -1 3", "KORF,36 7 0", "HOSSFELD,32 0 1", "WEIBULL,28 -1 1"})
    void parametersOutsideTheDomainAreRefused(CurveForm form, String values) {
        double[] p =
                Stream.of(values.split(" ")).mapToDouble(Double::parseDouble).toArray();
        assertEquals(false, CurveModel.of(form).accepts(p));
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
