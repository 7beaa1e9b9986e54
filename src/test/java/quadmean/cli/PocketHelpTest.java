package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the help of the pocket calculators shows works as shown; what they print carries the cautions of the field. */
class PocketHelpTest {
    private static final List<String> COMMANDS = List.of("height", "slope", "borderline", "calibrate");

    static Stream<String> examples() {
        return COMMANDS.stream().flatMap(PocketHelpTest::examplesOf);
    }

    private static Stream<String> examplesOf(String command) {
        return Run.of(command, "--help")
                .out()
                .lines()
                .filter(line -> line.startsWith("  quadmean "))
                .map(line -> line.strip().substring("quadmean ".length()));
    }

    @ParameterizedTest
    @CsvSource({"height, 7", "slope, 4", "borderline, 5", "calibrate, 4"})
    void everyExampleIsFound(String command, long count) {
        assertEquals(count, examplesOf(command).count());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleRunsAndCarriesTheCautions(String line) {
        Run run = Run.of((Object[]) line.split(" "));
        run.assertCode(0);
        assertEquals("", run.err());
        for (String caution : List.of("dead tops", "high wind", "backward", "steep", "alone", "Local safety codes")) {
            assertTrue(run.out().contains(caution), caution + " in " + run.out());
        }
    }

    @Test
    void theProgramNamesTheCalculators() {
        String help = Run.of("--help").out();
        COMMANDS.forEach(command -> assertTrue(help.contains("\n  " + command + " "), command + " in " + help));
    }
}
