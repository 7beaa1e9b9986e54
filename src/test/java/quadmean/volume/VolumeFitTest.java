package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;
import static quadmean.volume.VolumeFitForm.COMBINED_VARIABLE;
import static quadmean.volume.VolumeFitForm.FORM_FACTOR;
import static quadmean.volume.VolumeFitForm.HONER;
import static quadmean.volume.VolumeFitForm.LOG_POLYNOMIAL;
import static quadmean.volume.VolumeFitForm.SCHUMACHER_HALL;
import static quadmean.volume.VolumeFitWeights.EQUAL;
import static quadmean.volume.VolumeFitWeights.INVERSE_SQUARE;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.FelledTree;
import quadmean.stats.LinearFit;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;
import quadmean.units.BasalArea;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Volume equations fitted to felled trees. */
class VolumeFitTest {
    private static final List<FelledTree> CHERRIES = FelledTrees.of("blackcherry");

    private static double[] coefficients(VolumeFit fit) {
        return regression(fit).coefficients();
    }

    private static LinearFit regression(VolumeFit fit) {
        return Objects.requireNonNull(fit.fit());
    }

    private static VolumeFit us(VolumeFitForm form, VolumeFitWeights weights, List<FelledTree> trees) {
        return FelledTrees.fit(form, weights, UnitSystem.US, trees);
    }

    static Stream<Arguments> printed() {
        return Stream.of(
                Arguments.of(SCHUMACHER_HALL, EQUAL, List.of(-6.631617126, 1.982649910, 1.117123333), 9),
                Arguments.of(COMBINED_VARIABLE, EQUAL, List.of(-0.297679437, 0.002124374394), 9),
                Arguments.of(COMBINED_VARIABLE, INVERSE_SQUARE, List.of(-0.029706963, 0.002101956706), 9),
                Arguments.of(HONER, EQUAL, List.of(-0.519517904, 518.7294467), 7));
    }

    /** Formulary 2.2: R lm on `trees`, to the digits printed. */
    @ParameterizedTest
    @MethodSource("printed")
    void blackCherriesToThePrintedDigits(
            VolumeFitForm form, VolumeFitWeights weights, List<Double> expected, int decimals) {
        double[] b = coefficients(us(form, weights, CHERRIES));
        Tolerance.printed(decimals).check(expected.stream().mapToDouble(x -> x).toArray(), b, form + " " + weights);
    }

    /** Formulary 2.2: residual standard deviations and R². */
    @Test
    void blackCherriesScatterAsPrinted() {
        Tolerance.printed(6)
                .check(0.081386, us(SCHUMACHER_HALL, EQUAL, CHERRIES).sigma(), "sd of ln V");
        VolumeFit combined = us(COMBINED_VARIABLE, EQUAL, CHERRIES);
        Tolerance.printed(6).check(2.492997, combined.sigma(), "sd of V");
        Tolerance.printed(6).check(0.977765, combined.rSquared(), "R²");
        assertTrue(Double.isNaN(us(COMBINED_VARIABLE, INVERSE_SQUARE, CHERRIES).rSquared()));
    }

    /**
     * Formulary 2.2: volumes at three sizes, the logarithm not corrected for bias. It prints 71.9311 for the last, which its
     * own coefficients do not give: -0.297679437 + 0.002124374394·34 000 = 71.93104996.
     */
    @ParameterizedTest
    @CsvSource({"10, 70, 14.5807, 14.5729", "15, 80, 37.8171, 37.9411", "20, 85, 71.5832, 71.9310"})
    void volumesAtThreeSizesAsPrinted(double d, double h, double byLogs, double byCombined) {
        FelledTree tree = FelledTrees.tree(1, d, h, 1);
        Tolerance.printed(4).check(byLogs, volume(SCHUMACHER_HALL, tree), "logs");
        Tolerance.printed(4).check(byCombined, volume(COMBINED_VARIABLE, tree), "combined");
    }

