package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

class ExplainCommandTest {
    private static final String TALLY = "plot,tree,species,dbh,height\n1,1,PSME,20,15\n2,1,PSME,40,20\n";

    @TempDir
    Path folder;

    @Test
    void printsAndWritesNothing() throws IOException {
        Path out = folder.resolve("out");
        Run run = explain("plot:1:trees", out);
        run.assertCode(0);
        assertTrue(run.out().endsWith("plot 1, trees, all species = 10 trees/ha" + System.lineSeparator()), run.out());
        assertFalse(Files.exists(out));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plt:1|did you mean plot?",
                "''|is nothing that can be explained",
                "plot|'' is no plot",
                "plot:|'' is no plot",
                "plot:3|'3' is no plot",
                "tree:1-2|did you mean 1-1?",
                "total:volum|did you mean volume?",
                "total:board_feet|is no attribute or species",
                "total:PSMF|did you mean PSME?",
                "total:|'' is no attribute",
                "total:volume:trees|'trees' is a second attribute",
                "plot:1:PSME:PSME|is a second species",
                "plot:1:quadratic_mean_diameter|is a ratio of sums over plots"
            })
    void wrongUsageIsSaidWithTheNearestRightWord(String number, String words) throws IOException {
        Path out = folder.resolve("out");
        Run run = explain(number, out);
        run.assertCode(2);
        assertTrue(run.err().contains("--explain: "), run.err());
        assertTrue(run.err().contains(words), run.err());
        assertEquals("", run.out());
        assertFalse(Files.exists(out));
    }

    @Test
    void valuesOfMeasuredTreesAreSaidToBeThat() {
        Run run = Run.of("estimate", "designs/count-points.toml", "--explain", "total");
        run.assertCode(0);
        assertTrue(run.out().contains("Values are of the measured trees alone"), run.out());
    }

    @Test
    void aRefusedTallyIsNotExplained() throws IOException {
        Path out = folder.resolve("out");
        Path design = Run.cruise(folder, new SmallDesign(), TALLY + "2,2,PSME,minus,3\n");
        Run run = Run.of("estimate", design, "--out", out, "--explain", "total");
        run.assertCode(1);
        assertEquals("", run.out());
        assertTrue(run.err().contains("Nothing was estimated"), run.err());
        assertEquals(Set.of("problems.csv"), Run.files(out).keySet());
    }

    private Run explain(String number, Path out) throws IOException {
        Path design = Run.cruise(
                folder, new SmallDesign().with("area = 10\n", "area = 10\ntarget_attribute = \"basal_area\"\n"), TALLY);
        return Run.of("estimate", design, "--out", out, "--explain", number);
    }
}
