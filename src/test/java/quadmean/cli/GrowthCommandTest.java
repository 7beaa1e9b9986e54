package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.demo.DemoPlots;
import quadmean.support.ReferenceFiles;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** {@code quadmean growth}. */
class GrowthCommandTest {
    private static final SmallDesign DESIGN = new SmallDesign()
            .with("height = { name = \"height\", unit = \"m\" }\n", "status = \"status\"\n")
            .plus("""
            [output]
            smallest_dbh = 10

            [remeasurement]
            years = 4
            largest_growth = 5

            [[remeasurement.tally]]
            file = "before.csv"

            [remeasurement.tally.columns]
            plot = "plot"
            tree = "tree"
            species = "species"
            dbh = { name = "dbh", unit = "cm" }
            """);

    private static final SmallDesign POINTS =
            DESIGN.with("kind = \"fixed\"\narea = 0.1\n", "kind = \"point\"\nbasal_area_factor = 4\n");

    private static final String BEFORE = """
            plot,tree,species,dbh
            1,1,PSME,30
            1,2,PSME,20
            2,1,PSME,40
            """;

    private static final String AFTER = """
            plot,tree,species,dbh,status
            1,1,PSME,33,
            1,2,PSME,20,dead
            1,3,PSME,12,
            2,1,PSME,42,
            2,9,PSME,50,
            """;

    @TempDir
    Path folder;

    private Run run(SmallDesign design, String before, String after) throws IOException {
        Files.writeString(folder.resolve("before.csv"), before);
        return Run.of("growth", Run.cruise(folder, design, after), "--out", folder.resolve("out"));
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper().readTree(folder.resolve("out/growth.json").toFile());
    }

    private double mean(String component) throws IOException {
        return json().get("attributes")
                .get(0)
                .get("components")
                .get(component)
                .get("mean")
                .asDouble();
    }

    private static double ba(double dbh) {
        return Math.PI / 4 * dbh * dbh / 1e4;
    }

    @Test
    void theShippedTalliesAreWhatTheGeneratorMakes() throws IOException {
        List<String> both = DemoPlots.tallies();
        assertEquals(both.get(0), Files.readString(Path.of("datasets/demo-plots-2021.csv")));
        assertEquals(both.get(1), Files.readString(Path.of("datasets/demo-plots-2026.csv")));
    }

    /** growth.json: R 4.2.2, survey 4.1-1, script growth.R. */
    @Test
    void componentsErrorsAndCovarianceAreThoseOfR() throws IOException {
        Run run = Run.of("growth", "designs/demo-growth.toml", "--out", folder.resolve("out"));
        run.assertCode(0);
        assertEquals(
                Set.of("growth.html", "growth.json", "growth.csv", "growth-trees.csv", "problems.csv"),
                Run.files(folder.resolve("out")).keySet());
        JsonNode expected = ReferenceFiles.json("growth.json");
        JsonNode actual = json().get("attributes").get(1);
        assertEquals("basal_area", actual.get("attribute").asText());
        expected.get("components").properties().forEach(e -> {
            JsonNode component = actual.get("components").get(e.getKey());
            Tolerance.R_SCRIPT.check(number(e.getValue().get("mean")), number(component.get("mean")), e.getKey());
            Tolerance.R_SCRIPT.check(number(e.getValue().get("se")), number(component.get("se")), e.getKey() + " se");
        });
        Tolerance.R_SCRIPT.check(number(expected.get("covariance")), number(actual.get("covariance")), "covariance");
        Tolerance.R_SCRIPT.check(number(expected.get("correlation")), number(actual.get("correlation")), "correlation");
        assertTrue(actual.get("seIfIndependent").asDouble()
                > 2 * actual.get("components").get("change").get("se").asDouble());
    }

