package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.design.Design;
import quadmean.model.Standing;
import quadmean.support.ReferenceFiles;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;
import quadmean.units.Unit;
import quadmean.volume.TreeEquation;

/** {@code quadmean fit-volume}. */
class FitVolumeCommandTest {
    private static final String CHERRIES = "datasets/black-cherry.csv";
    private static final Set<String> FILES = Set.of(
            "fit-volume.html",
            "fit-volume.json",
            "fit-volume.csv",
            "volume.toml",
            "problems.csv",
            "chart-observed-1.png",
            "chart-residuals-1.png");

    @TempDir
    Path folder;

    private Path table(String text) throws IOException {
        return Files.writeString(folder.resolve("felled.csv"), text);
    }

    private Path out() {
        return folder.resolve("out");
    }

    private String written(String name) throws IOException {
        return Files.readString(out().resolve(name));
    }

    @Test
    void theDatasetIsTheReference() throws IOException {
        assertEquals(
                Files.readString(Path.of("src/test/resources/reference/blackcherry.csv")),
                Files.readString(Path.of(CHERRIES)));
    }

    @Test
    void blackCherriesGiveReportTablesAndADesignPieceTheSameEachTime() throws IOException {
        Run run = Run.of("fit-volume", CHERRIES, "--out", out());
        run.assertCode(0);
        assertEquals(FILES, Run.files(out()).keySet());
        for (String words : List.of(
                "best: V = f·g·H, f = 0.38489539",
                "Rows: 31 in = 31 used + 0 dropped",
                "volume \"volume_ft3\" (ft3)",
                "Report: ",
                "For a design: ")) {
            assertTrue(run.out().contains(words), words + " in " + run.out());
        }
        assertEquals("", run.err());
        assertEquals(1 + 5 * 31, written("fit-volume.csv").lines().count());
        Run.of("fit-volume", CHERRIES, "--out", folder.resolve("again")).assertCode(0);
        assertEquals(Run.files(out()), Run.files(folder.resolve("again")));
    }

    /** felled.json: R lm, script felled.R. */
    @Test
    void jsonHoldsTheNumbersUnrounded() throws IOException {
        Run.of("fit-volume", CHERRIES, "--out", out()).assertCode(0);
        JsonNode root = new ObjectMapper().readTree(written("fit-volume.json"));
        JsonNode group = root.get("groups").get(0);
        assertEquals("form_factor", group.get("best").asText());
        JsonNode form = group.get("forms").get(0);
        JsonNode expected =
                ReferenceFiles.json("felled.json").get("blackcherry").get("combined_weighted");
        JsonNode b = form.get("coefficients").get("b");
        Tolerance.R_SCRIPT.check(
                expected.get("estimate").get(1).asDouble(), b.get("estimate").asDouble(), "b");
        Tolerance.R_SCRIPT.check(
                expected.get("se").get(1).asDouble(), b.get("standardError").asDouble(), "se");
        Tolerance.R_SCRIPT.check(
                expected.get("leave_one_out").asDouble(),
                form.get("leaveOneOut").asDouble(),
                "leave-one-out");
        assertTrue(form.get("rSquared").isNull(), "weighted");
        assertEquals(31, root.get("rows").get("used").asInt());
    }

