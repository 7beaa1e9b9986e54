package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.model.Estimator;
import quadmean.model.EstimatorRules;
import quadmean.model.OnePlotRule;
import quadmean.model.Problem;
import quadmean.model.VarianceForm;
import quadmean.support.SmallDesign;

/** The part of {@code [estimate]} that says how plots become estimates. */
class EstimatorDesignTest {
    private static final String LIST = "plot_list = \"plan.csv\"\n";
    private static final String STRATA = "[[stratum]]\ncode = \"A\"\narea = 6\n[[stratum]]\ncode = \"B\"\narea = 4\n";

    @TempDir
    Path folder;

    private EstimatorRules rules(String selection, String estimate) {
        return new SmallDesign()
                .plus("[selection]\n" + selection + "[estimate]\n" + estimate)
                .valid(folder)
                .estimation()
                .estimation();
    }

    @Test
    void withoutATableItIsTheMeanOfThePlots() {
        assertEquals(
                EstimatorRules.STANDARD,
                new SmallDesign().valid(folder).estimation().estimation());
        assertEquals(OnePlotRule.NO_ERROR, EstimatorRules.STANDARD.onePlot());
        assertEquals(VarianceForm.SIMPLE_RANDOM, EstimatorRules.STANDARD.variance());
    }

    @Test
    void everyKeyIsRead() {
        assertEquals(
                EstimatorRules.of(Estimator.RATIO)
                        .with(VarianceForm.V0)
                        .withAuxiliaryMeans(Map.of("stand", 9.5))
                        .with(OnePlotRule.REFUSE),
                rules(LIST, "estimator = \"ratio\"\nvariance = \"v0\"\nauxiliary_mean = 9.5\none_plot = \"refuse\"\n"));
        assertEquals(
                Map.of("stand", 16.0),
                rules(LIST + "finite_population = \"correct\"\n", "estimator = \"cluster\"\nclusters_in_stand = 16\n")
                        .clusters());
        assertEquals(
                List.of("old", "young"),
                List.copyOf(rules(
                                LIST,
                                "estimator = \"post_stratified\"\n[[estimate.post_stratum]]\ncode = \"old\"\narea = 6\n"
                                        + "[[estimate.post_stratum]]\ncode = \"young\"\narea = 4\n")
                        .groupAreas()
                        .keySet()));
    }

    @Test
    void strataHaveEachItsOwnMean() {
        SmallDesign strata = new SmallDesign()
                .plus(STRATA + "[selection]\nmethod = \"stratified\"\n" + LIST
                        + "[estimate]\nestimator = \"regression\"\nauxiliary_mean = { A = 3, B = -4.5 }\n");
        assertEquals(
                Map.of("A", 3.0, "B", -4.5),
                strata.valid(folder).estimation().estimation().auxiliaryMeans());
        List<Problem> problems =
                strata.with("{ A = 3, B = -4.5 }", "{ A = 3, C = 1 }").problems(folder);
        assertEquals(
                List.of("estimate.auxiliary_mean.B", "estimate.auxiliary_mean.C"),
                problems.stream().map(Problem::column).sorted().toList());
        problems = strata.with("{ A = 3, B = -4.5 }", "3").problems(folder);
        assertTrue(problems.get(0).detail().contains("{ A = ..., B = ... }"), problems.toString());
    }

    @ParameterizedTest
    @EnumSource(VarianceForm.class)
    void aVarianceBelongsToItsEstimator(VarianceForm form) {
        String other = form.estimator() == Estimator.CLUSTER ? "mean" : "cluster";
        List<Problem> problems = new SmallDesign()
                .plus("[selection]\n" + LIST + "[estimate]\nestimator = \"" + other + "\"\nvariance = \"" + form.id()
                        + "\"")
                .problems(folder);
        assertEquals(1, problems.size(), problems.toString());
        assertEquals("estimate.variance", problems.get(0).column());
        assertTrue(problems.get(0).detail().contains("\"" + form.estimator().id() + "\""), problems.toString());
    }

