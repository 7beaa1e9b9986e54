package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.csv;
import static quadmean.support.ReferenceFiles.json;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.DegreesRule;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.SizeRules;
import quadmean.model.Stratum;
import quadmean.model.TopHeight;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

/** Stand statistics and their errors. */
class StandStatisticTest {
    private static final List<Stratum> ONE = List.of(new Stratum("stand", "whole stand", 20));
    private static final double ACRE = 0.40468564224;

    /** Formulary section 5: values of all 584 longleaf pines on 4 ha, with so many decimals. */
    @ParameterizedTest
    @CsvSource({
        "BASAL_AREA, METRIC, 12.109384, 6",
        "QUADRATIC_MEAN_DIAMETER, METRIC, 32.496730, 6",
        "MEAN_DIAMETER, METRIC, 26.843664, 6",
        "SDI_REINEKE, METRIC, 216.8190, 4",
        "SDI_SUMMATION, METRIC, 196.3949, 4",
        "RELATIVE_DENSITY, METRIC, 2.124233, 6",
        "RELATIVE_DENSITY, US, 14.747111, 6"
    })
    void longleafPines(Statistic statistic, UnitSystem system, double expected, int decimals) {
        StandStatistic s = of(longleaf(0, 0), statistic);
        Tolerance.printed(decimals).check(expected, s.in(system, s.value()), statistic.label());
        Tolerance.absolute("a census has no error", 1e-10).check(0, s.se(), "standard error");
    }

    /** The stand table of the same pines per ha, by 10 cm. */
    @Test
    void longleafStandTable() {
        double[] expected = {38.50, 22.75, 17.00, 26.00, 23.75, 14.25, 3.25, 0.50};
        double[] trees = longleaf(0, 0).structure().rows(Attribute.TREES, Basis.PER_AREA).stream()
                .filter(c -> c.row().species().equals("*"))
                .mapToDouble(c -> c.row().mean())
                .toArray();
        Tolerance.ROUNDING.check(expected, trees, "trees per ha");
    }

    /** The 339 pines of 20 cm and more: c 3.786245, b 44.47194, the cut ignored; cut at 20 cm, as in weibull.csv (R). */
    @Test
    void longleafDiameters() {
        StandEstimate whole = longleaf(20, 0);
        Tolerance.printed(6).check(3.786245, of(whole, Statistic.WEIBULL_SHAPE).value(), "shape");
        Tolerance.printed(5).check(44.47194, of(whole, Statistic.WEIBULL_SCALE).value(), "scale");
        var cut = csv("weibull.csv").stream()
                .filter(r -> number(r, "limit_cm") == 20)
                .findFirst()
                .orElseThrow();
        // thinner trees in the tally make no difference to the fit from 20 cm on
        StandEstimate truncated = longleaf(0, 20);
        Tolerance.R_SCRIPT.check(
                number(cut, "shape"), of(truncated, Statistic.WEIBULL_SHAPE).value(), "shape");
        Tolerance.R_SCRIPT.check(
                number(cut, "scale"), of(truncated, Statistic.WEIBULL_SCALE).value(), "scale");
        DiameterFit fit = truncated.structure().diameters().orElseThrow();
        Tolerance.ROUNDING.check(339 / 4.0, fit.treesPerHa(), "trees of 20 cm and more");
        double classes = truncated.structure().sizes().stream()
                .mapToDouble(fit::treesPerHa)
                .sum();
        double beyond = fit.treesPerHa(new DiameterClass(80, 1000));
        Tolerance.ROUNDING.check(fit.treesPerHa(), classes + beyond, "classes of the fitted distribution");
        assertEquals(0, fit.treesPerHa(new DiameterClass(10, 20)));
    }

    /** stand-structure.json: svymean and svycontrast of R's survey on two samples of quadrats. */
    @ParameterizedTest
    @ValueSource(strings = {"simple_random", "stratified"})
    void errorsAsInR(String design) {
        JsonNode expected = json("stand-structure.json").get(design);
        StandEstimate e = sampled(design, expected, 0);
        check(expected, "qmd", of(e, Statistic.QUADRATIC_MEAN_DIAMETER));
        check(expected, "mean_diameter", of(e, Statistic.MEAN_DIAMETER));
        check(expected, "mean_height", of(e, Statistic.MEAN_HEIGHT));
        check(expected, "lorey", of(e, Statistic.LOREY_HEIGHT));
        check(expected, "top", of(e, Statistic.TOP_HEIGHT));
        check(expected, "sdi", of(e, Statistic.SDI_REINEKE));
        check(expected, "sdi_sum", of(e, Statistic.SDI_SUMMATION));
        check(expected, "curtis", of(e, Statistic.RELATIVE_DENSITY));
        check(expected, "spacing", of(e, Statistic.RELATIVE_SPACING));
        EstimateRow qmd =
                e.row("*", "*", Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO).orElseThrow();
        Tolerance.ROUNDING.check(
                qmd.mean(), of(e, Statistic.QUADRATIC_MEAN_DIAMETER).value(), "both diameters");
        Tolerance.ROUNDING.check(
                qmd.se(), of(e, Statistic.QUADRATIC_MEAN_DIAMETER).se(), "both errors");
    }

