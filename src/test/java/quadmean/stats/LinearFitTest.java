package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/** Weighted linear least squares against R's lm on felled trees, and against its own definition. */
class LinearFitTest {
    /** Some trees: diameter (in), height (ft), volume (ft³). */
    private record Trees(double[] d, double[] h, double[] v) {
        static Trees of(String name) {
            var rows = ReferenceFiles.csv(name + ".csv");
            return new Trees(
                    rows.stream().mapToDouble(r -> number(r, "dbh_in")).toArray(),
                    rows.stream().mapToDouble(r -> number(r, "height_ft")).toArray(),
                    rows.stream().mapToDouble(r -> number(r, "volume_ft3")).toArray());
        }

        double[] each(IntToDoubleFunction f) {
            double[] values = new double[v.length];
            Arrays.setAll(values, f);
            return values;
        }

        LinearFit fit(String form) {
            double[] one = each(i -> 1);
            double[] size = each(i -> d[i] * d[i] * h[i]);
            double[] weights = each(i -> 1 / (size[i] * size[i]));
            return switch (form) {
                case "combined" -> LinearFit.of(new double[][] {one, size}, v, one);
                case "combined_weighted" -> LinearFit.of(new double[][] {one, size}, v, weights);
                case "schumacher_hall" ->
                    LinearFit.of(
                            new double[][] {one, each(i -> Math.log(d[i])), each(i -> Math.log(h[i]))},
                            each(i -> Math.log(v[i])),
                            one);
                case "honer" ->
                    LinearFit.of(new double[][] {one, each(i -> 1 / h[i])}, each(i -> d[i] * d[i] / v[i]), one);
                case "dbh_and_height" -> LinearFit.of(new double[][] {one, d, h}, v, one);
                case "dbh" -> LinearFit.of(new double[][] {one, d}, v, one);
                default -> throw new IllegalArgumentException(form);
            };
        }
    }

    /** felled.json: R 4.2.2 lm, script felled.R, fourteen digits. */
    @ParameterizedTest
    @CsvSource({
        "blackcherry, combined",
        "blackcherry, combined_weighted",
        "blackcherry, schumacher_hall",
        "blackcherry, honer",
        "blackcherry, dbh_and_height",
        "blackcherry, dbh",
        "redoak, combined",
        "redoak, combined_weighted",
        "redoak, schumacher_hall",
        "redoak, honer",
        "redoak, dbh_and_height",
        "redoak, dbh"
    })
    void agreesWithTheReference(String data, String form) {
        JsonNode expected = ReferenceFiles.json("felled.json").get(data).get(form);
        LinearFit fit = Trees.of(data).fit(form);
        Tolerance t = Tolerance.R_SCRIPT;
        t.check(numbers(expected.get("estimate")), fit.coefficients(), "coefficients");
        double[] se = new double[fit.coefficients().length];
        Arrays.setAll(se, fit::standardError);
        t.check(numbers(expected.get("se")), se, "standard errors");
        t.check(number(expected.get("sigma")), fit.sigma(), "sigma");
        t.check(number(expected.get("r2")), fit.rSquared(), "R²");
        t.check(numbers(expected.get("hat")), fit.leverages(), "leverages");
        double[] cook = numbers(expected.get("cook"));
        for (int i = 0; i < cook.length; i++) {
            // a distance is a square of a residual: where that is nearly nothing its digits are lost
            Tolerance.absolute("square of a rounded residual", 1e-9 * (1 + cook[i]))
                    .check(cook[i], fit.cook(i), "cook " + i);
        }
    }

    /** Formulary 2.2, printed digits: V = -57.98766 + 4.70816 D + 0.33925 H and V = -36.943459 + 5.065856 D (R lm). */
    @Test
    void plainRegressionsOfTheBlackCherriesToThePrintedDigits() {
        Trees trees = Trees.of("blackcherry");
        Tolerance.printed(5)
                .check(
                        new double[] {-57.98766, 4.70816, 0.33925},
                        trees.fit("dbh_and_height").coefficients(),
                        "on D and H");
        Tolerance.printed(6)
                .check(new double[] {-36.943459, 5.065856}, trees.fit("dbh").coefficients(), "on D");
    }

    /** By definition: the fit without an observation, done. */
    @ParameterizedTest
    @ValueSource(strings = {"combined", "combined_weighted", "schumacher_hall", "honer", "dbh_and_height"})
    void deletionEqualsRefittingWithoutTheObservation(String form) {
        Trees all = Trees.of("blackcherry");
        LinearFit fit = all.fit(form);
        for (int i = 0; i < fit.n(); i++) {
            LinearFit without = new Trees(without(all.d, i), without(all.h, i), without(all.v, i)).fit(form);
            double predicted = 0;
            for (int k = 0; k < without.coefficients().length; k++) {
                predicted += without.coefficients()[k] * column(all, form, k, i);
            }
            Tolerance.R_SCRIPT.check(predicted, fit.deletedFitted(i), "fitted without " + i);
            Tolerance.R_SCRIPT.check(without.sigma(), fit.deletedSigma(i), "sigma without " + i);
        }
    }

    private static double column(Trees t, String form, int k, int i) {
        if (k == 0) {
            return 1;
        }
        return switch (form) {
            case "schumacher_hall" -> Math.log(k == 1 ? t.d[i] : t.h[i]);
            case "honer" -> 1 / t.h[i];
            case "dbh_and_height" -> k == 1 ? t.d[i] : t.h[i];
            default -> t.d[i] * t.d[i] * t.h[i];
        };
    }

    private static double[] without(double[] values, int at) {
        double[] rest = new double[values.length - 1];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = values[i < at ? i : i + 1];
        }
        return rest;
    }

    @Test
    void pointsOnALineGiveTheLine() {
        double[] x = {1, 2, 3, 4};
        LinearFit fit =
                LinearFit.of(new double[][] {{1, 1, 1, 1}, x}, new double[] {5, 7, 9, 11}, new double[] {1, 2, 1, 3});
        Tolerance.ROUNDING.check(new double[] {3, 2}, fit.coefficients(), "line");
        assertEquals(0, fit.sigma(), 1e-14);
        assertEquals(2, Arrays.stream(fit.leverages()).sum(), 1e-12, "leverages sum to the number of coefficients");
    }

    @Test
    void equalColumnsAreNotToldApart() {
        double[] ones = {1, 1, 1, 1};
        double[] twos = {2, 2, 2, 2};
        LinearFit fit = LinearFit.of(new double[][] {ones, twos}, new double[] {1, 2, 3, 5}, ones);
        assertFalse(fit.hasFullRank());
        assertTrue(Double.isNaN(fit.coefficients()[0]) && Double.isNaN(fit.standardError(1)));
        assertTrue(Double.isNaN(fit.fitted()[0]) && Double.isNaN(fit.cook(0)));
    }

    @Test
    void anObservationThatACoefficientHangsOnHasNoDeletedFit() {
        double[] ones = {1, 1, 1, 1};
        double[] only = {0, 0, 0, 1};
        LinearFit fit = LinearFit.of(new double[][] {ones, only}, new double[] {1, 2, 4, 9}, ones);
        assertTrue(fit.hasFullRank());
        assertTrue(Double.isNaN(fit.deletedFitted(3)) && Double.isNaN(fit.deletedSigma(3)));
        assertTrue(Double.isFinite(fit.deletedFitted(0)));
    }

    @Test
    void asManyCoefficientsAsObservationsAreRefused() {
        double[] two = {1, 2};
        assertThrows(IllegalArgumentException.class, () -> LinearFit.of(new double[][] {two, {1, 1}}, two, two));
    }
}
