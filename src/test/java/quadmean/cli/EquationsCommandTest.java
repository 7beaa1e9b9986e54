package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.design.EquationLibrary;
import quadmean.support.SmallDesign;

class EquationsCommandTest {
    @TempDir
    Path folder;

    static Stream<String> examples() {
        return Run.of("equations", "--help")
                .out()
                .lines()
                .filter(line -> line.startsWith("  quadmean "))
                .map(line -> line.strip().substring("quadmean ".length()));
    }

    @Test
    void helpHasExamples() {
        assertEquals(4, examples().count());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleFindsSomething(String line) {
        Run run = Run.of((Object[]) line.split(" "));
        run.assertCode(0);
        assertEquals("", run.err());
        assertTrue(run.out().contains("library = \""), run.out());
    }

    @Test
    void anEquationIsListedWithFormUnitsSizesSourceAndStanding() {
        String out = Run.of("equations", "black-cherry-1976/combined").out();
        for (String said : List.of(
                "# [volume.CODE]  combined_variable: V = a + b·D²·H; D in, H ft, V ft³",
                "Pennsylvania",
                "# verified: least squares on the 31 felled trees",
                "library = \"black-cherry-1976/combined-variable\"",
                "# black cherry; dbh from 8.3 to 20.6 in, height from 63 to 87 ft",
                "1 of 68 equations")) {
            assertTrue(out.contains(said), said + " in " + out);
        }
        assertTrue(Run.of("equations", "jenkins", "pine").out().contains("pine; dbh to 180 cm"));
        assertTrue(Run.of("equations", "browne").out().contains("# from memory: Browne 1962"));
        assertTrue(Run.of("equations", "doyle").out().contains("# [board_feet.CODE]  form_class:"));
    }

    @Test
    void nothingFoundIsSaid() {
        Run run = Run.of("equations", "zebra", "wood");
        run.assertCode(0);
        assertTrue(run.out().contains("No equation has \"zebra wood\". quadmean equations lists all 68."), run.out());
    }

    /** Every block that is printed stands in a design as it is, under the table that its heading names. */
    @Test
    void whatIsPrintedCanBePasted() {
        String table = "";
        int pasted = 0;
        for (String line : Run.of("equations").out().lines().toList()) {
            if (line.startsWith("# [")) {
                table = line.substring(2, line.indexOf(']') + 1);
            } else if (line.startsWith("library = ")) {
                new SmallDesign()
                        .plus(table.replace("CODE", "PSME") + "\n" + line)
                        .valid(folder);
                pasted++;
            }
        }
        assertEquals(EquationLibrary.shipped().entries().size(), pasted);
    }
}