    /** The same for classes as domains. */
    @ParameterizedTest
    @ValueSource(strings = {"simple_random", "stratified"})
    void classesAsInR(String design) {
        JsonNode expected = json("stand-structure.json").get(design);
        StandStructure s = sampled(design, expected, 0).structure();
        classes(expected, "class_trees", s.rows(Attribute.TREES, Basis.PER_AREA));
        classes(expected, "class_ba", s.rows(Attribute.BASAL_AREA, Basis.PER_AREA));
    }

    private static void classes(JsonNode expected, String key, List<ClassRow> rows) {
        double[] means = numbers(expected.get(key));
        double[] errors = numbers(expected.get(key + "_se"));
        List<ClassRow> all =
                rows.stream().filter(c -> c.row().species().equals("*")).toList();
        assertEquals(7, all.size(), "the largest sampled tree lies in the seventh class");
        for (int k = 0; k < all.size(); k++) {
            Tolerance.R_SCRIPT.check(means[k], all.get(k).row().mean(), key + " " + k);
            Tolerance.R_SCRIPT.check(errors[k], all.get(k).row().se(), "error of " + key + " " + k);
        }
    }

    /** The same for the distribution of diameters from 5 cm on; the script finds its optimum without derivatives. */
    @ParameterizedTest
    @ValueSource(strings = {"simple_random", "stratified"})
    void weibullErrorsAsInR(String design) {
        JsonNode sample = json("stand-structure.json").get(design);
        JsonNode expected = sample.get("weibull");
        StandEstimate e = sampled(design, sample, 5);
        Tolerance.FIT.check(
                number(expected.get("shape")), of(e, Statistic.WEIBULL_SHAPE).value(), "shape");
        Tolerance.FIT.check(
                number(expected.get("scale")), of(e, Statistic.WEIBULL_SCALE).value(), "scale");
        Tolerance differences = Tolerance.relative("second derivatives by differences in R", 1e-4);
        differences.check(
                number(expected.get("shape_se")), of(e, Statistic.WEIBULL_SHAPE).se(), "error of the shape");
        differences.check(
                number(expected.get("scale_se")), of(e, Statistic.WEIBULL_SCALE).se(), "error of the scale");
    }

    /** Formulary section 5: d 10, 20, 30 cm and h 10, 15, 20 m. The three heights of one stand are three numbers. */
    @Test
    void heightsAreThree() {
        List<Stem> stems = List.of(stem(10, 10), stem(20, 15), stem(30, 20));
        StandEstimate e = estimate(0.01, stems);
        Tolerance.printed(4)
                .check(21.6025, of(e, Statistic.QUADRATIC_MEAN_DIAMETER).value(), "QMD");
        Tolerance.printed(4).check(17.8571, of(e, Statistic.LOREY_HEIGHT).value(), "Lorey height");
        Tolerance.ROUNDING.check(15, of(e, Statistic.MEAN_HEIGHT).value(), "mean height");
        Tolerance.ROUNDING.check(20, of(e, Statistic.TOP_HEIGHT).value(), "top height, one tree on 0.01 ha");
    }

    /** Formulary section 5: 200 trees/ac of 12.3 in, and 494.1 trees/ha of 31 cm; metric over imperial is 2.471. */
    @Test
    void reinekesIndex() {
        StandStatistic us = of(estimate(ACRE / 200, List.of(stem(12.3 * 2.54, 20))), Statistic.SDI_REINEKE);
        Tolerance.printed(2).check(278.82, us.in(UnitSystem.US, us.value()), "per acre");
        Tolerance.printed(3).check(2.471, us.value() / us.in(UnitSystem.US, us.value()), "metric over imperial");
        StandEstimate metric = estimate(1 / 494.1, List.of(stem(31, 20)));
        Tolerance.printed(2).check(680.29, of(metric, Statistic.SDI_REINEKE).value(), "per ha");
        // all trees alike: summed tree by tree the index is the same (by algebra)
        Tolerance.ROUNDING.check(
                of(metric, Statistic.SDI_REINEKE).value(),
                of(metric, Statistic.SDI_SUMMATION).value(),
                "summation");
    }

