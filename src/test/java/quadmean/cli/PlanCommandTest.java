package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.SmallDesign;

/** Where {@code plan} takes the variation from, and what it says when there is none. */
class PlanCommandTest {
    private static final String STRATA = """
            [selection]
            method = "stratified"
            [[stratum]]
            code = "N"
            area = 10
            %s
            [[stratum]]
            code = "S"
            area = 10
            %s
            """;

    @TempDir
    Path folder;

    private Run plan(SmallDesign design, String tally) throws IOException {
        return Run.of("plan", Run.cruise(folder, design, tally), "--out", folder.resolve("out"));
    }

    private static SmallDesign stratified(String north, String south) {
        return new SmallDesign().with("area = 10\n", "").plus(STRATA.formatted(north, south));
    }

    private void assertRefused(Run run, String words) throws IOException {
        run.assertCode(1);
        assertTrue(run.err().contains(words), run.err());
        assertEquals(Set.of("problems.csv"), Run.files(folder.resolve("out")).keySet());
    }

    /** Smallest n with t(0.975, n-1)·40/√n ≤ 10: t(0.975, 63) = 1.9983 gives 9.992 at 64, t(62) = 1.9990 gives 10.07 at 63. */
    @Test
    void standNeedsOnlyACoefficientOfVariation() throws IOException {
        Run run = plan(new SmallDesign().plus("[plan]\ncv = 40"), Run.TALLY);
        run.assertCode(0);
        assertTrue(run.out().contains("64 plots"), run.out());
    }

    @Test
    void oneCoefficientOfVariationDoesNotServeSeveralStrata() throws IOException {
        String expected = "expected_mean = 5\nexpected_cv = 40";
        assertRefused(plan(stratified(expected, expected).plus("[plan]\ncv = 40"), Run.TALLY), "several strata");
    }

    @Test
    void oneStratumMayStateItsExpectations() throws IOException {
        SmallDesign design = new SmallDesign()
                .with("area = 10\n", "")
                .plus("[[stratum]]\ncode = \"N\"\narea = 10\nexpected_mean = 5\nexpected_cv = 40\n");
        Run run = plan(design, Run.TALLY);
        run.assertCode(0);
        assertTrue(run.out().contains("64 plots"), run.out());
    }

    @Test
    void strataShareThePlots() throws IOException {
        String expected = "expected_mean = 100\nexpected_cv = 40";
        Run run = plan(stratified(expected, expected), Run.TALLY);
        run.assertCode(0);
        assertTrue(run.out().matches("(?s).*\\(N (\\d+), S \\1\\).*"), "equal strata, equal shares: " + run.out());
    }

    @Test
    void strataWithoutExpectationsAreRefused() throws IOException {
        assertRefused(plan(stratified("expected_mean = 5\nexpected_cv = 40", ""), Run.TALLY), "expected_cv");
        assertRefused(plan(stratified("expected_mean = 5", "expected_mean = 5"), Run.TALLY), "plan.pilot = \"tally\"");
    }

    /** Three pilot plots cannot show the variation of two strata: taken as known, it would be the surest of all. */
    @Test
    void aPilotTooSmallForItsStrataIsRefused() throws IOException {
        String expected = "expected_mean = 100\nexpected_cv = 40";
        assertRefused(plan(stratified(expected, expected).plus("[plan]\npilot_plots = 3"), Run.TALLY), "4 over all");
        plan(stratified(expected, expected).plus("[plan]\npilot_plots = 4"), Run.TALLY)
                .assertCode(0);
    }

    @Test
    void aTractWithoutRoomIsSaidWhereItIsAsked() throws IOException {
        SmallDesign design = new SmallDesign()
                .with("area = 10\n", "area = 0.01\n")
                .plus("[plan]\ncv = 40\nfinite_population = \"correct\"");
        Run run = plan(design, Run.TALLY);
        assertRefused(run, "[plan.finite_population]");
    }

    @Test
    void pilotGivesTheVariationOfAStand() throws IOException {
        Run run = plan(new SmallDesign().plus("[plan]\npilot = \"tally\""), Run.TALLY);
        run.assertCode(0);
        assertTrue(run.out().contains("from the pilot tally of 3 plots"), run.out());
    }

    @Test
    void pilotOfOnePlotShowsNoVariation() throws IOException {
        String one = "plot,tree,species,dbh,height\n1,1,PSME,30,20\n";
        assertRefused(plan(new SmallDesign().plus("[plan]\npilot = \"tally\""), one), "two plots that differ");
    }

    @Test
    void brokenPilotIsRefused() throws IOException {
        Run run = plan(new SmallDesign().plus("[plan]\npilot = \"tally\""), Run.TALLY + "4,1,PSME,x,\n");
        assertRefused(run, "number-unreadable");
    }

