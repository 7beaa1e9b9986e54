package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.json;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.model.Estimator;
import quadmean.model.EstimatorRules;
import quadmean.model.FinitePopulation;
import quadmean.model.VarianceForm;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * Tree by tree to stand under every sampling design: longleaf-estimates.json (R survey 4.1-1, script estimators.R) and
 * unequal.json (the same, script unequal.R), per quadrat.
 */
class LongleafSamplesTest {
    private static final JsonNode EXPECTED = json("longleaf-estimates.json");
    private static final JsonNode UNEQUAL = json("unequal.json");
    private static final FinitePopulation CORRECT = FinitePopulation.CORRECT;
    private static final FinitePopulation IGNORE = FinitePopulation.IGNORE;
    private static final JsonNode PHASES = EXPECTED.get("double_sampling_regression");

    static EstimatorRules rules(Estimator estimator) {
        Map<String, Double> quarters = new java.util.LinkedHashMap<>();
        List.of("SW", "SE", "NW", "NE").forEach(q -> quarters.put(q, 1.0));
        EstimatorRules rules = EstimatorRules.of(estimator);
        if (estimator.needsAuxiliaryMean()) {
            return rules.withAuxiliaryMeans(
                    Map.of("stand", number(EXPECTED.get("ratio").get("mean_x"))));
        }
        if (estimator.isClustered()) {
            return rules.withClusters(Map.of("stand", 16.0));
        }
        return estimator == Estimator.POST_STRATIFIED ? rules.withGroupAreas(quarters) : rules;
    }

    private static EstimateRow row(List<SampledPlot> plots, EstimateSettings settings) {
        return StandEstimator.estimate(Quadrats.WHOLE, plots, settings)
                .row(EstimateRow.ALL, EstimateRow.ALL, Attribute.BASAL_AREA, Basis.PER_AREA)
                .orElseThrow();
    }

    private static void check(double mean, double se, EstimateRow row) {
        Tolerance.R_SCRIPT.check(mean, row.mean() * Quadrats.HA, "mean");
        Tolerance.R_SCRIPT.check(se, row.se() * Quadrats.HA, "standard error");
    }

    @ParameterizedTest
    @CsvSource({
        "RATIO, V0, ratio, se_v0, 15",
        "RATIO, V2, ratio, se_v2, 15",
        "REGRESSION, LARGE_SAMPLE, regression, se_large_sample, 14",
        "REGRESSION, EXACT, regression, se_exact_with_fpc, 14",
        "POST_STRATIFIED, LINEARISED, post_stratified, se_survey_linearised, 14",
        "POST_STRATIFIED, TEXTBOOK, post_stratified, se_textbook, 14"
    })
    void withSomethingKnownOfTheStand(Estimator estimator, VarianceForm form, String entry, String se, double df) {
        JsonNode e = EXPECTED.get(entry);
        EstimateRow row = row(
                Quadrats.plots(numbers(e.get("ids"))),
                Quadrats.settings(rules(estimator).with(form), CORRECT));
        check(number(e.get("mean")), number(e.get(se)), row);
        assertEquals(df, row.df());
    }

    @ParameterizedTest
    @CsvSource({"COCHRAN, IGNORE, se_cochran_large_sample", "HANDBOOK, CORRECT, se_freese_handbook"})
    void doubleSamplingForRegression(VarianceForm form, FinitePopulation finite, String se) {
        EstimateSettings settings = Quadrats.settings(
                        rules(Estimator.DOUBLE_REGRESSION).with(form), finite)
                .withListed(Quadrats.listed(numbers(PHASES.get("phase1"))));
        EstimateRow row = row(Quadrats.plots(numbers(PHASES.get("phase2"))), settings);
        check(number(PHASES.get("mean")), number(PHASES.get(se)), row);
        assertEquals(10, row.df());
    }

