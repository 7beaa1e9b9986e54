package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/**
 * Basal area per quadrat from samples of a mapped stand: longleaf-estimates.json, from R survey 4.1-1, script estimators.R. Simple
 * random and stratified samples stand in StratifiedMeanTest, the plain ratio in RatioEstimateTest.
 */
class LongleafDesignsTest {
    private static final JsonNode LONGLEAF = ReferenceFiles.json("longleaf-estimates.json");
    private static final DegreesOfFreedom RULE = DegreesOfFreedom.UNITS_MINUS_STRATA;

    @ParameterizedTest
    @CsvSource({"V0,se_v0", "V2,se_v2"})
    void meanByRatio(RatioEstimate.Variance form, String entry) {
        JsonNode expected = LONGLEAF.get("ratio");
        StratumSample y = sample(expected, 64);
        StratumSample x = y.with(Samples.quadrats(numbers(expected.get("ids")), "stems"));
        MeanEstimate m = RatioEstimate.mean(List.of(y), List.of(x), number(expected.get("mean_x")), form, RULE);
        check(number(expected.get("mean")), number(expected.get(entry)), 15, m);
    }

    @ParameterizedTest
    @CsvSource({"LARGE_SAMPLE,se_large_sample", "EXACT,se_exact_with_fpc"})
    void meanByRegression(RegressionEstimate.Variance form, String entry) {
        JsonNode expected = LONGLEAF.get("regression");
        double[] x = Samples.quadrats(numbers(expected.get("ids")), "stems");
        double meanX = number(LONGLEAF.get("ratio").get("mean_x"));
        MeanEstimate m = RegressionEstimate.mean(sample(expected, 64), x, meanX, form);
        check(number(expected.get("mean")), number(expected.get(entry)), 14, m);
        Tolerance.R_SCRIPT.check(number(expected.get("residual_variance")), m.sd() * m.sd(), "residual variance");
    }

    @ParameterizedTest
    @CsvSource({"LINEARISED,se_survey_linearised", "TEXTBOOK,se_textbook"})
    void postStratified(PostStratified.Variance form, String entry) {
        JsonNode expected = LONGLEAF.get("post_stratified");
        var rows = ReferenceFiles.csv("longleaf-quadrats.csv");
        List<String> names = List.of("SW", "SE", "NW", "NE");
        int[] stratum = Arrays.stream(numbers(expected.get("ids")))
                .mapToInt(id -> names.indexOf(rows.get((int) id - 1).getField("stratum")))
                .toArray();
        double[] quarters = {0.25, 0.25, 0.25, 0.25};
        MeanEstimate m = PostStratified.mean(sample(expected, 64), stratum, quarters, form);
        check(number(expected.get("mean")), number(expected.get(entry)), 14, m);
    }

    @Test
    void clustersReadWhole() {
        JsonNode expected = LONGLEAF.get("cluster_one_stage");
        List<Cluster> clusters = Arrays.stream(numbers(expected.get("clusters")))
                .mapToObj(c -> Cluster.whole(Samples.quadrats(idsOf((int) c, allIds()), "ba_m2")))
                .toList();
        JsonNode with = expected.get("with_fpc");
        MeanEstimate m = ClusterMean.perElement(clusters, 16);
        check(with, m);
        check(with, ClusterMean.perCluster(clusters, 16).times(0.25));
    }

    @Test
    void clustersReadInPart() {
        JsonNode expected = LONGLEAF.get("two_stage");
        List<Cluster> clusters = Arrays.stream(numbers(expected.get("clusters")))
                .mapToObj(c ->
                        Cluster.sampled(4, Samples.quadrats(idsOf((int) c, numbers(expected.get("ids"))), "ba_m2")))
                .toList();
        check(expected.get("with_fpc"), ClusterMean.perElement(clusters, 16));
    }

    @ParameterizedTest
    @CsvSource({"COCHRAN,Infinity,se_cochran_large_sample", "HANDBOOK,64,se_freese_handbook"})
    void doubleSamplingForRegression(DoubleSampling.Variance form, double units, String entry) {
        JsonNode expected = LONGLEAF.get("double_sampling_regression");
        double[] second = numbers(expected.get("phase2"));
        StratumSample first = new StratumSample(1, units, Samples.quadrats(numbers(expected.get("phase1")), "stems"));
        MeanEstimate m = DoubleSampling.regression(
                first, Samples.quadrats(second, "stems"), Samples.quadrats(second, "ba_m2"), form);
        check(number(expected.get("mean")), number(expected.get(entry)), 10, m);
    }

    @ParameterizedTest
    @CsvSource({"AS_SIMPLE_RANDOM,se_as_simple_random", "SUCCESSIVE_DIFFERENCES,se_successive_differences"})
    void systematicInListOrder(SystematicVariance form, String entry) {
        JsonNode expected = LONGLEAF.get("systematic_list");
        MeanEstimate m = form.inOrder(sample(expected, 64));
        Tolerance.R_SCRIPT.check(number(expected.get("mean")), m.mean(), "mean");
        Tolerance.R_SCRIPT.check(number(expected.get(entry)), m.se(), "standard error");
    }

    @ParameterizedTest
    @CsvSource({"AS_SIMPLE_RANDOM,se_as_simple_random", "NEIGHBOUR_DIFFERENCES,se_neighbour_differences"})
    void systematicOnAGrid(SystematicVariance form, String entry) {
        JsonNode expected = LONGLEAF.get("systematic_grid");
        var rows = ReferenceFiles.csv("longleaf-quadrats.csv");
        List<GridPosition> grid = Arrays.stream(numbers(expected.get("ids")))
                .mapToObj(id -> rows.get((int) id - 1))
                .map(r -> new GridPosition((int) number(r, "row") / 2, (int) number(r, "col") / 2))
                .toList();
        MeanEstimate m = form.estimate(sample(expected, 64), grid);
        Tolerance.R_SCRIPT.check(number(expected.get("mean")), m.mean(), "mean");
        Tolerance.R_SCRIPT.check(number(expected.get(entry)), m.se(), "standard error");
    }

    private static StratumSample sample(JsonNode expected, double units) {
        return new StratumSample(1, units, Samples.quadrats(numbers(expected.get("ids")), "ba_m2"));
    }

    private static double[] allIds() {
        return IntStream.rangeClosed(1, 64).asDoubleStream().toArray();
    }

    private static double[] idsOf(int cluster, double[] among) {
        var rows = ReferenceFiles.csv("longleaf-quadrats.csv");
        return Arrays.stream(among)
                .filter(id -> number(rows.get((int) id - 1), "cluster") == cluster)
                .toArray();
    }

    private static void check(JsonNode expected, MeanEstimate m) {
        check(number(expected.get("mean")), number(expected.get("se")), number(expected.get("df")), m);
        Interval limits = m.interval(0.95);
        Tolerance.R_SCRIPT.check(number(expected.get("lower")), limits.lower(), "lower limit");
        Tolerance.R_SCRIPT.check(number(expected.get("upper")), limits.upper(), "upper limit");
    }

    private static void check(double mean, double se, double df, MeanEstimate m) {
        Tolerance.R_SCRIPT.check(mean, m.mean(), "mean");
        Tolerance.R_SCRIPT.check(se, m.se(), "standard error");
        assertEquals(df, m.df());
    }
}