    /** By hand on 0.1 ha; the mean of two plots. */
    @Test
    void fixedPlotsAddUpTreeByTree() throws IOException {
        Run run = run(DESIGN, BEFORE, AFTER);
        run.assertCode(0);
        double perHa = 1 / 0.1 / 2;
        Tolerance.ROUNDING.check(perHa * (ba(33) - ba(30) + ba(42) - ba(40)), mean("survivor_growth"), "survivors");
        Tolerance.ROUNDING.check(perHa * (ba(12) + ba(50)), mean("ingrowth"), "ingrowth");
        Tolerance.ROUNDING.check(perHa * ba(20), mean("mortality"), "mortality");
        assertEquals(0, mean("removals"));
        assertEquals(0, mean("ongrowth"));
        Tolerance.absolute("rounding of doubles", 1e-12).check(0, mean("lower_weight"), "weights");
        Tolerance.ROUNDING.check(
                mean("survivor_growth") + mean("ingrowth") - mean("mortality"), mean("change"), "V2 - V1");
        Tolerance.ROUNDING.check(mean("net_growth_by_dates"), mean("net_growth"), "net growth both ways");
        assertTrue(Files.readString(folder.resolve("out/growth.html"))
                .contains("Earlier date: 3 rows read = 3 used + 0 dropped."));
        assertTrue(run.out().contains("2-9: new with a dbh of 50.0 cm, too large to have grown in"), run.out());
    }

    /** By hand: a tree of a point stands for F/g trees a hectare. */
    @Test
    void pointsHaveOngrowthAndLowerWeights() throws IOException {
        run(POINTS, BEFORE, AFTER).assertCode(0);
        Tolerance.ROUNDING.check(
                4 * (ba(33) / ba(30) - 1 + ba(42) / ba(40) - 1) / 2, mean("survivor_growth"), "survivors");
        Tolerance.ROUNDING.check(4.0 / 2, mean("ingrowth"), "12 cm is within 10 + 5");
        Tolerance.ROUNDING.check(4.0 / 2, mean("ongrowth"), "50 cm is not");
        Tolerance.ROUNDING.check(-mean("survivor_growth"), mean("lower_weight"), "F per tree at both dates");
        Tolerance.ROUNDING.check(
                mean("survivor_growth")
                        + mean("ingrowth")
                        + mean("ongrowth")
                        + mean("lower_weight")
                        - mean("mortality"),
                mean("change"),
                "V2 - V1");
    }

    /**
     * Over all places where a point can fall a tree is in with chance g1/F at the earlier date and g2/F at the later: ongrowth and
     * lower weight take each other off (by algebra), and growth of survivors is g2 - g1.
     */
    @Test
    void onAverageOngrowthMakesUpForLowerWeights() throws IOException {
        double g1 = ba(30);
        double g2 = ba(36);
        String both = "plot,tree,species,dbh,status\n1,1,PSME,36,\n2,,,,\n";
        SmallDesign design = POINTS.with("largest_growth = 5", "largest_growth = 7");
        run(design, "plot,tree,species,dbh\n1,1,PSME,30\n2,,,\n", both).assertCode(0);
        double survivors = 2 * mean("survivor_growth") * g1 / 4;
        double lower = 2 * mean("lower_weight") * g1 / 4;
        run(design, "plot,tree,species,dbh\n1,,,\n2,,,\n", both).assertCode(0);
        double ongrowth = 2 * mean("ongrowth") * (g2 - g1) / 4;
        Tolerance.ROUNDING.check(g2 - g1, survivors, "growth of survivors");
        Tolerance.ROUNDING.check(-lower, ongrowth, "ongrowth");
    }

    @Test
    void whatBecameOfAbsentTreesMustBeSaid() throws IOException {
        String gone = AFTER.replace("2,1,PSME,42,\n", "");
        Run refused = run(DESIGN, BEFORE, gone);
        refused.assertCode(1);
        assertTrue(
                refused.err().contains("before.csv:4 [tree] tree-absent: 2-1 is not in the later tally"),
                refused.err());
        run(DESIGN.with("years = 4", "years = 4\nabsent = \"cut\""), BEFORE, gone)
                .assertCode(0);
        Tolerance.ROUNDING.check(ba(40) / 0.1 / 2, mean("removals"), "cut");
        run(DESIGN.with("years = 4", "years = 4\nabsent = \"dead\""), BEFORE, gone)
                .assertCode(0);
        Tolerance.ROUNDING.check((ba(20) + ba(40)) / 0.1 / 2, mean("mortality"), "dead");
    }