    /** What makes no sense together, and the key that is named; semicolons stand for line ends. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "| estimator = \"cluster\" | selection.plot_list",
                "method = \"systematic\" | variance = \"neighbour_differences\" | selection.plot_list",
                "plot_list = \"p\" | variance = \"neighbour_differences\" | estimate.variance",
                "plot_list = \"p\" | estimator = \"ratio\" | estimate.auxiliary_mean",
                "plot_list = \"p\" | estimator = \"ratio\";auxiliary_mean = 0 | estimate.auxiliary_mean",
                "plot_list = \"p\" | estimator = \"double_ratio\";auxiliary_mean = 3 | estimate.auxiliary_mean",
                "| clusters_in_stand = 30 | estimate.clusters_in_stand",
                "plot_list = \"p\" | estimator = \"cluster\";clusters_in_stand = 30 | estimate.clusters_in_stand",
                "plot_list = \"p\" | estimator = \"cluster\";clusters_in_stand = 1.5 | estimate.clusters_in_stand",
                "plot_list = \"p\";finite_population = \"correct\" | estimator = \"two_stage\" | estimate.clusters_in_stand",
                "plot_list = \"p\" | estimator = \"post_stratified\" | estimate.post_stratum",
                "| [[estimate.post_stratum]];code = \"a\";area = 10 | estimate.post_stratum",
                "plot_list = \"p\" | estimator = \"post_stratified\";[[estimate.post_stratum]];code = \"a\";area = 9"
                        + " | estimate.post_stratum",
                "plot_list = \"p\";finite_population = \"correct\" | estimator = \"hansen_hurwitz\""
                        + " | selection.finite_population",
                "| one_plot = \"collapse\" | estimate.one_plot",
                "| one_plot = \"merge\" | estimate.one_plot"
            })
    void whatMakesNoSenseTogetherIsRefused(String selection, String estimate, String key) {
        String text = "[selection]\n" + (selection == null ? "" : selection) + "\n[estimate]\n" + estimate;
        List<Problem> problems = new SmallDesign().plus(text.replace(';', '\n')).problems(folder);
        // a value that is refused leaves its key open, which may then be missed as well
        assertTrue(problems.stream().allMatch(p -> p.column().equals(key)), problems.toString());
        assertTrue(!problems.isEmpty(), "it was accepted");
    }

    @Test
    void chancesNeedPlotsOfOneArea() {
        List<Problem> problems = new SmallDesign()
                .with("kind = \"fixed\"\narea = 0.1", "kind = \"point\"\nbasal_area_factor = 4")
                .plus("[selection]\n" + LIST + "[estimate]\nestimator = \"horvitz_thompson\"")
                .problems(folder);
        assertEquals(
                List.of("estimate.estimator"),
                problems.stream().map(Problem::column).toList());
    }

    @Test
    void strataAreNotSortedAgainNorLinesCollapsed() {
        String start = STRATA + "[selection]\nmethod = \"stratified\"\n" + LIST + "[estimate]\n";
        List<Problem> problems = new SmallDesign()
                .plus(start + "estimator = \"post_stratified\"\n[[estimate.post_stratum]]\ncode = \"a\"\narea = 10\n")
                .problems(folder);
        assertEquals(
                List.of("estimate.estimator"),
                problems.stream().map(Problem::column).toList());
        problems = new SmallDesign()
                .plus(start + "estimator = \"cluster\"\none_plot = \"collapse\"")
                .problems(folder);
        assertEquals(
                List.of("estimate.one_plot"),
                problems.stream().map(Problem::column).toList());
        assertEquals(
                OnePlotRule.COLLAPSE,
                new SmallDesign()
                        .plus(start + "one_plot = \"collapse\"")
                        .valid(folder)
                        .estimation()
                        .estimation()
                        .onePlot());
    }
}