    private static double volume(VolumeFitForm form, FelledTree tree) {
        double[] b = coefficients(us(form, EQUAL, CHERRIES));
        double[] x = form.predictors(tree, UnitSystem.US);
        double y = 0;
        for (int k = 0; k < b.length; k++) {
            y += b[k] * x[k];
        }
        return form.volume(tree, y, 0, UnitSystem.US);
    }

    static Stream<Arguments> redOaks() {
        return Stream.of(
                Arguments.of(SCHUMACHER_HALL, EQUAL, "schumacher_hall"),
                Arguments.of(COMBINED_VARIABLE, EQUAL, "combined_variable"),
                Arguments.of(COMBINED_VARIABLE, INVERSE_SQUARE, "combined_variable_weighted"));
    }

    /** redoak.json: R 4.2.2 lm, script redoak.R, twelve digits. */
    @ParameterizedTest
    @MethodSource("redOaks")
    void redOaksAgreeWithTheReference(VolumeFitForm form, VolumeFitWeights weights, String name) {
        JsonNode expected = ReferenceFiles.json("redoak.json").get(name);
        VolumeFit fit = us(form, weights, FelledTrees.of("redoak"));
        List<JsonNode> values = new ArrayList<>();
        expected.forEach(values::add);
        for (int k = 0; k < coefficients(fit).length; k++) {
            Tolerance.R_SCRIPT.check(number(values.get(k).get("estimate")), coefficients(fit)[k], "coefficient " + k);
            Tolerance.R_SCRIPT.check(
                    number(values.get(k).get("se")), regression(fit).standardError(k), "standard error " + k);
        }
        Tolerance.R_SCRIPT.check(number(expected.get("sigma")), fit.sigma(), "sigma");
    }

    static Stream<Arguments> leaveOneOut() {
        return Stream.of("blackcherry", "redoak")
                .flatMap(data -> Stream.of(
                        Arguments.of(data, SCHUMACHER_HALL, EQUAL, "schumacher_hall"),
                        Arguments.of(data, LOG_POLYNOMIAL, EQUAL, "log_polynomial"),
                        Arguments.of(data, COMBINED_VARIABLE, EQUAL, "combined"),
                        Arguments.of(data, COMBINED_VARIABLE, INVERSE_SQUARE, "combined_weighted"),
                        Arguments.of(data, HONER, EQUAL, "honer"),
                        Arguments.of(data, FORM_FACTOR, INVERSE_SQUARE, "form_factor_weighted")));
    }

    /** felled.json: R refits without each tree, back-transformed with that fit's own σ; script felled.R. */
    @ParameterizedTest
    @MethodSource("leaveOneOut")
    void leaveOneOutErrorAndBiasAgreeWithRefitting(
            String data, VolumeFitForm form, VolumeFitWeights weights, String name) {
        JsonNode expected = ReferenceFiles.json("felled.json").get(data).get(name);
        VolumeFit fit = us(form, weights, FelledTrees.of(data));
        double error = Unit.CUBIC_METRE.convert(fit.leaveOneOutM3(), Unit.CUBIC_FOOT);
        Tolerance.R_SCRIPT.check(number(expected.get("leave_one_out")), error, "leave-one-out error, ft³");
        new Tolerance("digits of the R reference, and of a difference of sums", 1e-9, 1e-10)
                .check(number(expected.get("bias_percent")), fit.biasPercent(), "bias");
        double[] cook = numbers(expected.get("cook"));
        List<Integer> influential = fit.influential();
        double[] hat = numbers(expected.get("hat"));
        for (int i = 0; i < cook.length; i++) {
            boolean is = cook[i] > 4.0 / cook.length || hat[i] > 3.0 * coefficients(fit).length / cook.length;
            assertEquals(is, influential.contains(i), "tree " + i);
        }
    }

