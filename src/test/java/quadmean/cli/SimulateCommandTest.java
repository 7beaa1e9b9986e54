package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SimulateCommandTest {
    private static final String LONGLEAF = "datasets/longleaf-map.csv";

    @TempDir
    private Path folder;

    @Test
    void writesPageNumbersAndVerdict() throws IOException {
        Path out = folder.resolve("out");
        Run run = Run.of(
                "simulate",
                "designs/simulate-points.toml",
                "--forest",
                LONGLEAF,
                "--beside",
                "designs/simulate-plots.toml",
                "--cruises",
                "300",
                "--out",
                out);
        run.assertCode(0);
        Map<String, String> files = Run.files(out);
        assertEquals(Set.of("simulate.html", "simulate.json", "simulate.csv"), files.keySet());
        assertTrue(run.out().contains("With 20 points the 95 % interval"), run.out());
        assertTrue(run.out().contains("For the same time"), run.out());
        String page = files.get("simulate.html");
        assertTrue(page.contains("Limits that held the truth") && page.contains("Plots on a grid"), "page");
        assertFalse(page.replaceAll("(?s)<script.*?</script>", "").contains("NaN"), "no number is missing on the page");
        JsonNode json = new ObjectMapper().readTree(files.get("simulate.json"));
        JsonNode target = json.at("/designs/0/attributes/0");
        assertEquals("basal_area", target.get("attribute").asText());
        assertEquals(300, target.get("estimates").asInt());
        double hours = json.at("/designs/0/cost/hours").asDouble();
        assertEquals(hours, json.at("/designs/1/cost/hours").asDouble(), 0.1 * hours, "equal cost");
        assertEquals(1 + 2 * 3 * 2, files.get("simulate.csv").lines().count(), "a row a design, attribute and way");
    }

    @Test
    void theSameRunWritesTheSameBytes() throws IOException {
        for (String name : new String[] {"a", "b"}) {
            Run.of(
                            "simulate",
                            "designs/simulate-plots.toml",
                            "--forest",
                            LONGLEAF,
                            "--cruises",
                            "150",
                            "--out",
                            folder.resolve(name))
                    .assertCode(0);
        }
        assertEquals(Run.files(folder.resolve("a")), Run.files(folder.resolve("b")));
    }

    @Test
    void aStandTableIsMadeIntoAForestWithHeights() throws IOException {
        Run run = Run.of(
                "simulate",
                "designs/simulate-volume.toml",
                "--forest",
                "datasets/forests/uneven-aged.csv",
                "--height-scatter",
                "12",
                "--pattern",
                "clustered",
                "--cruises",
                "100",
                "--out",
                folder);
        run.assertCode(0);
        assertTrue(run.out().contains("6,636 trees on 12 ha"), run.out());
        JsonNode json = new ObjectMapper().readTree(Run.files(folder).get("simulate.json"));
        assertEquals("volume", json.at("/designs/0/attributes/0/attribute").asText());
        assertTrue(json.at("/designs/0/cost/heights").asDouble() > 10, "heights are a subsample");
        assertTrue(
                json.at("/designs/0/cost/heights").asDouble()
                        < 0.3 * json.at("/designs/0/cost/treesMeasured").asDouble(),
                "every fourth tree");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x_m,y_m,dbh_cm;1,1,20;2,2,-3;3,x,30 | forest-value | 2",
                "x_m,y_m,dbh_cm;1,1,20;1,1,20 | forest-value | 1",
                "x,y_m,dbh_cm;1,1,20 | forest-column | 2",
                "x_m,y_m;1,1 | forest-column | 1",
                "dbh_cm,trees_per_ha;10,-1 | forest-value | 1",
                "dbh_cm,dbh_in,trees_per_ha;10,4,1 | forest-column | 1",
                "x_m,y_m,dbh_cm;1,1 | forest-value | 1",
                "x_m,y_m,dbh_cm | file-unreadable | 1",
                "x_m\ty_m\tdbh_cm;1\t1\t20 | file-unreadable | 1",
                "x_m,y_m,dbh_cm,dbh_cm;1,1,20,3 | forest-column | 1"
            })
    void aForestWithMistakesIsRefusedWithAllOfThem(String rows, String rule, int problems) throws IOException {
        Path forest = Files.writeString(folder.resolve("forest.csv"), rows.replace(';', '\n') + "\n");
        Run run =
                Run.of("simulate", "designs/simulate-points.toml", "--forest", forest, "--out", folder.resolve("out"));
        run.assertCode(1);
        assertTrue(run.err().contains(rule), run.err());
        assertEquals(
                1 + problems,
                Run.files(folder.resolve("out")).get("problems.csv").lines().count());
    }

    @Test
    void lettersOfAnotherEncodingAreNotGuessedAt() throws IOException {
        Path forest = Files.write(
                folder.resolve("forest.csv"),
                "x_m,y_m,dbh_cm,species\n1,1,20,\u00e9pic\u00e9a\n"
                        .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
        Run run =
                Run.of("simulate", "designs/simulate-points.toml", "--forest", forest, "--out", folder.resolve("out"));
        run.assertCode(1);
        assertTrue(run.err().contains("no CSV file in UTF-8"), run.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--cruises 5 | from 100 to",
                "--window 0,0,x,1 | is no window",
                "--pattern heaps | is not random",
                "--height-scatter 300 | takes a number from 0 to 100",
                "--beside no-such.toml | there is no file no-such.toml",
                "--heights no-such.csv | there is no file no-such.csv"
            })
    void wrongOptionsAreExplained(String options, String words) throws IOException {
        String[] option = options.split(" ");
        Run run = Run.of(
                "simulate",
                "designs/simulate-points.toml",
                "--forest",
                LONGLEAF,
                option[0],
                option[1],
                "--out",
                folder.resolve("out"));
        run.assertCode(2);
        assertTrue(run.err().contains(words), run.err());
    }

    /** The design of points with some words replaced, and its text at the end. */
    private Path changed(String name, String... words) throws IOException {
        String text = Files.readString(Path.of("designs/simulate-points.toml"));
        for (int i = 0; i < words.length; i += 2) {
            assertTrue(text.contains(words[i]), words[i]);
            text = text.replace(words[i], words[i + 1]);
        }
        return Files.writeString(folder.resolve(name), text);
    }

    private Run run(Path design, Object... more) {
        Object[] usual = {"simulate", design, "--forest", LONGLEAF, "--cruises", "200", "--out", folder.resolve("out")};
        Object[] all = Arrays.copyOf(usual, usual.length + more.length);
        System.arraycopy(more, 0, all, usual.length, more.length);
        return Run.of(all);
    }

    @Test
    void limitsOfTheLuckyCruisesAreNoRemedy() throws IOException {
        // the factor is so large that most cruises find no tree: no limits on a log scale, and none by t above zero
        Path rare = changed("rare.toml", "basal_area_factor = 4 ", "basal_area_factor = 400 ");
        Run run = run(rare);
        run.assertCode(0);
        assertTrue(run.out().contains(" of 81"), "limits that few cruises had say so: " + run.out());
        assertFalse(run.out().contains("With the same plots"), run.out());
    }

    @Test
    void limitsThatCouldNotBeWorkedOutAreCounted() throws IOException {
        Path rare = changed(
                "rare.toml",
                "basal_area_factor = 4 ",
                "basal_area_factor = 400 ",
                "[simulate]",
                "[estimate]\ninterval = \"log\"\n\n[simulate]");
        Run run = run(rare);
        run.assertCode(0);
        assertTrue(
                run.out()
                        .contains(
                                "119 of 200 cruises had an estimate and no such limits, and are left out of that share;"
                                        + " with them limits were there and held the truth in 39.0 %"),
                run.out());
    }

    @Test
    void ofSeveralDesignsTheUnusableOneIsNamed() throws IOException {
        Run run = run(
                Path.of("designs/simulate-points.toml"), "--beside", changed("without-number.toml", "plots = 20", ""));
        run.assertCode(2);
        assertTrue(run.err().contains("without-number.toml: the number of plots is not known"), run.err());
    }

    @Test
    void designsOfTheSameNameAreToldApartByTheirFiles() throws IOException {
        Run run = run(
                Path.of("designs/simulate-points.toml"),
                "--beside",
                changed("inward.toml", "\"mirage\"", "\"inward_sweep\""));
        run.assertCode(0);
        assertTrue(
                run.out().contains("\"Twenty points\" (inward.toml) by")
                        && run.out().contains("\"Twenty points\" (simulate-points.toml) by"),
                run.out());
    }

    @Test
    void treesOutsideOfTheGroundAreCounted() {
        Run run = run(Path.of("designs/simulate-points.toml"), "--window=0,0,100,200");
        run.assertCode(0);
        assertTrue(
                run.err().contains("of 584 trees of the map stand outside of the tract and are left out"), run.err());
    }

    @Test
    void aGroundOfContinentsIsRefused() {
        Run run = run(Path.of("designs/simulate-points.toml"), "--window=0,0,1000000000,200");
        run.assertCode(2);
        assertTrue(run.err().contains("100 km are the most"), run.err());
    }

    @Test
    void aDesignThatCannotBeScaledToTheSameTimeSaysSo() throws IOException {
        Run run = run(
                changed("long.toml", "[simulate]", "[simulate]\nper_tree = 100000"),
                "--beside",
                "designs/simulate-points.toml");
        run.assertCode(2);
        assertTrue(run.err().contains("\"Twenty points\" would need more than 100 times its plots"), run.err());
    }

    @Test
    void aForestWithoutHeightsHasNoTrueVolume() throws IOException {
        Run run = Run.of(
                "simulate", "designs/simulate-volume.toml", "--forest", LONGLEAF, "--out", folder.resolve("out"));
        run.assertCode(2);
        assertTrue(run.err().contains("have no heights"), run.err());
    }

    @Test
    void aMissingForestIsAMatterOfUsage() throws IOException {
        Run run = Run.of("simulate", "designs/simulate-points.toml", "--out", folder.resolve("out"));
        run.assertCode(2);
        assertTrue(run.err().contains("--forest"), run.err());
    }
}