    @ParameterizedTest
    @CsvSource({"DOUBLE_RATIO, double_ratio, 11", "DOUBLE_STRATIFIED, double_stratified, 10"})
    void doubleSamplingForRatioAndClasses(Estimator estimator, String entry, double df) {
        JsonNode e = UNEQUAL.get(entry);
        double[] first = numbers(PHASES.get("phase1"));
        EstimateSettings settings = Quadrats.settings(rules(estimator), CORRECT)
                .withListed(Quadrats.listed(first).stream()
                        .map(p -> new quadmean.model.ListedPlot(
                                p.id(),
                                p.stratum(),
                                p.facts().withGroup(half(p.facts().group()))))
                        .toList());
        List<SampledPlot> plots = Quadrats.plots(numbers(PHASES.get("phase2"))).stream()
                .map(p -> new SampledPlot(
                        p.id(),
                        p.stratum(),
                        p.stems(),
                        1,
                        p.facts().withGroup(half(p.facts().group()))))
                .toList();
        EstimateRow row = row(plots, settings);
        check(number(e.get("mean")), number(e.get("se")), row);
        assertEquals(df, row.df());
    }

    private static String half(String quarter) {
        return quarter.substring(1);
    }

    @ParameterizedTest
    @CsvSource({"CLUSTER, cluster_one_stage, 4", "TWO_STAGE, two_stage, 5"})
    void clusters(Estimator estimator, String entry, double df) {
        JsonNode e = EXPECTED.get(entry);
        EstimateRow row = row(Quadrats.plots(idsOf(e)), Quadrats.settings(rules(estimator), CORRECT));
        JsonNode with = e.get("with_fpc");
        check(number(with.get("mean")), number(with.get("se")), row);
        assertEquals(df, row.df());
        Tolerance.R_SCRIPT.check(number(with.get("lower")), row.lower() * Quadrats.HA, "lower");
        Tolerance.R_SCRIPT.check(number(with.get("upper")), row.upper() * Quadrats.HA, "upper");
    }

    /** The plots drawn, or all plots of the clusters drawn. */
    static double[] idsOf(JsonNode e) {
        if (e.has("ids")) {
            return numbers(e.get("ids"));
        }
        List<Double> clusters =
                Arrays.stream(numbers(e.get("clusters"))).boxed().toList();
        return IntStream.rangeClosed(1, 64)
                .filter(id ->
                        clusters.contains(Double.parseDouble(Quadrats.facts(id).cluster())))
                .asDoubleStream()
                .toArray();
    }

    @ParameterizedTest
    @CsvSource({
        "HANSEN_HURWITZ, , hansen_hurwitz, se",
        "HORVITZ_THOMPSON, HAJEK, horvitz_thompson, se_hajek",
        "HORVITZ_THOMPSON, POISSON, horvitz_thompson, se_poisson"
    })
    void unequalChances(Estimator estimator, VarianceForm form, String entry, String se) {
        JsonNode e = UNEQUAL.get(entry);
        EstimatorRules rules =
                form == null ? rules(estimator) : rules(estimator).with(form);
        EstimateRow row = row(drawn(e), Quadrats.settings(rules, IGNORE));
        check(number(e.get("mean")), number(e.get(se)), row);
        assertEquals(15, row.df());
        assertEquals(16, row.n(), "draws");
    }

    /** Each plot once, with its chance and the number of draws that hit it. */
    static List<SampledPlot> drawn(JsonNode e) {
        double[] ids = numbers(e.get("ids"));
        double[] chance = numbers(e.get("chance"));
        List<SampledPlot> plots = new ArrayList<>();
        for (int i = 0; i < ids.length; i++) {
            double id = ids[i];
            int draws = (int) Arrays.stream(ids).filter(other -> other == id).count();
            SampledPlot p = Quadrats.plots(new double[] {id}).get(0);
            if (plots.stream().noneMatch(other -> other.id().equals(p.id()))) {
                plots.add(
                        new SampledPlot(p.id(), "stand", p.stems(), 1, p.facts().withChance(chance[i], draws)));
            }
        }
        return plots;
    }

