package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.SmallDesign;

/** {@code quadmean calibrate}, and the corrections that a design takes from it. */
class CalibrateCommandTest {
    private static final SmallDesign DESIGN = new SmallDesign()
            .with(
                    "height = { name = \"height\", unit = \"m\" }",
                    "top = { name = \"top\", unit = \"deg\" }\n"
                            + "base = { name = \"base\", unit = \"deg\" }\ndistance = { name = \"dist\", unit = \"m\" }\n"
                            + "merchantable_top = { name = \"mark\", unit = \"deg\" }");

    private static final String TALLY = """
            plot,tree,species,dbh,top,base,dist,mark
            1,1,PSME,30,41,-4,20,20
            1,2,PSME,25,38,-3,20,18
            2,1,PSME,40,45,-5,22,25
            """;

    @TempDir
    Path folder;

    private static String run(String line) {
        Run run = Run.of((Object[]) ("calibrate " + line).split(" "));
        run.assertCode(0);
        return run.out();
    }

    /** By hand: 0.5, 0.5, 0.75 have mean 0.5833, SE 0.08333, and t(0.975; 2) = 4.302653 (printed tables) makes 0.3586. */
    @Test
    void pairsGiveTheIndexErrorWithItsLimits() {
        String out = run("--pair 18.5,-17.5 --pair 12,-11 --pair 25.5,-24");
        assertTrue(out.contains("Index error +0.58 percent ± 0.36 percent (95 % limits, 3 readings)"), out);
        assertTrue(out.contains("[instrument] index_error = 0.583"), out);
    }

    /** R 4.2.2: t.test(c(0.5, 1, 0.5)) has mean 0.6667, limits ± 0.7171, p = 0.0572. */
    @Test
    void whatChanceCouldMakeIsNotCorrected() {
        String out = run("--known-slope 20% --reading 20.5 --reading 21 --reading 20.5");
        assertTrue(out.contains("Index error +0.67 percent ± 0.72 percent"), out);
        assertTrue(out.contains("No error is shown beyond chance"), out);
        assertFalse(out.contains("! "), out);
        String one = run("--known-slope 20% --reading 21");
        assertTrue(one.contains("one reading tells no error") && one.contains("! index-error"), one);
    }

    /** By hand: (118 + 8)/100·20 = 25.2 m against 25 m twice; 25/25.2 = 0.9921. */
    @Test
    void aKnownHeightGivesAFactor() {
        String out = run("--known-height 25m --distance 20m --sighting 118,-8 --sighting 119,-7");
        assertTrue(out.contains("0.20 m (0.66 ft) high on average, +0.8 %"), out);
        assertTrue(out.contains("distance_factor = 0.9921"), out);
    }

    /** By hand: 66 ft in 12, 13 and 14 paces are 13 a chain; sd 1 of 13 is 7.7 %, its third root of three 4.4 %. */
    @Test
    void pacesAChain() {
        String out = run("--course 66ft --paces 12 --paces 13 --paces 14");
        assertTrue(out.contains("13.00 paces a chain, 64.6 paces in 100 m"), out);
        assertTrue(out.contains("varies by 7.7 %") && out.contains("the mean by 4.4 %"), out);
        assertTrue(run("--course 66ft --paces 13").contains("One walk tells no error"));
    }

    @Test
    void whatADesignDoesNotTakeIsNoCorrection() {
        String index = run("--pair 18.5,18.5 --pair 12,12");
        assertTrue(index.contains("! index-error: more than 8 units") && !index.contains("For a design"), index);
        String factor = run("--known-height 25m --distance 2m --sighting 118,-8 --sighting 119,-8");
        assertTrue(factor.contains("! factor: ") && !factor.contains("For a design"), factor);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--scale deg|give one check",
                "--pair 1,2 --course 66ft|give one check",
                "--pair 18.5|is no pair",
                "--pair a,b|is no pair",
                "--known-slope 20%|needs --reading",
                "--known-height 20m --distance 10m|needs --distance, and --sighting",
                "--course 66ft|needs --paces",
                "--course 66ft --paces 0|must be above 0",
                "--course 0ft --paces 9|--course must be above 0",
                "--known-height -25m --distance 20m --sighting 118,-8|--known-height must be above 0",
                "--known-height 25m --distance 0m --sighting 118,-8|--distance must be above 0"
            })
    void whatIsMissingIsSaid(String line, String message) {
        Run run = Run.of((Object[]) ("calibrate " + line).split(" "));
        run.assertCode(2);
        assertTrue(run.err().contains(message), run.err());
    }

    private List<String> trees(SmallDesign design, String tally) throws IOException {
        Run.of("estimate", Run.cruise(folder, design, tally), "--out", folder.resolve("out"))
                .assertCode(0);
        return Files.readAllLines(folder.resolve("out/trees.csv"));
    }

    /** Half a degree too high and distances a tenth too short are what a tally would say that was read right. */
    @Test
    void correctionsOfADesignAreThoseOfARightTally() throws IOException {
        SmallDesign corrected = DESIGN.plus("""
                [instrument]
                index_error = 0.5
                distance_factor = 1.1
                why = "two-way check at the gate, tape against a steel one"
                """);
        List<String> raw = trees(DESIGN, TALLY);
        List<String> mended = trees(corrected, TALLY);
        String json = Files.readString(folder.resolve("out/estimate.json"));
        assertTrue(json.contains("an index error of 0.5 (units of the scale) was taken off"), json);
        assertTrue(json.contains("multiplied by 1.1. two-way check at the gate"), json);
        assertTrue(Files.readString(folder.resolve("out/report.html")).contains("Readings were corrected before use"));
        List<String> right = trees(DESIGN, """
                plot,tree,species,dbh,top,base,dist,mark
                1,1,PSME,30,40.5,-4.5,22,19.5
                1,2,PSME,25,37.5,-3.5,22,17.5
                2,1,PSME,40,44.5,-5.5,24.2,24.5
                """);
        assertFalse(mended.equals(raw), "something was corrected");
        assertEquals(rounded(right), rounded(mended));
    }

    /** Rows with numbers to nine digits. */
    private static List<String> rounded(List<String> rows) {
        return rows.stream()
                .map(r -> java.util.Arrays.stream(r.split(",", -1))
                        .map(f -> f.matches("-?\\d+\\.\\d{6,}(E-?\\d+)?") ? "%.9g".formatted(Double.parseDouble(f)) : f)
                        .collect(Collectors.joining(",")))
                .toList();
    }

    @Test
    void mistakesInTheDesignAreListedTogether() {
        assertEquals(
                Set.of("instrument.index_error", "instrument.distance_factor", "instrument.why"),
                DESIGN.plus("[instrument]\nindex_error = 30\ndistance_factor = 0\n").problems(folder).stream()
                        .map(p -> p.column())
                        .collect(Collectors.toSet()));
        assertEquals(
                List.of("instrument.index_error"),
                DESIGN.plus("[instrument]\nwhy = \"so\"\n").problems(folder).stream()
                        .map(p -> p.column())
                        .toList());
    }
}