    /** felled.json: R 4.2.2 lm, script felled.R. */
    @ParameterizedTest
    @ValueSource(strings = {"blackcherry", "redoak"})
    void theSecondDegreeInLogarithmsAgreesWithTheReference(String data) {
        JsonNode expected = ReferenceFiles.json("felled.json").get(data).get("log_polynomial");
        VolumeFit fit = us(LOG_POLYNOMIAL, EQUAL, FelledTrees.of(data));
        Tolerance.R_SCRIPT.check(numbers(expected.get("estimate")), coefficients(fit), "coefficients");
        double[] se = numbers(expected.get("se"));
        for (int k = 0; k < se.length; k++) {
            Tolerance.R_SCRIPT.check(se[k], regression(fit).standardError(k), "standard error " + k);
        }
        Tolerance.R_SCRIPT.check(number(expected.get("sigma")), fit.sigma(), "sigma");
        Tolerance.R_SCRIPT.check(number(expected.get("r2")), fit.rSquared(), "R²");
    }

    /** Algebra: with weights 1/(D²H)² the form factor is the mean of the trees' own. */
    @Test
    void weightedFormFactorIsTheMeanOfFormFactors() {
        double mean = CHERRIES.stream()
                .mapToDouble(t -> t.volumeM3() / (BasalArea.ofTree(t.dbhCm()) * t.heightM()))
                .average()
                .orElseThrow();
        VolumeFit fit = us(FORM_FACTOR, INVERSE_SQUARE, CHERRIES);
        Tolerance.ROUNDING.check(mean, coefficients(fit)[0], "form factor");
    }

    @ParameterizedTest
    @EnumSource(VolumeFitForm.class)
    void theOrderOfTheTreesDoesNotShow(VolumeFitForm form) {
        List<FelledTree> shuffled = new ArrayList<>(CHERRIES);
        Collections.shuffle(shuffled, new Random(20));
        VolumeFit one = us(form, INVERSE_SQUARE, CHERRIES);
        VolumeFit other = us(form, INVERSE_SQUARE, shuffled);
        Tolerance order = Tolerance.relative("sums in another order", 1e-10);
        order.check(coefficients(one), coefficients(other), "coefficients");
        order.check(one.leaveOneOutM3(), other.leaveOneOutM3(), "leave-one-out error");
    }

    /** Algebra: each form only rescales its coefficients, so volumes and their errors do not depend on the units. */
    @ParameterizedTest
    @EnumSource(VolumeFitForm.class)
    void theUnitsOfTheFitDoNotShow(VolumeFitForm form) {
        for (VolumeFitWeights weights : VolumeFitWeights.values()) {
            VolumeFit us = us(form, weights, CHERRIES);
            VolumeFit metric = FelledTrees.fit(form, weights, UnitSystem.METRIC, CHERRIES);
            Tolerance units = Tolerance.relative("the same fit in other units", 1e-10);
            units.check(us.fitted(), metric.fitted(), "volumes");
            units.check(us.leaveOneOutM3(), metric.leaveOneOutM3(), "leave-one-out error");
        }
    }

    /** Definition: 1 ft³ = 0.028316846592 m³, 1 in = 2.54 cm, 1 ft = 0.3048 m. */
    @Test
    void combinedVariableInMetricIsTheOneInUsConverted() {
        double[] us = coefficients(us(COMBINED_VARIABLE, INVERSE_SQUARE, CHERRIES));
        double[] metric = coefficients(FelledTrees.fit(COMBINED_VARIABLE, INVERSE_SQUARE, UnitSystem.METRIC, CHERRIES));
        double ft3 = 0.028316846592;
        double[] converted = {us[0] * ft3, us[1] * ft3 / (2.54 * 2.54 * 0.3048)};
        Tolerance.relative("the same fit in other units", 1e-9).check(converted, metric, "coefficients");
    }

