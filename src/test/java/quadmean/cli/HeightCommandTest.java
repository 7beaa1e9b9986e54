package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeightCommandTest {
    /** Formulary 6.1, the six examples; heights printed there to the millimetre are cut as the error asks. */
    @ParameterizedTest
    @CsvSource({
        "--top 72 --base -6 --distance 30m, Height 23.40 m",
        "--scale topo --top 95 --base -8 --distance 66ft, Height 103.0 ft",
        "--scale deg --top 41 --base -3.5 --distance 25m, Height 23.26 m",
        "--top 110 --base 12 --distance 80ft, Height 78.4",
        "--top 65 --base -22 --slope-distance 32m --ground-slope 20%, Height 27.30 m",
        "--scale deg --top 35 --base -12 --slope-distance 28m --to-base, Height 25.00 m",
    })
    void publishedReadings(String line, String start) {
        assertTrue(run(line).out().startsWith(start), run(line).out());
    }

    /** By definition of the scales: at 20 m one made for 20 m reads metres; the same tree in percent is 5 times as much. */
    @ParameterizedTest
    @ValueSource(strings = {"--scale m20 --top 16.5 --base -1.5", "--scale percent --top 82.5 --base -7.5"})
    void scalesMadeForADistance(String line) {
        assertTrue(run(line + " --distance 20m").out().startsWith("Height 18.00 m ± "), line);
    }

    @Test
    void plainNumbersTakeTheUnitsAskedFor() {
        String us = run("--top 72 --base -6 --distance 100 --units us").out();
        assertTrue(us.startsWith("Height 78.0"), us);
        assertTrue(
                us.lines()
                        .findFirst()
                        .orElseThrow()
                        .matches("Height \\S+ ft ± \\S+ ft \\(\\S+ m ± \\S+ m\\); best read from \\S+ ft .*"),
                us);
        String metric =
                run("--top 72 --base -6 --distance 100ft --units metric").out();
        assertTrue(metric.startsWith("Height 23.77 m"), metric);
    }

    /** Formulary 6.2: half a percent point at 20 m is 0.141 m; the distance is taken as exact. */
    @Test
    void errorsGivenAreTaken() {
        String out = run("--top 72 --base -6 --distance 20m --reading-sd 0.5 --distance-sd 0m")
                .out();
        assertTrue(out.contains("Height 15.60 m ± 0.14 m"), out);
        assertTrue(out.contains("reading 0.5 (given by you), distance 0m (given by you)"), out);
        String degrees = run("--top 65 --base -22 --slope-distance 32m --ground-slope 11deg --reading-sd 1deg"
                        + " --slope-sd 1deg")
                .out();
        assertTrue(degrees.contains("slope 1deg (given by you)"), degrees);
    }

    @Test
    void defaultErrorsSayThatTheyHaveNoSource() {
        String out = run("--top 65 --base -22 --slope-distance 32m --ground-slope 20%")
                .out();
        assertTrue(out.contains("reading 0.25° (common practice, no source)"), out);
        assertTrue(out.contains("slope 0.5° (common practice, no source)"), out);
    }

    @ParameterizedTest
    @CsvSource({
        "--top 110 --base -6 --distance 20m, distance-short",
        "--top 110 --base 12 --distance 20m, angle-steep",
        "--top 62 --base -26 --distance 30m --eye 1.6m, ground-not-level",
        "--scale m20 --top 16 --base -1.5 --distance 20m, scale-coarse",
        "--top 72 --base -6 --top 76 --base -6 --distance 30m, readings-disagree",
        "--top 72 --base -6 --distance 30m --index-error 1, index-error",
        "--top 72 --base -6 --distance 300m, taller-than-any",
    })
    void doubtsAreFlagged(String line, String flag) {
        assertTrue(run(line).out().contains("! " + flag + ": "), run(line).out());
    }

    @Test
    void goodReadingsCarryNoFlag() {
        assertTrue(run("--top 62 --base -26 --distance 30m").out().contains("(here -21.0 % (-11.86°))"));
        assertFalse(run("--top 72 --base -5 --distance 30m").out().contains("! "));
    }

    @Test
    void severalReadingsAreAveraged() {
        String shared =
                run("--top 72 --base -6 --top 74 --base -6 --distance 30m").out();
        assertTrue(shared.startsWith("Height 23.70 m") && shared.contains("mean of 2 readings, spread 0.60 m"), shared);
        String own = run("--top 72 --base -6 --top 74 --base -6 --distance 30m --distance 29.5m")
                .out();
        assertTrue(own.contains("mean of 2 readings, spread 0.20 m"), own);
        String laser = run("--scale deg --top 47 --base -4 --top 46 --base -4 --laser 105ft 72ft --laser 106ft 72ft")
                .out();
        assertTrue(laser.contains("mean of 2 readings"), laser);
    }

    /** Formulary 6.3: 5 degrees at D = rise is 9.6 % high, 8.0 % low and 0.38 % low; a base level with the eye. */
    @Test
    void leanIsTold() {
        // a tree that reads 100 % at 20 m: toward, 20 m are 1/(1 + tan 5°) too much, and so on
        String out = run("--top 100 --base 0 --distance 20m --lean 5deg").out();
        assertTrue(
                out.contains(
                        "Lean of 5.0°: at worst 1.61 m (5.28 ft) high if toward you, 1.92 m (6.29 ft) low if away"),
                out);
        String laser = run("--scale deg --top 47 --base -4 --laser 105ft 72ft --lean 5deg")
                .out();
        assertTrue(laser.contains("whatever the lean"), laser);
    }

    @Test
    void oppositeSidesOfALeaningTree() {
        String out = run("--scale deg --top 49 --base -4 --top 44 --base -4 --distance 20m --sides opposite")
                .out();
        assertTrue(out.contains("mean of opposite sides, which still is 0.16 m (0.53 ft) high"), out);
        assertFalse(out.contains("readings-disagree"), out);
    }

    /** Formulary 6.2: 1 degree at 25 m, 45 and -4 degrees: 0.434 m. */
    @Test
    void indexErrorIsTold() {
        String out = run("--scale deg --top 45 --base -4 --distance 25m --index-error 1")
                .out();
        assertTrue(out.contains("the height comes out 0.43 m (1.42 ft) high"), out);
    }

    @ParameterizedTest
    @CsvSource({
        "--top 72 --base -6 --distance 30m, 'D = 30.000 m'",
        "--top 65 --base -22 --slope-distance 32m --ground-slope 20%, 'D = S·cos slope = 32.000 m / 1.0198 = 31.379 m'",
        "--scale deg --top 35 --base -12 --slope-distance 28m --to-base, '= 27.388 m'",
        "--scale deg --top 47 --base -4 --laser 105ft 72ft, '105.000 ft × 0.7314'",
    })
    void stepsAreShownOnDemand(String line, String step) {
        assertTrue(
                run(line + " --verbose").out().contains(step),
                run(line + " --verbose").out());
        assertFalse(run(line).out().contains("Step by step"));
    }

    @ParameterizedTest
    @CsvSource({
        "--base -6 --distance 30m, --top",
        "--top 72 --base -6, one way",
        "--top 72 --base -6 --distance 30m --slope-distance 32m --to-base, one way",
        "--top 72 --base -6 --distance 30m --to-base, go with --slope-distance",
        "--top 72 --base -6 --slope-distance 30m, needs --ground-slope",
        "--top 72 --base -6 --slope-distance 30m --to-base --ground-slope 20%, not both",
        "--top 72 --base -6 --distance 30, --units",
        "--top 72 --base -6 --distance 30kg, 20m or 66ft",
        "--top 72 --base -6 --distance thirty, decimal point",
        "'--top 7,2 --base -6 --distance 30m', decimal point",
        "--top NaN --base -6 --distance 30m, decimal point",
        "--top 72% --base -6 --distance 30m, no unit",
        "--top -6 --base 72 --distance 30m, minus",
        "--top 72 --base -6 --distance 0m, above zero",
        "--scale deg --top 95 --base -6 --distance 30m, between -90 and 90",
        "--scale furlong --top 95 --base -6 --distance 30m, topo",
        "--top 72 --top 73 --base -6 --distance 30m, one --base for each --top",
        "--top 72 --base -6 --top 73 --base -6 --top 73 --base -6 --distance 30m --distance 31m, each of the 3",
        "--top 72 --base -6 --slope-distance 30m --ground-slope 20, 20% or 11deg",
        "--top 72 --base -6 --distance 30m --lean 5, 0.25deg",
        "--top 72 --base -6 --distance 30m --lean 60deg, below 45",
        "--top 72 --base -6 --distance 30m --reading-sd -1deg, zero or more",
        "--top 72 --base -6 --distance 30m --sides opposite, twice",
        "--top 72 --base -6 --distance 30m --sides left, opposite",
        "--top 72 --base -6 --distance 30m --units imperial, metric",
    })
    void wrongUsageIsSaidWithARemedy(String line, String words) {
        Run run = of(line);
        run.assertCode(2);
        assertTrue(run.err().contains(words), run.err());
        assertFalse(run.err().contains("Exception") || run.err().contains("\tat "), run.err());
        assertEquals("", run.out());
    }

    private static Run run(String line) {
        Run run = of(line);
        run.assertCode(0);
        assertEquals("", run.err());
        return run;
    }

    private static Run of(String line) {
        return Run.of((Object[]) ("height " + line).split(" "));
    }
}
