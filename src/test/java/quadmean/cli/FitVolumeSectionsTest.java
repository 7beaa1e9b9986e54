package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** {@code quadmean fit-volume} on points of stems. */
class FitVolumeSectionsTest {
    private static final double FT3 = 0.028316846592;
    private static final String HEADER = "tree,dbh_cm,height_m,at_m,diameter_cm\n";
    private static final String POINTS = "--at at_m --diameter diameter_cm";

    @TempDir
    Path folder;

    private Run fit(String text, String options) throws IOException {
        Path table = Files.writeString(folder.resolve("stems.csv"), text);
        Stream<String> given = Stream.of(options.split(" "));
        Stream<String> first = Stream.of("fit-volume", table.toString(), "--out", out().toString());
        return Run.of(Stream.concat(first, given).toArray());
    }

    private Path out() {
        return folder.resolve("out");
    }

    private String written(String name) throws IOException {
        return Files.readString(out().resolve(name));
    }

    private List<Map<String, String>> sections() throws IOException {
        List<String[]> rows =
                written("sections.csv").lines().map(line -> line.split(",", -1)).toList();
        return rows.stream()
                .skip(1)
                .map(row -> Stream.iterate(0, i -> i + 1)
                        .limit(row.length)
                        .collect(Collectors.toMap(i -> rows.get(0)[i], i -> row[i])))
                .toList();
    }

    private double sum(String column) throws IOException {
        return sections().stream()
                .mapToDouble(s -> Double.parseDouble(s.get(column)))
                .sum();
    }

    /** A solid of 40 cm at the ground and 20 m: squared radius in proportion to x^r, volume B·L/(r + 1) by definition. */
    @ParameterizedTest
    @CsvSource({"paraboloid, 1", "cone, 2", "neiloid, 3"})
    void newtonIsExactOnSolidsOfRevolution(String tip, int r) throws IOException {
        StringBuilder text = new StringBuilder(HEADER);
        for (double h : new double[] {0, 2, 4, 7, 10}) {
            double d = 40 * Math.pow((20 - h) / 20, r / 2.0);
            text.append(String.format(Locale.ROOT, "T,%s,20,%s,%s%n", 37, h, d));
        }
        fit(text.toString(), POINTS + " --rule newton --tip " + tip).assertCode(0);
        double expected = Math.PI * 0.04 * 20 / (r + 1);
        Tolerance.ROUNDING.check(expected, sum("volume_m3"), tip);
        Tolerance.ROUNDING.check(expected / FT3, sum("volume_ft3"), tip + " in ft³");
        assertEquals(
                List.of("Newton", "Newton", "tip as a " + tip),
                sections().stream().map(s -> s.get("rule")).toList());
    }

    private static final String STEM = """
            tree,dbh_cm,height_m,at_m,diameter_cm,bark_cm
            1,30,20,0.3,36,1.5
            1,30,20,1.3,30,1.1
            1,30,20,3.3,27.4,0.9
            1,30,20,5.3,25.1,0.8
            1,30,20,7.3,22.7,0.8
            1,30,20,9.3,20.2,0.7
            """;

    /** R 4.2.2, script sections.R. */
    @ParameterizedTest
    @CsvSource({"smalian, 0.50530368627124", "newton, 0.504527712885803", "huber, 0.50297576611493"})
    void aStemInsideBarkToATopDiameter(String rule, double expected) throws IOException {
        fit(STEM, POINTS + " --bark bark_cm --top 10cm --rule " + rule).assertCode(0);
        Tolerance.R_SCRIPT.check(expected, sum("volume_m3"), rule);
        Map<String, String> last = sections().get(sections().size() - 1);
        Tolerance.R_SCRIPT.check(14.3085106382979, Double.parseDouble(last.get("to_m")), "height of 10 cm");
        Tolerance.R_SCRIPT.check(14.3085106382979 / 0.3048, Double.parseDouble(last.get("to_ft")), "the same in ft");
        Tolerance.R_SCRIPT.check(0.0841072176118027, Double.parseDouble(last.get("volume_m3")), "tip");
    }

    /** The same stem outside bark, R 4.2.2, script sections.R. */
    @Test
    void aStemOutsideBarkFromAStumpToAParaboloidTip() throws IOException {
        Run run = fit(STEM, POINTS + " --stump 100cm --tip paraboloid");
        run.assertCode(0);
        Tolerance.R_SCRIPT.check(0.594535414117581, sum("volume_m3"), "Smalian");
        assertTrue(run.out().contains("Volumes summed section by section by Smalian"), run.out());
        assertTrue(run.out().contains("from a stump of 1 m to the tip, on the side of the bark"), run.out());
    }

    private static final String US_STEM = """
            tree,dbh_in,height_ft,a,d,b
            1,12,65,1,14.1,0.6
            1,12,65,4.5,12,0.5
            1,12,65,12.5,10.9,0.4
            1,12,65,20.5,9.7,0.3
            """;