    @ParameterizedTest
    @CsvSource({
        "combined_variable, us",
        "combined_variable, metric",
        "schumacher_hall, us",
        "schumacher_hall, metric",
        "log_polynomial, us",
        "log_polynomial, metric",
        "honer, us",
        "form_factor, us",
        "form_factor, metric"
    })
    void thePieceForADesignIsReadAndGivesTheFittedVolumes(String form, String units) throws IOException {
        Run.of("fit-volume", CHERRIES, "--form", form, "--units", units, "--out", out())
                .assertCode(0);
        Design design = new SmallDesign().plus(written("volume.toml")).valid(folder);
        TreeEquation equation =
                TreeEquation.of(Objects.requireNonNull(design.volumes().get("*")));
        assertEquals(Standing.FITTED, equation.spec().standing());
        assertEquals(8.3 * 2.54, equation.spec().range().minDbhCm(), 0.01);
        assertEquals(87 * 0.3048, equation.spec().range().maxHeightM(), 0.01);
        assertTrue(
                equation.spec().source().startsWith("fitted to 31 felled trees in black-cherry.csv, dbh "),
                equation.spec().source());
        List<String> lines = written("fit-volume.csv").lines().toList();
        List<String> header = List.of(lines.get(0).split(","));
        Unit volume = units.equals("us") ? Unit.CUBIC_FOOT : Unit.CUBIC_METRE;
        for (String line : lines.subList(1, lines.size())) {
            String[] row = line.split(",");
            double dbh = units.equals("us")
                    ? Unit.INCH.convert(Double.parseDouble(row[5]), Unit.CENTIMETRE)
                    : Double.parseDouble(row[5]);
            double height = units.equals("us")
                    ? Unit.FOOT.convert(Double.parseDouble(row[6]), Unit.METRE)
                    : Double.parseDouble(row[6]);
            double fitted = Double.parseDouble(row[header.indexOf("fitted_" + volume.symbol())]);
            Tolerance.R_SCRIPT.check(fitted, Unit.CUBIC_METRE.convert(equation.volumeM3(dbh, height), volume), line);
        }
    }

    @Test
    void aCruiseWithAFittedEquationChecksAndSaysFittedInItsReport() throws IOException {
        Run.of("fit-volume", CHERRIES, "--out", out()).assertCode(0);
        Path design = Run.cruise(folder, new SmallDesign().plus(written("volume.toml")), Run.TALLY);
        Run.of("check", design, "--out", folder.resolve("check")).assertCode(0);
        Run.of("estimate", design, "--out", folder.resolve("estimate")).assertCode(0);
        String report = Files.readString(folder.resolve("estimate/report.html"));
        assertTrue(report.contains("fitted to 31 felled trees in black-cherry.csv"));
        assertTrue(report.contains("Fitted coefficients are as good as the felled trees"));
    }

    private static final String TWO_SPECIES = """
            no,sp,dbh_cm,height_m,volume_m3
            1,A,20,14,0.21
            2,A,24,16,0.34
            3,A,28,17,0.50
            4,A,32,20,0.76
            5,A,36,21,1.01
            6,A,40,22,1.33
            7,B & <b>,22,15,0.27
            8,B & <b>,26,15.5,0.40
            9,B & <b>,30,18,0.59
            """;

    @Test
    void speciesAreFittedAloneAndTogether() throws IOException {
        Run run = Run.of("fit-volume", table(TWO_SPECIES), "--species", "sp", "--tree", "no", "--out", out());
        run.assertCode(0);
        String toml = written("volume.toml");
        assertTrue(toml.contains("[volume.\"*\"]") && toml.contains("[volume.\"A\"]"), toml);
        assertTrue(run.out().contains("! only 6 trees, under 20 (common practice, no source)"), run.out());
        assertTrue(run.out().contains("too few trees: 3 trees, 5 needed"), run.out());
        assertTrue(written("fit-volume.html").contains("B &amp; &lt;b&gt;"));
        assertFalse(written("fit-volume.html").contains("B & <b>"));
        SmallDesign design = new SmallDesign().plus("[species.A]\n[species.\"B & <b>\"]\n" + toml);
        assertEquals(List.of(), design.problems(folder));
    }

    @Test
    void badRowsAreRefusedOrDropped() throws IOException {
        Path table = table("dbh_in,height_ft,volume_ft3\n10,60,11\n12,x,16\n14,70,26\n,70,26\n16,72,35\n18,75,46\n");
        Run refused = Run.of("fit-volume", table, "--out", out());
        refused.assertCode(1);
        assertEquals(Set.of("problems.csv"), Run.files(out()).keySet());
        assertTrue(refused.err().contains("felled.csv:3 [height_ft] felled-value: "), refused.err());
        assertTrue(refused.err().contains("felled.csv:5 [dbh_in] felled-value: the tree has no dbh"), refused.err());
        assertTrue(refused.err().contains("--bad-rows drop"), refused.err());
        Run dropped = Run.of("fit-volume", table, "--bad-rows", "drop", "--out", out());
        dropped.assertCode(0);
        assertTrue(dropped.out().contains("Rows: 6 in = 4 used + 2 dropped"), dropped.out());
        assertTrue(written("fit-volume.html").contains("felled.csv:3"));
        assertEquals(3, written("problems.csv").lines().count());
        Run again = Run.of("fit-volume", table, "--out", out());
        assertTrue(again.err().contains("are from an earlier run"), again.err());
    }

