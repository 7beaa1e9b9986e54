package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.support.SmallDesign;

/** {@code quadmean audit}. */
class AuditCommandTest {
    private static final SmallDesign DESIGN = new SmallDesign().plus("""
            [[crew]]
            name = "one"
            plots = ["1-2"]

            [audit]
            chosen = "judgement"
            dbh_within = 0.5
            dbh_share = 90

            [[audit.tally]]
            file = "check.csv"

            [audit.tally.columns]
            plot = "plot"
            tree = "tree"
            species = "species"
            dbh = { name = "dbh", unit = "cm" }
            height = { name = "height", unit = "m" }
            """);

    private static final String CHECK = """
            plot,tree,species,dbh,height
            1,1,PSME,30.4,20
            1,2,PSME,27,18
            3,1,PSME,28,19
            3,2,PSME,44,
            9,1,PSME,44,
            """;

    @TempDir
    Path folder;

    private Run run(SmallDesign design, String check) throws IOException {
        Files.writeString(folder.resolve("check.csv"), check);
        return Run.of("audit", Run.cruise(folder, design, Run.TALLY), "--out", folder.resolve("out"));
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper().readTree(folder.resolve("out/audit.json").toFile());
    }

    @Test
    void demoWritesItsFilesTheSameEachTime() throws IOException {
        Run run = Run.of("audit", "designs/demo.toml", "--out", folder.resolve("first"));
        run.assertCode(0);
        assertTrue(run.out().contains("Check cruise: Failed"), run.out());
        assertEquals(
                Set.of("audit.html", "audit.json", "audit-trees.csv", "audit-plots.csv", "problems.csv"),
                Run.files(folder.resolve("first")).keySet());
        Run.of("audit", "designs/demo.toml", "--out", folder.resolve("again")).assertCode(0);
        assertEquals(Run.files(folder.resolve("first")), Run.files(folder.resolve("again")));
        String page = Files.readString(folder.resolve("first/audit.html"));
        assertTrue(page.contains("<td>10-21</td>")
                && page.contains("Not shown to agree") != page.contains("Shown to agree"));
    }

    @Test
    void whatIsFoundStandsInTheOutputAndNotInTheCode() throws IOException {
        Run run = run(DESIGN, CHECK);
        run.assertCode(0);
        assertTrue(run.out().contains("Check cruise: Failed"), run.out());
        assertTrue(run.out().contains("dbh: 2 of 3 trees within the limit"), run.out());
        assertTrue(run.out().contains("Tree missed by the crew: 3-2"), run.out());
        assertTrue(run.out().contains("1-2: dbh 25.0 cm, the checker 27.0; apart by 2.00, allowed 0.50"), run.out());
        assertTrue(run.out().contains("Plot that cannot be compared: 9: the cruise has no such plot"), run.out());
        assertTrue(run.out().contains("chosen by judgement"), run.out());
        assertEquals("failed", json().get("verdict").asText());
        assertEquals(3, json().get("readings").get(1).get("n").asInt(), "heights on both sides");
    }

    /** Without limits nothing is judged, and without a margin nothing is shown to agree. */
    @Test
    void nothingIsJudgedWithoutLimits() throws IOException {
        SmallDesign open = new SmallDesign(DESIGN.text().replaceAll("dbh_(within|share) = .*\n", ""));
        Run run = run(open, CHECK);
        run.assertCode(0);
        assertTrue(run.out().contains("Check cruise: Not judged"), run.out());
        assertTrue(run.out().contains("No margin was fixed beforehand"), run.out());
        assertFalse(json().get("value").has("equivalence"));
    }

    /** By hand: limits of 0.5 cm on 2 of 3 trees; plot 3 by basal area per ha, 0.1 ha: crew π/4·0.28², checker with π/4·0.44² more. */
    @Test
    void valuesOfPlotsAreThoseByHand() throws IOException {
        run(DESIGN, CHECK).assertCode(0);
        JsonNode plot = json().get("plots").get(1);
        assertEquals("3", plot.get("plot").asText());
        assertEquals(Math.PI / 4 * 0.28 * 0.28 / 0.1, plot.get("cruised").asDouble(), 1e-12);
        assertEquals(
                Math.PI / 4 * (0.28 * 0.28 + 0.44 * 0.44) / 0.1,
                plot.get("checked").asDouble(),
                1e-12);
    }

    /** Points, trees without numbers: matched by species and dbh, then by dbh alone; a tree at 95 % of its limit is borderline. */
    @Test
    void whatDoesNotVaryIsNotTested() throws IOException {
        SmallDesign design = DESIGN.with("chosen = \"judgement\"", "chosen = \"random\"\nmargin = 5");
        Run same = run(design, Run.TALLY);
        same.assertCode(0);
        assertTrue(
                same.out()
                        .contains("agree within the margin was not tested (no limits and no test: the difference is the"
                                + " same on every plot)"),
                same.out());
        assertTrue(json().get("value").get("equivalence").get("shown").isNull());
        Run one = run(design, CHECK.substring(0, CHECK.indexOf("3,1,")));
        one.assertCode(0);
        assertTrue(one.out().contains("(no limits and no test, 1 plot)"), one.out());
        assertTrue(one.out().contains("was not tested (no limits and no test from a single plot)"), one.out());
        assertTrue(Files.readString(folder.resolve("out/audit.html")).contains(">Not tested<"));
    }