    @ParameterizedTest
    @EnumSource(VolumeFitForm.class)
    void treesOfAFormGiveItsCoefficientsBack(VolumeFitForm form) {
        double[] b = switch (form) {
            case COMBINED_VARIABLE -> new double[] {0.4, 0.002};
            case SCHUMACHER_HALL -> new double[] {-6, 1.9, 1.05};
            case LOG_POLYNOMIAL -> new double[] {-4, 1.4, 0.6, 0.02, -0.015, 0.14};
            case HONER -> new double[] {1.2, 330};
            case FORM_FACTOR -> new double[] {0.41};
        };
        List<FelledTree> trees = CHERRIES.stream()
                .map(t -> {
                    double[] x = form.predictors(t, UnitSystem.US);
                    double y = 0;
                    for (int k = 0; k < b.length; k++) {
                        y += b[k] * x[k];
                    }
                    double v = form.volume(t, y, 0, UnitSystem.US);
                    return new FelledTree(
                            t.id(), t.row(), "", t.dbhCm(), t.heightM(), Unit.CUBIC_FOOT.convert(v, Unit.CUBIC_METRE));
                })
                .toList();
        VolumeFit fit = us(form, INVERSE_SQUARE, trees);
        Tolerance.relative("trees made from the equation", 1e-9).check(b, coefficients(fit), "coefficients");
        assertTrue(fit.leaveOneOutPercent() < 1e-7, "error " + fit.leaveOneOutPercent());
    }

    @ParameterizedTest
    @CsvSource({"COMBINED_VARIABLE, 3", "SCHUMACHER_HALL, 4", "HONER, 3", "FORM_FACTOR, 2", "LOG_POLYNOMIAL, 29"})
    void fewerTreesThanNeededGiveNoEquation(VolumeFitForm form, int trees) {
        VolumeFit fit = us(form, EQUAL, CHERRIES.subList(0, trees));
        assertEquals(VolumeFitStatus.TOO_FEW_TREES, fit.status());
        assertTrue(fit.remark().contains((trees + 1) + " needed"), fit.remark());
        assertTrue(Double.isNaN(fit.leaveOneOutM3()) && Double.isNaN(fit.biasPercent()) && Double.isNaN(fit.sigma()));
        assertEquals(
                VolumeFitStatus.FITTED,
                us(form, EQUAL, CHERRIES.subList(0, trees + 1)).status());
    }

    @Test
    void treesOfOneHeightDoNotTellTheCoefficientsOfHonerApart() {
        List<FelledTree> trees = Stream.of(8.0, 10.0, 12.0, 14.0, 16.0)
                .map(d -> FelledTrees.tree(d.intValue(), d, 70, 0.002 * d * d * 70))
                .toList();
        assertEquals(VolumeFitStatus.COLLINEAR, us(HONER, EQUAL, trees).status());
        assertEquals(
                VolumeFitStatus.COLLINEAR, us(SCHUMACHER_HALL, EQUAL, trees).status());
        assertEquals(VolumeFitStatus.FITTED, us(COMBINED_VARIABLE, EQUAL, trees).status());
    }

    /** A steep line through large trees is below zero at the smallest. */
    @Test
    void anEquationWithoutVolumeForOneOfItsTreesIsNone() {
        List<FelledTree> trees = List.of(
                FelledTrees.tree(1, 5, 40, 0.5),
                FelledTrees.tree(2, 18, 80, 20),
                FelledTrees.tree(3, 20, 85, 60),
                FelledTrees.tree(4, 22, 90, 90),
                FelledTrees.tree(5, 24, 90, 130));
        VolumeFit fit = us(COMBINED_VARIABLE, EQUAL, trees);
        assertEquals(VolumeFitStatus.NO_VOLUME, fit.status());
        assertTrue(fit.remark().contains("tree 1"), fit.remark());
        assertFalse(fit.isUsable());
    }