    /** Formulary section 5: 160 ft²/ac of 12 in; 400 trees/ha of 20 m. */
    @Test
    void relativeDensityAndSpacing() {
        double treeFt2 = Math.PI / 4; // of 12 in
        StandStatistic curtis =
                of(estimate(ACRE * treeFt2 / 160, List.of(stem(12 * 2.54, 20))), Statistic.RELATIVE_DENSITY);
        Tolerance.printed(3).check(46.188, curtis.in(UnitSystem.US, curtis.value()), "Curtis");
        List<Stem> four = Collections.nCopies(4, stem(20, 20));
        Tolerance.ROUNDING.check(
                0.25, of(estimate(0.01, four), Statistic.RELATIVE_SPACING).value(), "spacing");
    }

    /** Four trees on 0.04 ha (formulary section 5), the fourth shared by two of one dbh; on points, by their expansion. */
    @Test
    void topHeightTakesTheThickest() {
        List<Stem> stems = List.of(stem(50, 30), stem(45, 28), stem(40, 27), stem(35, 20), stem(35, 24), stem(20, 40));
        StandStatistic top = of(estimate(0.04, stems), Statistic.TOP_HEIGHT);
        Tolerance.ROUNDING.check((30 + 28 + 27 + 22) / 4.0, top.value(), "top height");
        assertEquals("mean over plots of the mean height of the 100 thickest trees per hectare on each", top.rule());
        // at a factor of 4 a tree of 40 cm stands for 31.83/ha, one of 30 cm for 56.59, one of 20 cm for 127.3 (by
        // definition)
        PlotDesign point = new PlotDesign.Point(4);
        double left = 100 - 4 / 0.04 / Math.PI - 4 / 0.0225 / Math.PI;
        double expected = (4 / 0.04 / Math.PI * 25 + 4 / 0.0225 / Math.PI * 22 + left * 18) / 100;
        List<Stem> tallied = List.of(stem(20, 18), stem(40, 25), stem(30, 22));
        Tolerance.ROUNDING.check(
                expected, of(estimate(point, tallied), Statistic.TOP_HEIGHT).value(), "on points");
        StandStatistic forty = of(
                StandEstimator.estimate(
                        ONE,
                        List.of(new SampledPlot("1", "stand", stems), new SampledPlot("2", "stand", stems)),
                        settings(new PlotDesign.Fixed(0.1 * ACRE), new SizeRules(5, TopHeight.FORTY_PER_ACRE, 0), "")),
                Statistic.TOP_HEIGHT);
        Tolerance.ROUNDING.check((30 + 28 + 27 + 22) / 4.0, forty.value(), "four trees on a tenth of an acre");
    }

    @Test
    void topHeightSaysWhereItsRuleCannotBeKept() {
        String small = of(estimate(0.005, List.of(stem(20, 15), stem(30, 20))), Statistic.TOP_HEIGHT)
                .rule();
        assertTrue(small.contains("on 2 of 2 plots with trees the thickest tree alone stands for more"), small);
        String few = of(estimate(0.1, List.of(stem(20, 15), stem(30, 20))), Statistic.TOP_HEIGHT)
                .rule();
        assertTrue(few.contains("on 2 of 2 there are fewer, and all are taken"), few);
    }

    @Test
    void whatIsUnknownHasItsReason() {
        StandEstimate e = estimate(0.01, List.of(stem(20, Double.NaN), stem(30, 20)));
        assertTrue(Double.isNaN(of(e, Statistic.MEAN_HEIGHT).value()));
        assertTrue(Double.isNaN(of(e, Statistic.LOREY_HEIGHT).value()));
        Tolerance.ROUNDING.check(20, of(e, Statistic.TOP_HEIGHT).value(), "the thickest tree has a height");
        assertEquals("", of(e, Statistic.TOP_HEIGHT).reason());
        assertEquals(
                "no height and no height curve for X",
                of(e, Statistic.LOREY_HEIGHT).reason());
        StandEstimate noVolume = StandEstimator.estimate(
                ONE,
                List.of(new SampledPlot("1", "stand", List.of(new Stem("X", 20, 15, Double.NaN)))),
                settings(new PlotDesign.Fixed(0.1), SizeRules.ofWidth(5), "no volume equation"));
        assertEquals(
                "no volume equation", of(noVolume, Statistic.VOLUME_PER_TREE).reason());
        assertEquals(
                "no standard error: one plot in stand",
                of(noVolume, Statistic.BASAL_AREA).reason());
        assertTrue(of(noVolume, Statistic.WEIBULL_SHAPE).reason().startsWith("these diameters have no Weibull"));
    }

    @ParameterizedTest
    @EnumSource(Statistic.class)
    void withoutTreesNothingIsKnown(Statistic statistic) {
        StandStatistic s = of(estimate(0.1, List.of()), statistic);
        assertEquals("no trees tallied here", s.reason());
        assertTrue(Double.isNaN(s.value()) || s.value() == 0);
        assertTrue(
                statistic.source().contains("from memory") || statistic.source().equals("by definition"));
    }