    @Test
    void twoTreesGiveNoEquationAndSaySo() throws IOException {
        Run run = Run.of("fit-volume", table("dbh_in,height_ft,volume_ft3\n10,60,11\n12,65,17\n"), "--out", out());
        run.assertCode(0);
        assertTrue(run.out().contains("! no form gives an equation"), run.out());
        assertTrue(run.out().contains("too few trees: 2 trees, 4 needed"), run.out());
        assertTrue(written("volume.toml").contains("# All trees: no form gives an equation."));
        assertTrue(written("fit-volume.html").contains("No equation"));
        JsonNode group = new ObjectMapper()
                .readTree(written("fit-volume.json"))
                .get("groups")
                .get(0);
        assertTrue(group.get("best").isNull());
        assertEquals(List.of(), new SmallDesign().plus(written("volume.toml")).problems(folder));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "10,60,x\n", "10,60,\n,60,11\n"})
    void aTableWithoutATreeThatCanBeUsedIsRefused(String rows) throws IOException {
        Run run = Run.of(
                "fit-volume", table("dbh_in,height_ft,volume_ft3\n" + rows), "--bad-rows", "drop", "--out", out());
        run.assertCode(1);
        assertTrue(run.err().contains("The table has no tree that can be used: nothing was fitted"), run.err());
    }

    @ParameterizedTest
    @CsvSource({
        "'', FELLED",
        "none.csv, there is no file none.csv",
        "datasets, this is a folder",
        "datasets/black-cherry.csv --form cubic, none of combined_variable",
        "datasets/black-cherry.csv --weight some, none of equal",
        "datasets/black-cherry.csv --bad-rows keep, none of refuse",
        "datasets/black-cherry.csv --top 4in, need points of stems",
        "datasets/black-cherry.csv --bark b:in, needs points of stems",
        "datasets/demo-stems.csv --at at_ft --diameter diameter_in --volume v:m3, exclude each other",
        "datasets/demo-stems.csv --at at_ft --diameter diameter_in --top 4, --top 4 is no length",
        "datasets/demo-stems.csv --at at_ft --diameter diameter_in --stump -1ft, --stump -1ft is no length",
        "datasets/demo-stems.csv --at at_ft --diameter diameter_in --tip cylinder, none of cone",
        "datasets/demo-stems.csv --at at_ft --diameter diameter_in --rule doyle, none of smalian",
        "datasets/black-cherry.csv --units furlongs, none of metric"
    })
    void wrongUsageIsSaid(String line, String words) {
        Run run = Run.of(
                Stream.concat(Stream.of("fit-volume"), line.isEmpty() ? Stream.empty() : Stream.of(line.split(" ")))
                        .toArray());
        run.assertCode(2);
        assertTrue(run.err().contains(words), run.err());
    }

    @Test
    void aTableIsNeverOverwritten() throws IOException {
        Path own = Files.writeString(folder.resolve("problems.csv"), "dbh_in,height_ft,volume_ft3\n10,60,x\n");
        Run run = Run.of("fit-volume", own, "--out", folder);
        run.assertCode(2);
        assertEquals("dbh_in,height_ft,volume_ft3\n10,60,x\n", Files.readString(own));
    }

    static Stream<String> examples() {
        return Run.of("fit-volume", "--help")
                .out()
                .lines()
                .filter(line -> line.startsWith("  quadmean "))
                .map(line -> line.strip().substring("quadmean ".length()));
    }

    @Test
    void examplesAreShown() {
        assertEquals(5, examples().count());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleRuns(String line) {
        Run run = Run.of(Stream.concat(Stream.of(line.split(" ")), Stream.of("--out", out().toString()))
                .toArray());
        run.assertCode(0);
    }
}