    /** Definition: 1 in = 2.54 cm, 1 ft = 0.3048 m, so that the metric table is exact. */
    @Test
    void unitsOfTheTableDoNotShow() throws IOException {
        fit(US_STEM, "--at a:ft --diameter d:in --bark b:in --stump 2ft --top 4in")
                .assertCode(0);
        double us = sum("volume_m3");
        String metric = US_STEM.lines()
                .skip(1)
                .map(line -> line.split(","))
                .map(c -> String.join(
                        ",",
                        c[0],
                        times(c[1], "2.54"),
                        times(c[2], "0.3048"),
                        times(c[3], "0.3048"),
                        times(c[4], "2.54"),
                        times(c[5], "2.54")))
                .collect(Collectors.joining("\n"));
        fit(
                        "tree,dbh_cm,height_m,a,d,b\n" + metric,
                        "--at a:m --diameter d:cm --bark b:cm --stump 6.096dm --top 101.6mm")
                .assertCode(0);
        Tolerance.ROUNDING.check(us, sum("volume_m3"), "volume");
    }

    private static String times(String number, String unit) {
        return new BigDecimal(number).multiply(new BigDecimal(unit)).toPlainString();
    }

    @Test
    void volumesAreWrittenWhereThereAreTooFewTreesToFit() throws IOException {
        Run run = fit(STEM, POINTS);
        run.assertCode(0);
        assertTrue(run.out().contains("! no form gives an equation"), run.out());
        assertTrue(run.out().contains("too few trees: 1 tree, 4 needed"), run.out());
        assertTrue(run.out().contains("Sections: "), run.out());
        String page = written("fit-volume.html");
        assertTrue(page.contains("How the volumes came about") && page.contains("Volumes of the trees"));
        assertTrue(page.contains("too few trees: 1 tree, 4 needed"));
    }