    @ParameterizedTest
    @CsvSource({
        "SIMPLE_RANDOM, systematic_grid, 2, se_as_simple_random",
        "NEIGHBOUR_DIFFERENCES, systematic_grid, 2, se_neighbour_differences",
        "SIMPLE_RANDOM, systematic_list, 64, se_as_simple_random",
        "SUCCESSIVE_DIFFERENCES, systematic_list, 64, se_successive_differences"
    })
    void grids(VarianceForm form, String entry, int step, String se) {
        JsonNode e = EXPECTED.get(entry);
        List<SampledPlot> plots = new ArrayList<>();
        for (SampledPlot p : Quadrats.plots(numbers(e.get("ids")))) {
            int id = Integer.parseInt(p.id());
            var facts = step == 64
                    ? p.facts().withPlace(1, plots.size())
                    : p.facts().withPlace((id - 1) / 8 / step, (id - 1) % 8 / step);
            plots.add(new SampledPlot(p.id(), "stand", p.stems(), 1, facts));
        }
        EstimatorRules rules = EstimatorRules.STANDARD.with(form);
        EstimateRow row = row(plots, Quadrats.settings(rules, CORRECT));
        check(number(e.get("mean")), number(e.get(se)), row);
        StandEstimate plain =
                StandEstimator.estimate(Quadrats.WHOLE, plots, Quadrats.settings(EstimatorRules.STANDARD, CORRECT));
        OtherVariance other = plain.alternatives().stream()
                .filter(v -> v.attribute() == Attribute.BASAL_AREA && v.variance() == form)
                .findFirst()
                .orElseThrow();
        Tolerance.R_SCRIPT.check(number(e.get(se)), other.se() * Quadrats.HA, "the same beside the one in use");
    }

    /** Quadratic mean diameter from the ratio of basal area to stems under each design: svyratio of R. */
    @ParameterizedTest
    @CsvSource({
        "CLUSTER, cluster_one_stage, ratio_cluster",
        "TWO_STAGE, two_stage, ratio_two_stage",
        "POST_STRATIFIED, post_stratified, ratio_post_stratified",
        "HANSEN_HURWITZ, hansen_hurwitz, ratio_hansen_hurwitz"
    })
    void ratiosOfAttributesFollowTheDesign(Estimator estimator, String sample, String entry) {
        boolean chances = estimator == Estimator.HANSEN_HURWITZ;
        List<SampledPlot> plots = chances ? drawn(UNEQUAL.get(sample)) : Quadrats.plots(idsOf(EXPECTED.get(sample)));
        EstimateRow row = StandEstimator.estimate(
                        Quadrats.WHOLE, plots, Quadrats.settings(rules(estimator), chances ? IGNORE : CORRECT))
                .row(EstimateRow.ALL, EstimateRow.ALL, Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO)
                .orElseThrow();
        double ratio = number(UNEQUAL.get(entry).get("ratio"));
        double diameter = Math.sqrt(ratio * 40000 / Math.PI);
        Tolerance.R_SCRIPT.check(diameter, row.mean(), "diameter");
        Tolerance.R_SCRIPT.check(
                diameter * number(UNEQUAL.get(entry).get("se")) / (2 * ratio), row.se(), "standard error");
    }

    static EstimateSettings any(Estimator estimator) {
        double[] first = numbers(PHASES.get("phase1"));
        return Quadrats.settings(rules(estimator), estimator.needsChance() ? IGNORE : CORRECT)
                .withListed(Quadrats.listed(first).stream()
                        .map(p -> new quadmean.model.ListedPlot(
                                p.id(), p.stratum(), p.facts().withGroup("one")))
                        .toList());
    }

    static List<SampledPlot> anyPlots(Estimator estimator) {
        double[] ids = estimator.isDouble()
                ? numbers(PHASES.get("phase2"))
                : numbers(EXPECTED.get(estimator.isClustered() ? "two_stage" : "post_stratified")
                        .get("ids"));
        return Quadrats.plots(ids).stream()
                .map(p -> new SampledPlot(
                        p.id(),
                        p.stratum(),
                        p.stems(),
                        1,
                        (estimator.isDouble() ? p.facts().withGroup("one") : p.facts()).withChance(0.02, 1)))
                .toList();
    }

    /** A domain is the stand with all other trees taken off its plots, which stay; and domains add up (by definition). */
    @ParameterizedTest
    @EnumSource(Estimator.class)
    void domainsKeepThePlotsWithoutThem(Estimator estimator) {
        EstimateSettings settings = any(estimator);
        List<SampledPlot> plots = anyPlots(estimator);
        List<SampledPlot> small = plots.stream()
                .map(p -> new SampledPlot(
                        p.id(),
                        p.stratum(),
                        p.stems().stream()
                                .filter(s -> s.species().equals("small"))
                                .toList(),
                        1,
                        p.facts()))
                .toList();
        StandEstimate whole = StandEstimator.estimate(Quadrats.WHOLE, plots, settings);
        EstimateRow domain = whole.row(EstimateRow.ALL, "small", Attribute.BASAL_AREA, Basis.PER_AREA)
                .orElseThrow();
        EstimateRow alone = row(small, settings);
        Tolerance.ROUNDING.check(alone.mean(), domain.mean(), "mean");
        Tolerance.ROUNDING.check(alone.se(), domain.se(), "standard error");
        double tall = whole.row(EstimateRow.ALL, "tall", Attribute.BASAL_AREA, Basis.PER_AREA)
                .orElseThrow()
                .mean();
        Tolerance.ROUNDING.check(row(plots, settings).mean(), domain.mean() + tall, "domains add up");
    }

