package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Problem;
import quadmean.model.Sweep;
import quadmean.support.SmallDesign;

/** Kinds of plot, and which of their trees are measured, as designs say it. */
class PlotKindsDesignTest {
    private static final String FIXED = "kind = \"fixed\"\narea = 0.1\n";
    private static final String POINT = "kind = \"point\"\nbasal_area_factor = 4\n";
    private static final String PREDICTED = "[tally.columns]\nprediction = \"guess\"\n";

    @TempDir
    Path folder;

    private static SmallDesign design(String plot) {
        return new SmallDesign().with(FIXED, plot);
    }

    private PlotDesign plot(String plot) {
        return design(plot).valid(folder).plot();
    }

    @Test
    void stripsAndSweepsHaveTheirSize() {
        assertEquals(new PlotDesign.Strip(10, 200), plot("kind = \"strip\"\nwidth = 10\nlength = 200\n"));
        assertEquals(
                new PlotDesign.Point(4, Sweep.QUARTER, new Measuring.All()), plot(POINT + "sweep = \"quarter\"\n"));
    }

    @Test
    void treesToMeasureAreChosenInThreeWays() {
        assertEquals(
                new Measuring.SomePoints(Set.of("1", "4", "5")),
                plot(POINT + "measured = \"some_points\"\nmeasured_points = [\"1\", \"4-5\"]\n")
                        .measuring());
        assertEquals(
                new Measuring.LargerFactor(16),
                plot(POINT + "measure_factor = 16\n").measuring());
        assertEquals(
                new Measuring.ThreeP(50, OptionalDouble.of(900), Measuring.Estimator.UNADJUSTED),
                design("kind = \"complete\"\n")
                        .with("[tally.columns]\n", PREDICTED)
                        .plus("[threep]\nlimit = 50\nsum_of_predictions = 900\nestimator = \"unadjusted\"")
                        .valid(folder)
                        .plot()
                        .measuring());
    }

    /** Each with its key and what to do; a semicolon stands for the end of a line. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kind = \"point\";basal_area_factor = 4;measure_factor = 2 | measure_factor | smaller than basal_area_factor",
                "kind = \"point\";basal_area_factor = 4;measured_points = [\"1\"] | measured_points | measured = \"some_points\"",
                "kind = \"point\";basal_area_factor = 4;measured = \"some_points\";measure_factor = 8 | measured | in one way",
                "kind = \"point\";basal_area_factor = 4;measured = \"some\" | measured | some_points",
                "kind = \"point\";basal_area_factor = 4;sweep = \"third\" | sweep | quarter",
                "kind = \"strip\";width = 10 | length | ",
                "kind = \"strip\";width = 0;length = 100 | width | ",
                "kind = \"strip\";width = 10;length = 100;measure_factor = 8 | measure_factor | ",
                "kind = \"complete\";boundary = \"mirage\" | boundary | no plots that could reach over",
                "kind = \"complete\";area = 1 | area | ",
                "kind = \"fixed\";area = 0.1;boundary = \"mirrors\" | boundary | mirage"
            })
    void badPlotsAreRefused(String plot, String key, String words) {
        assertRefused(design(plot.replace(";", "\n") + "\n"), key, words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "estimator = \"adjusted\" | limit | ",
                "limit = 0 | limit | above 0",
                "limit = \"50\" | limit | ",
                "limit = 50;sum_of_predictions = -1 | sum_of_predictions | above 0",
                "limit = 50;estimator = \"best\" | estimator | unadjusted",
                "limit = 50;limits = 60 | limits | limit"
            })
    void badThreePIsRefused(String lines, String key, String words) {
        SmallDesign design = design("kind = \"complete\"\n")
                .with("[tally.columns]\n", PREDICTED)
                .plus("[threep]\n" + lines.replace(";", "\n"));
        assertRefused(design, key, words);
    }

    @Test
    void threePNeedsPredictionsAndAKindOfPlotThatTakesIt() {
        SmallDesign fixed = new SmallDesign().plus("[threep]\nlimit = 50");
        assertRefused(fixed, "threep", "plot.kind = \"complete\" or \"point\"");
        assertRefused(design(POINT).plus("[threep]\nlimit = 50"), "threep", "a column prediction");
    }

    @Test
    void aColumnEdgeNeedsATreatment() {
        assertRefused(
                new SmallDesign().with("[tally.columns]\n", "[tally.columns]\nedge = \"edge\"\n"),
                "boundary",
                "\"walkthrough\"");
    }

    /** What the field added up, and what came into the tally: 30. */
    @ParameterizedTest
    @CsvSource({"30, 0", "30.02, 0", "31, 1"})
    void sumOfPredictionsIsHeldToATenthOfAPercent(double stated, int code) throws IOException {
        Files.writeString(
                folder.resolve("tally.csv"), "plot,tree,species,dbh,height,guess\n1,1,PSME,30,20,20\n1,2,PSME,,,10\n");
        Design design = design("kind = \"complete\"\n")
                .with("[tally.columns]\n", PREDICTED)
                .plus("[threep]\nlimit = 50\nsum_of_predictions = " + stated)
                .valid(folder);
        List<Problem> problems = quadmean.field.TallyReader.read(design).problems();
        assertEquals(code, problems.size(), problems::toString);
        problems.forEach(p -> assertTrue(p.detail().contains("add up to 30"), p::detail));
    }

    private void assertRefused(SmallDesign design, String key, String words) {
        List<Problem> problems = design.problems(folder);
        assertTrue(
                problems.stream()
                        .anyMatch(p -> p.column().endsWith(key)
                                && (words == null || (p.detail() + p.rule().remedy()).contains(words))),
                problems::toString);
    }
}
