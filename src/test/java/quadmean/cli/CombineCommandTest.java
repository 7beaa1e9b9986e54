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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** {@code quadmean combine}. */
class CombineCommandTest {
    private static final SmallDesign DESIGN = new SmallDesign().plus("""
            [errors]
            equation_sd = 5

            [volume."*"]
            form = "form_factor"
            f = 0.4
            dbh_unit = "cm"
            height_unit = "m"
            volume_unit = "m3"
            source = "made up"
            standing = "invented"
            """);

    private static final String TALLY = """
            plot,tree,species,dbh,height
            1,1,PSME,30,20
            1,2,PSME,25,18
            2,1,PSME,40,24
            3,1,PSME,28,19
            """;

    @TempDir
    Path folder;

    /** Two stands: one of 10 ha, the other of 30 ha with thicker trees. */
    private Path list(String rows) throws IOException {
        Files.createDirectories(folder.resolve("a"));
        Files.createDirectories(folder.resolve("b"));
        Run.cruise(folder.resolve("a"), DESIGN, TALLY);
        Run.cruise(folder.resolve("b"), DESIGN.with("area = 10\n", "area = 30\n"), TALLY.replace("PSME,30", "PSME,45"));
        return Files.writeString(folder.resolve("stands.csv"), rows);
    }