    /** Lines too: they may give a class less than nothing, which is shown as it is. */
    @ParameterizedTest
    @EnumSource(Estimator.class)
    void diameterClassesAddUpToTheTrees(Estimator estimator) {
        StandEstimate e = StandEstimator.estimate(Quadrats.WHOLE, anyPlots(estimator), any(estimator));
        double classes = e.structure().rows(Attribute.TREES, Basis.PER_AREA).stream()
                .map(ClassRow::row)
                .filter(r -> r.species().equals(EstimateRow.ALL))
                .mapToDouble(EstimateRow::mean)
                .sum();
        double trees = e.row(EstimateRow.ALL, EstimateRow.ALL, Attribute.TREES, Basis.PER_AREA)
                .orElseThrow()
                .mean();
        Tolerance.ROUNDING.check(trees, classes, "classes add up");
    }

    @ParameterizedTest
    @EnumSource(Estimator.class)
    void theOrderOfPlotsDoesNotMatter(Estimator estimator) {
        List<SampledPlot> plots = new ArrayList<>(anyPlots(estimator));
        EstimateRow one = row(plots, any(estimator));
        java.util.Collections.reverse(plots);
        EstimateRow other = row(plots, any(estimator));
        Tolerance.ROUNDING.check(one.mean(), other.mean(), "mean");
        Tolerance.ROUNDING.check(one.se(), other.se(), "standard error");
    }

    /** Every tree counted k times makes every estimate and its error k times as large. */
    @ParameterizedTest
    @EnumSource(Estimator.class)
    void estimatesScale(Estimator estimator) {
        List<SampledPlot> plots = anyPlots(estimator);
        List<SampledPlot> thrice = plots.stream()
                .map(p -> new SampledPlot(
                        p.id(),
                        p.stratum(),
                        p.stems().stream()
                                .map(s -> new Stem(s.species(), s.dbhCm(), s.heightM(), s.wood(), 3, s.counts()))
                                .toList(),
                        1,
                        p.facts()))
                .toList();
        EstimateRow one = row(plots, any(estimator));
        EstimateRow three = row(thrice, any(estimator));
        Tolerance.ROUNDING.check(3 * one.mean(), three.mean(), "mean");
        Tolerance.ROUNDING.check(3 * one.se(), three.se(), "standard error");
    }

    @ParameterizedTest
    @EnumSource(
            value = Estimator.class,
            names = {"HANSEN_HURWITZ", "DOUBLE_RATIO", "DOUBLE_REGRESSION", "DOUBLE_STRATIFIED"},
            mode = EnumSource.Mode.EXCLUDE)
    void aCensusHasNoError(Estimator estimator) {
        double[] all = IntStream.rangeClosed(1, 64).asDoubleStream().toArray();
        List<SampledPlot> plots = Quadrats.plots(all).stream()
                .map(p ->
                        new SampledPlot(p.id(), "stand", p.stems(), 1, p.facts().withChance(1, 1)))
                .toList();
        checkCensus(row(plots, any(estimator)));
    }

    @ParameterizedTest
    @EnumSource(
            value = Estimator.class,
            names = {"DOUBLE_RATIO", "DOUBLE_REGRESSION", "DOUBLE_STRATIFIED"})
    void aCensusInBothPhasesHasNoError(Estimator estimator) {
        double[] all = IntStream.rangeClosed(1, 64).asDoubleStream().toArray();
        EstimateSettings settings = Quadrats.settings(rules(estimator), CORRECT).withListed(Quadrats.listed(all));
        checkCensus(row(Quadrats.plots(all), settings));
    }