    /** On a few plots out of many a ratio's error means nothing. */
    @Test
    void treesOnFewPlotsHaveRatiosWithoutAnError() {
        List<SampledPlot> plots = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            plots.add(new SampledPlot("" + i, "stand", i == 0 ? List.of(stem(20, 18), stem(30, 22)) : List.of()));
        }
        StandEstimate e =
                StandEstimator.estimate(ONE, plots, settings(new PlotDesign.Fixed(0.1), SizeRules.ofWidth(5), ""));
        assertEquals(
                "no standard error: trees on fewer than 3 plots",
                of(e, Statistic.MEAN_HEIGHT).reason());
        assertTrue(Double.isFinite(of(e, Statistic.BASAL_AREA).se()));
    }

    /** Plots in another order, and by strata: the whole stand's statistics stay, and each stratum has its own. */
    @Test
    void orderOfPlotsDoesNotMatter() {
        List<SampledPlot> plots = new ArrayList<>(Stands.random(3));
        EstimateSettings settings = Stands.settings(new PlotDesign.Point(4));
        List<StandStatistic> before = StandEstimator.estimate(Stands.TWO_STRATA, plots, settings)
                .structure()
                .statistics();
        Collections.shuffle(plots, new Random(3));
        List<StandStatistic> after = StandEstimator.estimate(Stands.TWO_STRATA, plots, settings)
                .structure()
                .statistics();
        assertEquals(3 * Statistic.values().length, before.size());
        for (int i = 0; i < before.size(); i++) {
            assertEquals(before.get(i).statistic(), after.get(i).statistic());
            assertEquals(
                    before.get(i).value(),
                    after.get(i).value(),
                    1e-9 * Math.abs(before.get(i).value()));
            assertEquals(
                    before.get(i).se(),
                    after.get(i).se(),
                    1e-9 * Math.abs(before.get(i).se()));
        }
    }

    private static void check(JsonNode expected, String key, StandStatistic s) {
        Tolerance.R_SCRIPT.check(number(expected.get(key).get("value")), s.value(), key);
        Tolerance.R_SCRIPT.check(number(expected.get(key).get("se")), s.se(), "error of " + key);
    }

    private static StandStatistic of(StandEstimate e, Statistic statistic) {
        return e.structure().statistic("*", statistic).orElseThrow();
    }

    private static Stem stem(double dbhCm, double heightM) {
        return new Stem("X", dbhCm, heightM, 1);
    }

    /** Two plots alike. */
    private static StandEstimate estimate(double areaHa, List<Stem> stems) {
        return estimate(new PlotDesign.Fixed(areaHa), stems);
    }

    private static StandEstimate estimate(PlotDesign plot, List<Stem> stems) {
        return StandEstimator.estimate(
                ONE,
                List.of(new SampledPlot("1", "stand", stems), new SampledPlot("2", "stand", stems)),
                settings(plot, SizeRules.ofWidth(5), ""));
    }

    private static StandEstimate longleaf(double smallestCm, double limitCm) {
        return StandEstimator.estimate(
                Longleaf.WHOLE, Longleaf.all(smallestCm), longleafSettings(FinitePopulation.CORRECT, limitCm));
    }

    private static StandEstimate sampled(String design, JsonNode sample, double limitCm) {
        List<Stratum> strata = design.equals("stratified") ? Longleaf.QUARTERS : Longleaf.WHOLE;
        return StandEstimator.estimate(
                strata,
                Longleaf.plots(numbers(sample.get("ids")), strata),
                longleafSettings(FinitePopulation.IGNORE, limitCm));
    }

    private static EstimateSettings longleafSettings(FinitePopulation finite, double limitCm) {
        EstimateSettings s = settings(
                new PlotDesign.Fixed(Longleaf.QUADRAT_HA),
                new SizeRules(10, TopHeight.HUNDRED_PER_HECTARE, limitCm),
                "no equation");
        return new EstimateSettings(
                s.plot(),
                finite,
                s.degreesRule(),
                s.confidence(),
                s.targetErrorPercent(),
                Attribute.BASAL_AREA,
                s.sizes(),
                s.attributes(),
                s.products(),
                s.missing(),
                s.rules());
    }

    private static EstimateSettings settings(PlotDesign plot, SizeRules sizes, String noVolume) {
        EstimateSettings s = new EstimateSettings(
                plot,
                FinitePopulation.IGNORE,
                DegreesRule.PLOTS_MINUS_STRATA,
                0.95,
                10,
                Attribute.TREES,
                sizes.classCm(),
                noVolume);
        return new EstimateSettings(
                s.plot(),
                s.finitePopulation(),
                s.degreesRule(),
                s.confidence(),
                s.targetErrorPercent(),
                s.target(),
                sizes,
                s.attributes(),
                s.products(),
                s.missing(),
                s.rules());
    }
}