    private Run run(String rows, Object... options) throws IOException {
        Object[] words = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of("combine", list(rows), "--out", folder.resolve("out")),
                        java.util.stream.Stream.of(options))
                .toArray();
        return Run.of(words);
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper().readTree(folder.resolve("out/combine.json").toFile());
    }

    private double stand(int i, String key) throws IOException {
        return json().get("stands").get(i).get(key).asDouble();
    }

    private double all(String key) throws IOException {
        return json().get("all").get(key).asDouble();
    }

    private double equations() throws IOException {
        return json().get("all").get("sharedSe").get("equations").asDouble();
    }

    /** By hand: totals and variances of sampling add; the 5 % of one equation are 5 % of the sum. */
    @Test
    void errorsOfASharedEquationAddUp() throws IOException {
        Run run = run("stand,design\nA,a/design.toml\n,b/design.toml\n");
        run.assertCode(0);
        assertEquals(
                Set.of("combine.html", "combine.json", "combine.csv", "problems.csv"),
                Run.files(folder.resolve("out")).keySet());
        double total = stand(0, "total") + stand(1, "total");
        Tolerance.ROUNDING.check(total, all("total"), "total");
        Tolerance.ROUNDING.check(
                Math.hypot(stand(0, "samplingSe"), stand(1, "samplingSe")), all("samplingSe"), "sampling");
        Tolerance.ROUNDING.check(0.05 * total, equations(), "shared equation");
        assertTrue(all("totalSe") > json().get("seIfSharedErrorsAveragedOut").asDouble());
        assertEquals(
                "Small", json().get("stands").get(1).get("name").asText(), "the design's name where the list has none");
        assertTrue(run.out().contains("All stands: 40.0 ha, 6 plots"), run.out());
    }

    @Test
    void equationsOfTheirOwnAverageOut() throws IOException {
        run("design,equations\na/design.toml,one\nb/design.toml,other\n").assertCode(0);
        Tolerance.ROUNDING.check(
                Math.hypot(0.05 * stand(0, "total"), 0.05 * stand(1, "total")), equations(), "two equations");
        Tolerance.ROUNDING.check(
                json().get("seIfSharedErrorsAveragedOut").asDouble(), all("totalSe"), "nothing is shared");
    }

    @Test
    void groupsAddUpByThemselves() throws IOException {
        run("design,group\na/design.toml,east\nb/design.toml,west\n").assertCode(0);
        assertEquals("east", json().get("groups").get(0).get("name").asText());
        Tolerance.ROUNDING.check(
                stand(1, "total"), json().get("groups").get(1).get("total").asDouble(), "west");
    }

    @Test
    void strataOfTheSameCodeAddUpAcrossStands() throws IOException {
        Run.of("combine", "designs/stands.csv", "--out", folder.resolve("out")).assertCode(0);
        JsonNode north = json().get("strata").get(2);
        assertEquals("N", north.get("name").asText());
        assertEquals(18 + 7, north.get("plots").asInt());
        assertFalse(north.get("totalSe").isNull());
    }

    @Test
    void everythingWrongIsListedAtOnce() throws IOException {
        Run run = run("design\na/design.toml\nnone.toml\na/design.toml\n\"\"\n");
        run.assertCode(1);
        assertTrue(run.err().contains("stands.csv:3 [design] stand-list: there is no design none.toml"), run.err());
        assertTrue(run.err().contains("a/design.toml is listed before"), run.err());
        assertTrue(Files.exists(folder.resolve("out/problems.csv")));
        Path list = list("design\na/design.toml\n");
        Files.writeString(folder.resolve("a/tally.csv"), TALLY.replace("PSME,30", "PSME,x30"));
        Run tally = Run.of("combine", list, "--out", folder.resolve("out"));
        tally.assertCode(1);
        assertTrue(tally.err().contains("a/design.toml: tally.csv:2 [dbh] number-unreadable"), tally.err());
        Run column = run("stands\nx\n");
        column.assertCode(1);
        assertTrue(column.err().contains("column-missing"), column.err());
    }

    @Test
    void standsOfOneNameOrOneDesignAreRefusedAndOtherColumnsNamed() throws IOException {
        Run run = run("stand,design\nA,a/design.toml\nA,b/design.toml\nC,b/../a/design.toml\n");
        run.assertCode(1);
        assertTrue(run.err().contains("stands.csv:3 [stand] stand-list: another stand is called A"), run.err());
        assertTrue(run.err().contains("b/../a/design.toml is listed before by another path"), run.err());
        Run column = run("design,curve\na/design.toml,one\nb/design.toml,one\n");
        column.assertCode(0);
        assertTrue(column.err().contains("[curve] stand-list: the column \"curve\" is not used"), column.err());
        assertTrue(Files.readString(folder.resolve("out/problems.csv")).contains("is not used"));
        assertTrue(Files.readString(folder.resolve("out/combine.html")).contains("4 rows read = 4 used + 0 dropped."));
        assertTrue(column.out().contains("Rows: 8 in = 8 used + 0 dropped"), column.out());
    }

    @Test
    void aStandWithoutATotalSaysWhy() throws IOException {
        Path list = list("design\na/design.toml\nb/design.toml\n");
        String text = DESIGN.text();
        Run.cruise(folder.resolve("b"), new SmallDesign(text.substring(0, text.indexOf("[volume."))), TALLY);
        Run run = Run.of("combine", list, "--attribute", "volume", "--out", folder.resolve("out"));
        run.assertCode(0);
        assertTrue(run.out().contains("Small has no volume: "), run.out());
        assertFalse(run.out().contains("Standard error –"), run.out());
        assertFalse(run.out().contains("NaN"), run.out());
    }

    @Test
    void whatStandsDoNotEstimateIsWrongUsage() throws IOException {
        String rows = "design\na/design.toml\n";
        Run boards = run(rows, "--attribute", "board_feet");
        boards.assertCode(2);
        assertTrue(boards.err().contains("no total of gross board feet in: Small"), boards.err());
        run(rows, "--attribute", "boards").assertCode(2);
        run(rows, "--confidence", "95").assertCode(2);
        Run.of("combine", folder.resolve("none.csv")).assertCode(2);
    }

    @Test
    void theListIsNeverOverwritten() throws IOException {
        Path list = list("design\na/design.toml\n");
        Files.createDirectories(folder.resolve("out"));
        Path moved = Files.writeString(
                folder.resolve("out/combine.csv"), Files.readString(list).replace("a/", "../a/"));
        Run.of("combine", moved, "--out", folder.resolve("out")).assertCode(2);
        assertEquals("design\n../a/design.toml\n", Files.readString(moved));
    }
}
