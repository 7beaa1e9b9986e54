package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlopeCommandTest {

    @Test
    void aLostMinusIsAskedAfter() {
        Run run = Run.of("slope", "--there", "18.5", "--back", "17.5", "--instruments", "same");
        run.assertCode(0);
        assertTrue(run.out().contains("Did one lose its minus? Then the slope is 18.0 %"), run.out());
        Run level = Run.of("slope", "--there", "0.6", "--back", "0.4", "--instruments", "same");
        assertFalse(level.out().contains("minus"), level.out());
    }
    /** Formulary 6.4: +18.5 and -17.5 are 18.0 % and half a point. */
    @Test
    void twoWayCheck() {
        String same = run("--there 18.5 --back -17.5 --instruments same");
        assertTrue(same.contains("Slope 18.0 % (10.20°)"), same);
        assertTrue(same.contains("index error of the instrument +0.50 percent"), same);
        assertFalse(same.contains("! "), same);
        String two = run("--there 18.5 --back -17.5 --instruments two");
        assertTrue(two.contains("mean index error of the two") && two.contains("half their difference"), two);
    }

    @Test
    void aLargerIndexErrorIsFlagged() {
        assertTrue(run("--there 5 --back -3.5 --scale deg --instruments same").contains("! index-error"));
    }

    /** Formulary 6.1: 20 % is 11.31 degrees, secant 1.0198, 2.0 % long; 32 m along it are 31.379 m. */
    @Test
    void conversions() {
        String out = run("--slope 20% --slope-distance 32m --horizontal 100ft");
        assertTrue(out.contains("20.0 % (11.31°), secant 1.0198") && out.contains("is 2.0 % long"), out);
        assertTrue(out.contains("= horizontal 31.38 m"), out);
        assertTrue(out.contains("Horizontal 100.00 ft (30.48 m) = along the slope 101.98 ft"), out);
        assertTrue(run("--slope 11.31deg").contains("20.0 %"));
    }

    /** Formulary 4.1 and 4.2: a tenth acre has 37.24 ft; at 50 % 39.4 ft on the ground (agency table; 1.25^¼ times). */
    @Test
    void fixedPlots() {
        String out = run("--slope 50% --plot 0.1ac");
        assertTrue(out.contains("horizontal radius 37.24 ft"), out);
        assertTrue(out.contains("all round 39.37 ft"), out);
        assertTrue(out.contains("only there, the radius is 41.63 ft"), out);
        assertTrue(run("--slope 50% --plot 0.05ha").contains("horizontal radius 12.62 m"));
    }

    @ParameterizedTest
    @CsvSource({
        "'', not both",
        "--slope 20% --there 18 --back -18 --instruments same, not both",
        "--there 18 --instruments same, two-way check needs",
        "--there 18 --back -18, --instruments same or two",
        "--there 18 --back -18 --instruments both, same",
        "--slope 20, 20% or 11deg",
        "--slope 91deg, between -90 and 90",
        "--slope 20% --plot 0.1, 0.1ac or 0.04ha",
        "--slope 20% --plot 0ac, above zero",
    })
    void wrongUsageIsSaidWithARemedy(String line, String words) {
        Run run = of(line);
        run.assertCode(2);
        assertTrue(run.err().contains(words), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }

    private static String run(String line) {
        Run run = of(line);
        run.assertCode(0);
        assertEquals("", run.err());
        return run.out();
    }

    private static Run of(String line) {
        return Run.of((Object[]) ("slope " + line).strip().split(" "));
    }
}
