package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BorderlineCommandTest {
    /** Formulary 4.3: 14 in at 20 ft²/ac have 27.22 ft to the centre, 26.64 ft to the face; 30 cm at 4 m²/ha 7.5, 7.35 m. */
    @ParameterizedTest
    @CsvSource({
        "--factor 20ft2/ac --dbh 14in --distance 27ft --to centre, IN: limit 27.22",
        "--factor 20ft2/ac --dbh 14in --distance 27ft --to face, OUT: limit 26.64",
        "--factor 4m2/ha --dbh 30cm --distance 7.6m --to centre, OUT: limit 7.500 m",
        "--factor 4 --dbh 30 --distance 7.3 --to face --units metric, IN: limit 7.350 m",
        "--factor 20 --dbh 14 --distance 27 --to centre --units us, IN: limit 27.22",
    })
    void inOrOut(String line, String start) {
        assertTrue(run(line).startsWith(start), run(line));
    }

    /** A margin of one sd is wrong with the lower tail of the normal curve at -1: 15.9 % (from memory). */
    @Test
    void chanceOfBeingWrong() {
        String out = run("--factor 4m2/ha --dbh 30cm --distance 7.4m --to centre --distance-sd 0.1m --dbh-sd 0cm");
        assertTrue(out.contains("margin 0.10 m ± 0.10 m") && out.contains("chance of being wrong 16 %"), out);
        assertTrue(out.contains("! close") && out.contains("distance 0.1m (given by you)"), out);
        String clear = run("--factor 4m2/ha --dbh 30cm --distance 6m --to centre");
        assertTrue(clear.contains("below 0.1 %") && !clear.contains("! "), clear);
        assertTrue(clear.contains("dbh 0.1in (common practice, no source)"), clear);
    }

    @Test
    void atTheLimitItIsEvenOdds() {
        String out = run("--factor 4m2/ha --dbh 30cm --distance 7.5m --to centre --distance-sd 0m --dbh-sd 0cm");
        assertTrue(out.startsWith("IN") && out.contains("wrong 50 %"), out);
        String feet = run("--factor 10ft2/ac --dbh 11in --distance 30.25ft --to centre");
        assertTrue(feet.startsWith("IN") && feet.contains("margin 0.00 ft ±") && feet.contains("wrong 50 %"), feet);
    }

    /** Formulary 4.2 (c): √(1 + 0.75²) = 1.25 times 7.5 m is 9.375 m. */
    @Test
    void onASlope() {
        String out = run("--factor 4m2/ha --dbh 30cm --distance 9.3m --to centre --slope 75% --slope-sd 1deg");
        assertTrue(out.startsWith("IN: limit 9.375 m") && out.contains("along the slope"), out);
        assertTrue(out.contains("slope 1deg (given by you)"), out);
    }

    /** Formulary 4.3: factors to centre and face, angles in minutes. */
    @Test
    void tablesOfPlotRadiusFactors() {
        String us = run("--table --units us");
        assertTrue(us.contains("20     1.9445     1.9029    147.34'"), us);
        String metric = run("--table --units metric");
        assertTrue(metric.contains("4     0.2500     0.2450    137.52'"), metric);
    }

    /** Formulary 4.3, as above. */
    @Test
    void tablesOfLimits() {
        String us = run("--table --factor 20ft2/ac");
        assertTrue(us.contains("14.0      27.22      26.64"), us);
        assertTrue(us.contains("4.0 ") && us.contains("40.0 ") && !us.contains("41.0 "), us);
        String metric = run("--table --factor 4 --units metric --dbh-from 20 --dbh-to 30 --dbh-step 5");
        assertTrue(metric.contains("30.0      7.500      7.350"), metric);
        // heading, names, three rows, cautions
        assertEquals(6, metric.lines().count(), metric);
        String slope = run("--table --factor 4m2/ha --slope 75%");
        assertTrue(slope.contains("30.0      9.375"), slope);
    }

    @ParameterizedTest
    @CsvSource({
        "--factor 20ft2/ac --dbh 14in --distance 27ft, --to (centre or face)",
        "--factor 20ft2/ac --dbh 14in --distance 27ft --to bark, centre",
        "--factor 20 --dbh 14in --distance 27ft --to face, 20ft2/ac or 4m2/ha",
        "--factor 20ft --dbh 14in --distance 27ft --to face, 20ft2/ac or 4m2/ha",
        "--factor 0m2/ha --dbh 14in --distance 27ft --to face, above zero",
        "--factor 4m2/ha --dbh -14in --distance 27ft --to face, above zero",
        "--table, --units",
        "--table --factor 4m2/ha --dbh-step 0, steps",
        "--table --factor 4m2/ha --dbh-from 50 --dbh-to 20, steps",
        "--table --factor 4m2/ha --dbh-step 0.001, 500",
    })
    void wrongUsageIsSaidWithARemedy(String line, String words) {
        Run run = Run.of((Object[]) ("borderline " + line).split(" "));
        run.assertCode(2);
        assertTrue(run.err().contains(words), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }

    private static String run(String line) {
        Run run = Run.of((Object[]) ("borderline " + line).split(" "));
        run.assertCode(0);
        assertEquals("", run.err());
        return run.out();
    }
}