    @Test
    void aCheckWithoutRowsIsSaidOnce() throws IOException {
        Run run = run(DESIGN, CHECK.substring(0, CHECK.indexOf("1,1,")));
        run.assertCode(1);
        assertTrue(
                run.err().contains("check.csv stratum-without-plots: the tally has no rows that make a plot"),
                run.err());
        assertFalse(run.err().contains("plot-not-in-tally"), run.err());
    }

    @Test
    void treesOfPointsWithoutNumbersAreMatchedBySize() throws IOException {
        SmallDesign points = new SmallDesign(DESIGN.text()
                .replace(
                        "kind = \"fixed\"\narea = 0.1",
                        "kind = \"point\"\nbasal_area_factor = 4\nlimiting_distance = \"centre\"")
                .replace("tree = \"tree\"\n", "")
                .replace(
                        "height = { name = \"height\", unit = \"m\" }",
                        "point_distance = { name = \"away\", unit = \"m\" }"));
        Files.writeString(
                folder.resolve("check.csv"),
                "plot,species,dbh,away\n1,PSME,31,\n1,ABGR,20,\n2,PSME,40,\n2,PSME,20,4.75\n");
        Path design = Run.cruise(
                folder, points.plus("[species.ABGR]"), "plot,species,dbh,away\n1,PSME,20,\n1,PSME,30,\n2,PSME,40,\n");
        Run run = Run.of("audit", design, "--out", folder.resolve("out"));
        run.assertCode(0);
        assertTrue(run.out().contains("the crew wrote PSME, the checker ABGR"), run.out());
        // by definition the limit of 20 cm at 4 m²/ha is 20/100·50/√4 = 5 m
        assertTrue(run.out().contains("PSME, dbh 20.0 cm; at 95.0 % of the limiting distance: borderline"), run.out());
        assertTrue(run.out().contains("Some trees were matched by size, up to 15"), run.out());
    }

    /** Where trees are counted only, the counts are compared, and plots have no value of their own. */
    @Test
    void countsAreComparedWhereTreesAreCounted() throws IOException {
        SmallDesign points = new SmallDesign(DESIGN.text()
                .replace(
                        "kind = \"fixed\"\narea = 0.1",
                        "kind = \"point\"\nbasal_area_factor = 4\nmeasured = \"some_points\"")
                .replace(
                        "dbh = { name = \"dbh\", unit = \"cm\" }\nheight = { name = \"height\", unit = \"m\" }",
                        "dbh = { name = \"dbh\", unit = \"cm\" }\ncount = \"count\"")
                .replace("tree = \"tree\"\n", ""));
        Files.writeString(folder.resolve("check.csv"), "plot,species,dbh,count\n1,PSME,30,\n2,PSME,,5\n");
        Path design = Run.cruise(
                folder, points, "plot,species,dbh,count\n1,PSME,30,\n1,PSME,25,\n2,PSME,,4\n3,PSME,33,\n3,PSME,28,\n");
        Run run = Run.of("audit", design, "--out", folder.resolve("out"));
        run.assertCode(0);
        assertTrue(run.out().contains("Counts differ: 2: the crew counted 1 fewer than the checker"), run.out());
        assertTrue(run.out().contains("Plot values were not compared: trees are counted"), run.out());
        assertTrue(run.out().contains("Tree that the checker did not find"), run.out());
    }

    @Test
    void problemsOfTheChecksTallyRefuse() throws IOException {
        Run run = run(DESIGN, CHECK.replace("30.4", "x30") + "3,3,,20,\n");
        run.assertCode(1);
        assertTrue(run.err().contains("check.csv:2 [dbh] number-unreadable"), run.err());
        assertTrue(run.err().contains("check.csv:7 [species] species-missing"), run.err());
    }

    @Test
    void aDesignWithoutAuditOrItsFileIsWrongUsage() throws IOException {
        Path plain = Run.cruise(folder, new SmallDesign(), Run.TALLY);
        Run run = Run.of("audit", plain, "--out", folder.resolve("out"));
        run.assertCode(2);
        assertTrue(run.err().contains("[[audit.tally]]"), run.err());
        Run none = Run.of("audit", DESIGN.write(folder), "--out", folder.resolve("out"));
        none.assertCode(2);
        assertTrue(none.err().contains("check.csv"), none.err());
    }

    @Test
    void theChecksTallyIsNeverOverwritten() throws IOException {
        SmallDesign design = DESIGN.with("file = \"check.csv\"", "file = \"out/audit-trees.csv\"");
        Files.createDirectories(folder.resolve("out"));
        Files.writeString(folder.resolve("out/audit-trees.csv"), CHECK);
        Run run = run(design, CHECK);
        run.assertCode(2);
        assertEquals(CHECK, Files.readString(folder.resolve("out/audit-trees.csv")));
    }

    @Test
    void mistakesInTheDesignAreListedTogether() {
        Set<String> found = DESIGN
                .with(
                        "chosen = \"judgement\"\ndbh_within = 0.5\n",
                        "chosen = \"randomly\"\nheight_within = 5\nmargin = -2\n")
                .with("file = \"check.csv\"", "file = \"tally.csv\"")
                .problems(folder)
                .stream()
                .map(p -> p.column())
                .collect(Collectors.toSet());
        assertEquals(
                Set.of("audit.chosen", "audit.margin", "audit.dbh_share", "audit.height_within", "audit.tally"), found);
    }
}