    @Test
    void everyStratumNeedsAPlotOfBothDates() throws IOException {
        Run other = run(DESIGN, BEFORE.replace("\n1,", "\n8,").replace("\n2,", "\n9,"), AFTER);
        other.assertCode(1);
        assertTrue(other.err().contains("stratum-without-plots: no plot of"), other.err());
        SmallDesign strata = DESIGN.with("area = 10\n", "")
                .plus("[selection]\nmethod = \"stratified\"\n\n[[stratum]]\ncode = \"A\"\narea = 6\nplots = [\"1\"]\n\n"
                        + "[[stratum]]\ncode = \"B\"\nname = \"bench\"\narea = 4\nplots = [\"2\"]\n");
        Run run = run(strata, BEFORE.replace("2,1,PSME,40\n", ""), AFTER);
        run.assertCode(1);
        assertTrue(run.err().contains("no plot of bench was measured at both dates"), run.err());
    }

    @Test
    void whatADateLacksAndPlotsOfAnotherStratumAreSaid() throws IOException {
        Path datasets = Files.createDirectories(folder.resolve("datasets"));
        Path designs = Files.createDirectories(folder.resolve("designs"));
        Files.copy(Path.of("designs/demo-growth.toml"), designs.resolve("g.toml"));
        Files.writeString(
                datasets.resolve("demo-plots-2021.csv"),
                DemoPlots.tallies().get(0).replaceAll("(?m)^(\\d.*,)[0-9.]+(,[a-z]*)$", "$1$2"));
        Files.writeString(
                datasets.resolve("demo-plots-2026.csv"),
                DemoPlots.tallies().get(1).replaceAll("(?m)^1,N", "1,B"));
        Run run = Run.of("growth", designs.resolve("g.toml"), "--out", folder.resolve("out"));
        run.assertCode(0);
        assertTrue(run.out().contains("The earlier date has no volume: no height and no height curve for"), run.out());
        assertTrue(run.out().contains("plot 1: in stratum N at the earlier date, in B now"), run.out());
    }

    @Test
    void treesWithoutOrWithTheSameNumberAreListedTogether() throws IOException {
        SmallDesign design = DESIGN.plus("[policy]\ntree-repeated = \"keep\"\n");
        Run run = run(design, BEFORE + "2,1,PSME,25\n2,,PSME,11\n", AFTER);
        run.assertCode(1);
        assertTrue(run.err().contains("number 1 stands twice on plot 2"), run.err());
        assertTrue(run.err().contains("before.csv:6 [tree] tree-unnumbered"), run.err());
    }

    @Test
    void shrunkenTreesAndOtherSpeciesAreNamed() throws IOException {
        Run run = run(
                DESIGN.plus("[species.ABGR]\n"),
                BEFORE,
                AFTER.replace("1,1,PSME,33", "1,1,ABGR,29").replace("2,1,PSME,42", "2,1,PSME,47"));
        run.assertCode(0);
        assertTrue(run.out().contains("1-1: PSME at the earlier date, ABGR now"), run.out());
        assertTrue(run.out().contains("1-1: its dbh shrank from 30.0 cm to 29.0 cm"), run.out());
        assertTrue(
                run.out().contains("2-1: its dbh grew from 40.0 cm to 47.0 cm, more than largest_growth"), run.out());
    }

    @Test
    void mistakesInTheDesignAreListedTogether() {
        Set<String> found = POINTS
                .with("years = 4\nlargest_growth = 5\n", "absent = \"gone\"\n")
                .with(
                        "[remeasurement.tally.columns]\nplot = \"plot\"\ntree = \"tree\"",
                        "[remeasurement.tally.columns]\nplot = \"plot\"")
                .problems(folder)
                .stream()
                .map(p -> p.column())
                .collect(Collectors.toSet());
        assertEquals(
                Set.of(
                        "remeasurement.years",
                        "remeasurement.absent",
                        "remeasurement.tally",
                        "remeasurement.largest_growth"),
                found);
    }
}