    @Test
    void targetOutOfReachIsSaid() throws IOException {
        SmallDesign design = new SmallDesign()
                .with("area = 10\n", "area = 10\ntarget_error = 1e-9\n")
                .plus("[plan]\ncv = 1e9");
        Run run = plan(design, Run.TALLY);
        run.assertCode(0);
        assertTrue(run.out().contains("no number of plots reaches the target"), run.out());
    }

    @Test
    void aPreviousCruiseGivesTheVariation() throws IOException {
        Path before = folder.resolve("before");
        Run.of("estimate", Run.cruise(folder, new SmallDesign(), Run.TALLY), "--out", before)
                .assertCode(0);
        Run run = plan(new SmallDesign().plus("[plan]\nprevious = \"before/estimate.json\""), Run.TALLY);
        run.assertCode(0);
        assertTrue(run.out().contains("from the previous cruise \"Small\""), run.out());
        Run pilot = plan(new SmallDesign().plus("[plan]\npilot = \"tally\""), Run.TALLY);
        assertEquals(
                pilot.out().lines().skip(1).toList(), run.out().lines().skip(1).toList(), "the same plots behind both");
    }

    @Test
    void aPreviousCruiseThatIsNoneIsRefused() throws IOException {
        plan(new SmallDesign().plus("[plan]\nprevious = \"gone.json\""), Run.TALLY)
                .assertCode(2);
        Files.writeString(folder.resolve("some.json"), "{\"a\": 1}");
        assertRefused(plan(new SmallDesign().plus("[plan]\nprevious = \"some.json\""), Run.TALLY), "no estimates");
        Files.writeString(folder.resolve("some.json"), "a,b");
        assertRefused(plan(new SmallDesign().plus("[plan]\nprevious = \"some.json\""), Run.TALLY), "not JSON");
        assertRefused(plan(new SmallDesign().plus("[plan]\nprevious = \"some.json\""), Run.TALLY), "[plan.previous]");
        Run folderNamed = plan(new SmallDesign().plus("[plan]\nprevious = \".\""), Run.TALLY);
        folderNamed.assertCode(2);
        assertTrue(folderNamed.err().contains("names a folder"), folderNamed.err());
    }

    @Test
    void aPreviousCruiseWithoutTheStratumIsRefused() throws IOException {
        Path before = folder.resolve("before");
        Run.of("estimate", Run.cruise(folder, new SmallDesign(), Run.TALLY), "--out", before)
                .assertCode(0);
        SmallDesign design = stratified("", "").plus("[plan]\nprevious = \"before/estimate.json\"");
        assertRefused(plan(design, Run.TALLY), "no estimate of basal area in stratum N");
    }

    /** Each slip with a word of its message. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cv = 0 | above 0",
                "cv = 40; range = [40, 220] | one source",
                "range = [220, 40] | in this order",
                "range = [40] | in this order",
                "cv = 40; pilot_plots = 1 | 2 or more",
                "cv = 40; pilot_plots = 4.5 | whole number",
                "cv = 40; allocation = \"optimum\" | plot_cost",
                "cv = 40; [[plan.target]]; attribute = \"trees\"; error = 0 | above 0",
                "cv = 40; [[plan.target]]; attribute = \"trees\"; error = 10; confidence = 1 | between 0 and 1",
                "cv = 40; [[plan.target]]; attribute = \"trees\"; error = 10 | its target cv",
                "cv = 40; [[plan.target]]; attribute = \"basal_area\"; error = 10; cv = 20 | [cruise] has the target",
                "cv = 40; [[plan.target]]; attribute = \"trees\"; error = 10; stratum_cv = { Q = 3 } | names strata",
                "cv = 40; [plan.cost]; budget = 0 | above 0",
                "cv = 40; [plan.cluster]; correlation = 1; cost = 1 | below 1",
                "cv = 40; [plan.cluster]; correlation = 0; cost = 1 | say how many",
                "cv = 40; [plan.cluster]; correlation = 0.1 | plan.cluster.cost",
                "cv = 40; [plan.two_stage]; correlation = 0.1; cost = 1; plots = 9; unit_plots = 4 | room for 4",
                "cv = 40; [plan.double]; correlation = 1; count_cost = 1 | between 0 and 1",
                "cv = 40; [plan.count]; ratio_cv = 20; count_cost = 1 | plan.count.tree_cost",
                "cv = 40; [plan.threep]; where = \"plots\"; trees = 3; ratio_cv = 20; tree_cost = 1 | every_tree"
            })
    void slipsInThePlanAreRefusedWithARemedy(String keys, String words) throws IOException {
        assertRefused(plan(new SmallDesign().plus("[plan]\n" + keys.replace("; ", "\n")), Run.TALLY), words);
    }
}