    private static void checkCensus(EstimateRow row) {
        Tolerance.R_SCRIPT.check(
                number(EXPECTED.get("population").get("mean_ba_m2")), row.mean() * Quadrats.HA, "mean");
        Tolerance.absolute("a census has no error", 1e-7).check(0, row.se(), "standard error");
    }

    /** Two strata with the same plots: the stand is their mean, and its error that of one over the root of two. */
    @ParameterizedTest
    @EnumSource(
            value = Estimator.class,
            names = {"RATIO", "REGRESSION", "CLUSTER", "TWO_STAGE", "HANSEN_HURWITZ", "HORVITZ_THOMPSON"})
    void strataAddUp(Estimator estimator) {
        List<SampledPlot> plots = new ArrayList<>();
        for (String code : List.of("A", "B")) {
            anyPlots(estimator).forEach(p -> plots.add(new SampledPlot(p.id(), code, p.stems(), 1, p.facts())));
        }
        double mean = number(EXPECTED.get("ratio").get("mean_x"));
        EstimateSettings settings = any(estimator)
                .with(rules(estimator)
                        .withAuxiliaryMeans(Map.of("A", mean, "B", mean))
                        .withClusters(Map.of("A", 16.0, "B", 16.0)));
        StandEstimate e = StandEstimator.estimate(
                List.of(new quadmean.model.Stratum("A", "A", 4), new quadmean.model.Stratum("B", "B", 4)),
                plots,
                settings);
        EstimateRow whole = e.row("*", "*", Attribute.BASAL_AREA, Basis.TOTAL).orElseThrow();
        EstimateRow a = e.row("A", "*", Attribute.BASAL_AREA, Basis.TOTAL).orElseThrow();
        EstimateRow b = e.row("B", "*", Attribute.BASAL_AREA, Basis.TOTAL).orElseThrow();
        Tolerance.ROUNDING.check(a.mean() + b.mean(), whole.mean(), "total");
        Tolerance.ROUNDING.check(Math.hypot(a.se(), b.se()), whole.se(), "standard error");
        assertEquals(a.df() + b.df(), whole.df(), 1e-9);
    }

    /** The running estimate ends where the estimate stands, and never fails on the way. */
    @ParameterizedTest
    @EnumSource(Estimator.class)
    void theRunningEstimateEndsAtTheEstimate(Estimator estimator) {
        List<SampledPlot> plots = anyPlots(estimator);
        StandEstimate e = StandEstimator.estimate(Quadrats.WHOLE, plots, any(estimator));
        assertEquals(plots.size(), e.running().size());
        RunningMean last = e.running().get(plots.size() - 1);
        EstimateRow row = row(plots, any(estimator));
        Tolerance.ROUNDING.check(row.mean(), last.mean(), "mean");
        Tolerance.ROUNDING.check(row.upper(), last.upper(), "limit");
    }

    @Test
    void aStratumWithASinglePlotSharesTheVariationOfTheNext() {
        // by algebra, as CollapsedStrata has it: mean 0.75·20 + 0.25·10; spread of 10, 10, 20, 30: s² = 91.6667
        List<SampledPlot> plots = List.of(
                Stands.plot("1", "A", 10),
                Stands.plot("2", "A", 20),
                Stands.plot("3", "A", 30),
                Stands.plot("4", "B", 10));
        EstimateSettings settings = Stands.settings(new quadmean.model.PlotDesign.Fixed(1))
                .with(EstimatorRules.STANDARD.with(quadmean.model.OnePlotRule.COLLAPSE));
        StandEstimate e = StandEstimator.estimate(Stands.TWO_STRATA, plots, settings);
        EstimateRow row = e.row("*", "*", Attribute.VOLUME, Basis.PER_AREA).orElseThrow();
        Tolerance.ROUNDING.check(17.5, row.mean(), "mean");
        double s2 = (7.5 * 7.5 * 2 + 2.5 * 2.5 + 12.5 * 12.5) / 3;
        Tolerance.ROUNDING.check(Math.sqrt(s2 * (0.75 * 0.75 / 3 + 0.25 * 0.25)), row.se(), "standard error");
        assertEquals(3, row.df());
        assertTrue(e.notes().toString().contains("variation of A"), e.notes().toString());
        assertTrue(Double.isNaN(
                e.row("B", "*", Attribute.VOLUME, Basis.PER_AREA).orElseThrow().se()));
    }
}
