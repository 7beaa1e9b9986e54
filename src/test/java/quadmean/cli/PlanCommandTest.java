package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
}