    /** Without the one tree of another height nothing tells a from b. */
    @Test
    void aCoefficientThatHangsOnOneTreeIsSaid() {
        List<FelledTree> trees = new ArrayList<>();
        for (int d = 8; d < 16; d++) {
            trees.add(FelledTrees.tree(d, d, 70, 0.002 * d * d * 70 * (d % 2 == 0 ? 1.05 : 0.95)));
        }
        trees.add(FelledTrees.tree(99, 12, 90, 0.0021 * 144 * 90));
        VolumeFit fit = us(HONER, EQUAL, trees);
        assertEquals(VolumeFitStatus.HANGS_ON_ONE_TREE, fit.status());
        assertTrue(fit.remark().contains("tree 99"), fit.remark());
    }

    @Test
    void classesOfDbhHaveAllTreesAndTheirOwnBias() {
        VolumeFit fit = us(COMBINED_VARIABLE, INVERSE_SQUARE, CHERRIES);
        List<VolumeBias> classes = fit.biasByClass();
        assertEquals(31, classes.stream().mapToInt(VolumeBias::trees).sum());
        assertEquals(8, classes.get(0).lower());
        // 8.3, 8.6 and 8.8 in: 10.3, 10.3 and 10.2 ft³ by the table
        double fitted = 3 * -0.029706963 + 0.002101956706 * (8.3 * 8.3 * 70 + 8.6 * 8.6 * 65 + 8.8 * 8.8 * 63);
        assertEquals(3, classes.get(0).trees());
        assertEquals(100 * (fitted / 30.8 - 1), classes.get(0).percent(), 1e-5);
        // 18.0 in stands twice and begins its class
        assertEquals(2, classes.get(5).trees());
    }

    @Test
    void groupsAreAllTreesAndEachSpecies() {
        List<FelledTree> trees = new ArrayList<>();
        for (FelledTree t : CHERRIES) {
            String species = trees.size() < 10 ? "A" : "B";
            trees.add(new FelledTree(t.id(), t.row(), species, t.dbhCm(), t.heightM(), t.volumeM3()));
        }
        VolumeFitSettings settings =
                new VolumeFitSettings(Arrays.asList(VolumeFitForm.values()), INVERSE_SQUARE, UnitSystem.US);
        List<VolumeFitGroup> groups =
                VolumeFits.of(FelledTrees.data(trees), settings).groups();
        assertEquals(
                List.of("*", "A", "B"),
                groups.stream().map(VolumeFitGroup::code).toList());
        assertEquals(
                List.of(31, 10, 21), groups.stream().map(g -> g.trees().size()).toList());
        assertEquals(
                List.of(false, true, false),
                groups.stream().map(VolumeFitGroup::hasFewTrees).toList());
        List<VolumeFitGroup> alone =
                VolumeFits.of(FelledTrees.data(trees.subList(0, 10)), settings).groups();
        assertEquals(List.of("A"), alone.stream().map(VolumeFitGroup::code).toList());
    }

    @Test
    void theBestFormHasTheSmallestLeaveOneOutError() {
        VolumeFitSettings settings =
                new VolumeFitSettings(Arrays.asList(VolumeFitForm.values()), INVERSE_SQUARE, UnitSystem.US);
        VolumeFitGroup cherries =
                VolumeFits.of(FelledTrees.data(CHERRIES), settings).groups().get(0);
        // felled.json: 2.546 combined, 2.638 logs, 2.564 Honer, 2.500 form factor
        assertEquals(FORM_FACTOR, cherries.best().orElseThrow().form());
        VolumeFitGroup oaks = VolumeFits.of(FelledTrees.data(FelledTrees.of("redoak")), settings)
                .groups()
                .get(0);
        // 4.387 combined, 4.663 logs, 5.730 Honer, 4.641 form factor
        assertEquals(COMBINED_VARIABLE, oaks.best().orElseThrow().form());
        assertTrue(oaks.isBest(oaks.fits().get(0)) && !oaks.isBest(oaks.fits().get(1)));
        assertThrows(IllegalArgumentException.class, () -> new VolumeFitSettings(List.of(), EQUAL, UnitSystem.US));
    }
}