    @Test
    void fitsFollowAndTheDesignPieceSaysHowItsVolumesCameAbout() throws IOException {
        Run run = Run.of(
                "fit-volume",
                "datasets/demo-stems.csv",
                "--species",
                "species",
                "--at",
                "at_ft",
                "--diameter",
                "diameter_in",
                "--bark",
                "bark_in",
                "--top",
                "4in",
                "--out",
                out());
        run.assertCode(0);
        assertTrue(run.out().contains("Rows: 62 in = 62 used + 0 dropped"), run.out());
        assertTrue(run.out().contains("All trees, 8 trees"), run.out());
        assertEquals(
                Set.of(
                        "fit-volume.html",
                        "fit-volume.json",
                        "fit-volume.csv",
                        "volume.toml",
                        "sections.csv",
                        "problems.csv"),
                Run.files(out()).keySet().stream()
                        .filter(f -> !f.endsWith(".png"))
                        .collect(Collectors.toSet()));
        assertTrue(Files.exists(out().resolve("chart-observed-3.png")));
        String toml = written("volume.toml");
        assertTrue(toml.contains("to a top diameter of 4 in, inside bark"), toml);
        SmallDesign design = new SmallDesign().plus("[species.A]\n[species.B]\n" + toml);
        assertEquals(List.of(), design.problems(folder));
        double bySections = sum("volume_ft3");
        double byTree = written("fit-volume.csv")
                .lines()
                .filter(line -> line.startsWith("*,combined_variable,"))
                .mapToDouble(line -> Double.parseDouble(line.split(",")[7]))
                .sum();
        Tolerance.ROUNDING.check(bySections, byTree, "the trees are fitted with the sums of their sections");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A,30,20,1.3,30/A,30,20,1,31 | :3 [at_m] felled-point: the point lies no higher than that of row 2",
                "A,30,20,1.3,30/A,30,20,1.3,30 | :3 [at_m] felled-point: the point lies no higher than that of row 2",
                "A,30,20,1.3,30/A,30,20,5,0 | :3 [diameter_cm] felled-value: 0 cm is no diameter of a point",
                "A,30,20,1.3,30/A,30,20,20,1 | :3 [at_m] felled-point: the point is not below the total height",
                "A,30,20,1.3,30/A,,20,5,25 | :3 [dbh_cm] felled-value: the tree has no dbh",
                "A,30,20,1.3,30/A,,20,5,0/A,30,20,4,x | :4 [diameter_cm] felled-value:",
                "A,30,20,1.3,30/A,31,20,5,25 | :3 [dbh_cm] felled-differs: the tree has 30 in row 2",
                "A,30,20,1.3,30/A,30,21,5,25 | :3 [height_m] felled-differs: the tree has 20 in row 2",
                "A,30,20,1.3,30/,30,20,5,25 | :3 [tree] felled-point: the row does not say of which tree",
                "A,30,20,1.3,30 | :2 [tree] felled-stem: the stem has one point",
                "A,30,20,1.3,30/A,30,20,5,25,7 | :3 row-length: the row has 6 fields",
                "A,30,20,1.3,30/A,30,20,-1,25 | :3 [at_m] felled-value: -1 m is no height above ground of a point",
                "A,30,20,0.3,130/A,30,20,5,250 | :2 [volume] felled-unlikely: "
            })
    void malformedRowsAreRefusedWithRowAndRemedy(String rows, String words) throws IOException {
        String good = "G,25,18,0.3,28/G,25,18,1.3,25/H,25,18,0.3,28/H,25,18,1.3,25/I,25,18,0.3,28/I,25,18,1.3,25";
        String text = HEADER + (rows + "/" + good).replace("/", "\n") + "\n";
        Run run = fit(text, POINTS);
        run.assertCode(1);
        assertTrue(run.err().contains("stems.csv" + words), run.err());
        assertTrue(run.err().contains("--bad-rows drop") || words.contains("unlikely"), run.err());
        assertEquals(Set.of("problems.csv"), Run.files(out()).keySet());
        Run dropped = fit(text, POINTS + " --bad-rows drop");
        dropped.assertCode(0);
        int lines = rows.split("/").length;
        assertTrue(
                dropped.out().contains("Rows: " + (6 + lines) + " in = 6 used + " + lines + " dropped"), dropped.out());
        Set<String> listed = written("problems.csv")
                .lines()
                .skip(1)
                .map(line -> line.split(",")[1])
                .collect(Collectors.toSet());
        assertEquals(lines, listed.size(), "every row dropped is listed: " + listed);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--top 30cm | [top] felled-cut: the top diameter is not below the dbh of tree 1, 30 cm | 30 cm",
                "--top 12in | [top] felled-cut: the top diameter is not below the dbh of tree 1, 30 cm | 30.48 cm",
                "--top 29.9cm --stump 3m | [top] felled-cut: the stem is no thicker at the stump | 29.9 cm",
                "--stump 10cm | [stump] felled-cut: the stump lies below the lowest point of tree 1, 0.3 m | 0.1 m",
                "--stump 20m | [stump] felled-cut: the stump is not below the height of tree 1, 20 m | 20 m"
            })
    void cutsThatAreNotOnTheStemAreRefused(String options, String words, String value) throws IOException {
        Run run = fit(STEM, POINTS + " " + options);
        run.assertCode(1);
        assertTrue(run.err().contains("stems.csv:2 " + words), run.err());
        assertTrue(run.err().contains("choose another --stump or --top"), run.err());
        assertTrue(written("problems.csv").contains("," + value + ","), written("problems.csv"));
        Run dropped = fit(STEM, POINTS + " --bad-rows drop " + options);
        dropped.assertCode(1);
        assertTrue(dropped.err().contains("The table has no tree that can be used"), dropped.err());
        assertEquals(1 + 6, written("problems.csv").lines().count(), "every row is listed");
    }

    @Test
    void barkThatLeavesNoWoodAndBulgesAreTold() throws IOException {
        Run run = fit(STEM.replace("9.3,20.2,0.7", "9.3,20.2,10.1"), POINTS + " --bark bark_cm");
        run.assertCode(1);
        assertTrue(run.err().contains(":7 [bark_cm] felled-value: bark on both sides leaves nothing"), run.err());
        Run none = fit(STEM.replace("9.3,20.2,0.7", "9.3,20.2,"), POINTS + " --bark bark_cm");
        assertTrue(none.err().contains(":7 [bark_cm] felled-value: the point has no bark thickness"), none.err());
        Run bulge = fit(STEM.replace("9.3,20.2,", "9.3,23.2,"), POINTS);
        bulge.assertCode(0);
        assertTrue(bulge.err().contains(":7 [diameter_cm] felled-bulge: the stem is thicker here than in row 6"));
        assertTrue(bulge.out().contains("1 of those used are listed"), bulge.out());
    }

    /** Millimetres taken for centimetres leave no stem at all in every tree. */
    @Test
    void aWrongUnitIsRefusedWhateverBecomesOfBadRows() throws IOException {
        Run run = fit(STEM.replace("diameter_cm", "diameter_mm"), "--at at_m --diameter diameter_mm --bad-rows drop");
        run.assertCode(1);
        assertTrue(run.err().contains("a unit is wrong"), run.err());
    }

    @Test
    void oneOfTheTwoColumnsIsNotEnough() throws IOException {
        Run run = fit(STEM, "--at at_m");
        run.assertCode(1);
        assertTrue(run.err().contains("name it with --diameter"), run.err());
        assertFalse(Files.exists(out().resolve("sections.csv")));
        assertEquals(
                1,
                Arrays.stream(run.err().split("\n"))
                        .filter(l -> l.startsWith("error"))
                        .count());
    }
}
