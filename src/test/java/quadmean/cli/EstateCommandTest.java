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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.SmallDesign;
import quadmean.support.SmallEstate;

/** Commands on the design of an estate, as a user runs them. */
class EstateCommandTest {
    @TempDir
    Path folder;

    private Run estimate(SmallEstate estate, Object... more) throws IOException {
        return run("estimate", estate, more);
    }

    private Run run(String command, SmallEstate estate, Object... more) throws IOException {
        Path design = estate.write(folder);
        Object[] words = new Object[more.length + 4];
        words[0] = command;
        words[1] = design;
        words[2] = "--out";
        words[3] = out();
        System.arraycopy(more, 0, words, 4, more.length);
        return Run.of(words);
    }

    private Path out() {
        return folder.resolve("out");
    }

    private static SmallEstate broken() {
        return new SmallEstate().withTally("A,2,1,PSME,35", "A,2,1,PSME,x5");
    }

    @Test
    void estimateTellsHowMuchHowSureAndOfWhatGround() throws IOException {
        Run run = estimate(new SmallEstate());
        run.assertCode(0);
        assertTrue(run.out().startsWith("Small estate: 3 stands with plots, 45 ha (111.2 ac), 7 plots\n"), run.out());
        assertTrue(run.out().contains("Target missed: Sampling error ±"), run.out());
        assertTrue(run.out().contains("1 stand of 7 ha (17.30 ac) has no plots"), run.out());
        assertTrue(run.out().contains("1 stand has a single plot"), run.out());
        assertTrue(run.out().contains("Rows: 10 in = 10 used + 0 dropped"), run.out());
        assertTrue(run.out().contains("Report: " + out().resolve("report.html")), run.out());
        assertTrue(run.out().contains("Next: open "), run.out());
        assertTrue(Run.files(out()).keySet().containsAll(Set.of("report.html", "estimate.json", "stands.csv")));
        assertFalse(Files.exists(out().resolve(".unfinished")));
    }

    @Test
    void secondRunWritesTheSameBytesByAnyNumberOfThreads() throws IOException {
        estimate(new SmallEstate(), "--threads", 1).assertCode(0);
        var first = Run.files(out());
        estimate(new SmallEstate(), "--threads", 5).assertCode(0);
        assertEquals(first, Run.files(out()));
    }

    @Test
    void refusalWritesTheListOfProblemsAndNothingElse() throws IOException {
        Run run = estimate(broken());
        run.assertCode(1);
        assertTrue(run.err().contains("error   tally.csv:4 [dbh_cm] number-unreadable"), run.err());
        assertTrue(run.err().contains("By rule: 1 number-unreadable (refuse)"), run.err());
        assertTrue(run.err().contains("all problems are in " + out().resolve("problems.csv")), run.err());
        assertTrue(run.err().contains("Next: mend what is listed"), run.err());
        assertEquals(Set.of("problems.csv"), Run.files(out()).keySet());
        assertEquals(
                2 + 1, // header, the reading, the stand without plots
                Files.readAllLines(out().resolve("problems.csv")).size());
        assertFalse(Files.exists(out().resolve(".unfinished")));
    }

    /** Refused before a row is read: the list has its header all the same, and none of the problems of an earlier run. */
    @Test
    void badTableOfStandsIsListedToo() throws IOException {
        estimate(broken()).assertCode(1);
        Run run = estimate(new SmallEstate().withStands("B,30", "B,-30"));
        run.assertCode(1);
        var lines = Files.readAllLines(out().resolve("problems.csv"));
        assertEquals(2, lines.size(), lines.toString());
        assertTrue(lines.get(0).startsWith("file,row,column"), lines.toString());
        assertTrue(lines.get(1).startsWith("stands.csv,3,area_ha,-30,stand-table,refuse"), lines.toString());
        assertTrue(run.err().contains("By rule: 1 stand-table (refuse)"), run.err());
        assertFalse(Files.exists(out().resolve(".unfinished")));
    }

    @Test
    void resultsOfAnEarlierRunStayWhenATallyIsRefused() throws IOException {
        estimate(new SmallEstate()).assertCode(0);
        String report = Run.files(out()).get("report.html");
        Run run = estimate(broken());
        run.assertCode(1);
        assertTrue(run.err().contains("earlier run"), run.err());
        assertEquals(report, Run.files(out()).get("report.html"));
    }

    /** Of many rows left out a few are shown, and all are counted and listed. */
    @Test
    void manyDroppedRowsAreCounted() throws IOException {
        StringBuilder rows = new StringBuilder("A,1,1,PSME,40,28\n");
        for (int i = 0; i < 30; i++) {
            rows.append("A,1,").append(i + 10).append(",PSME,?,\n");
        }
        Run run = estimate(new SmallEstate()
                .withTally("A,1,1,PSME,40,28\n", rows.toString())
                .plus("[policy]\nnumber-unreadable = \"drop\"\n"));
        run.assertCode(0);
        assertEquals(5, run.err().lines().filter(l -> l.startsWith("dropped ")).count(), run.err());
        assertTrue(run.err().contains("... and 25 more dropped"), run.err());
        assertTrue(run.err().contains("30 number-unreadable (drop)"), run.err());
        assertTrue(run.out().contains("Rows: 40 in = 10 used + 30 dropped"), run.out());
        assertEquals(
                30,
                Files.readAllLines(out().resolve("problems.csv")).stream()
                        .filter(l -> l.contains(",drop,"))
                        .count());
    }

    @Test
    void jsonIsOneObject() throws IOException {
        Run run = estimate(new SmallEstate(), "--json");
        run.assertCode(0);
        JsonNode root = new ObjectMapper().readTree(run.out());
        assertEquals(1, run.out().lines().count());
        assertEquals(0, root.get("exitCode").asInt());
        assertEquals(3, root.at("/extent/stands").asInt());
        assertEquals(10, root.at("/rows/used").asInt());
        assertEquals("missed", root.at("/target/verdict").asText());
        assertEquals(1, root.at("/problems/keep").asInt());
        assertTrue(root.get("estimates").size() > 3);
        JsonNode refused =
                new ObjectMapper().readTree(estimate(broken(), "--json").out());
        assertEquals(1, refused.get("exitCode").asInt());
        assertEquals(1, refused.at("/problems/refuse").asInt());
    }

    @Test
    void quietPrintsProblemsAlone() throws IOException {
        Run run = estimate(new SmallEstate(), "--quiet");
        run.assertCode(0);
        assertEquals("", run.out() + run.err());
        assertTrue(estimate(broken(), "--quiet").err().contains("number-unreadable"));
    }

    @Test
    void checkReadsEverythingAndWritesProblemsAlone() throws IOException {
        Run run = run("check", new SmallEstate());
        run.assertCode(0);
        assertTrue(run.out().contains("3 stands with plots, 7 plots"), run.out());
        assertTrue(run.out().contains("Next: quadmean estimate "), run.out());
        assertEquals(Set.of("problems.csv"), Run.files(out()).keySet());
        run("check", broken()).assertCode(1);
        assertFalse(Files.exists(out().resolve(".unfinished")));
        Run copy = run("check", new SmallEstate(), "--copy");
        copy.assertCode(2);
        assertTrue(copy.err().contains("problems.csv"), copy.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "curves", "progress", "audit", "growth"})
    void otherCommandsSayWhatToUse(String command) throws IOException {
        Run run = run(command, new SmallEstate());
        run.assertCode(2);
        assertTrue(run.err().contains("describes an estate, which quadmean estimate"), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertFalse(Files.exists(out()));
    }

    @Test
    void simulateAndCombineDeclineToo() throws IOException {
        Path design = new SmallEstate().write(folder);
        Path map = Path.of("datasets/longleaf-map.csv");
        assertDeclined(Run.of("simulate", design, "--forest", map, "--out", out()));
        assertDeclined(Run.of(
                "simulate",
                "designs/simulate-points.toml",
                "--forest",
                map,
                "--beside",
                design,
                "--cruises",
                100,
                "--out",
                out()));
        Path list = Files.writeString(folder.resolve("list.csv"), "design\nestate.toml\n");
        assertDeclined(Run.of("combine", list, "--out", out()));
    }

    private static void assertDeclined(Run run) {
        run.assertCode(2);
        assertTrue(run.err().contains("describes an estate"), run.err());
    }

    @Test
    void explainAndThreadsAreForWhatTheyAreFor() throws IOException {
        Run explain = estimate(new SmallEstate(), "--explain", "total");
        explain.assertCode(2);
        assertTrue(explain.err().contains("--explain goes through the trees of a stand"), explain.err());
        for (int threads : new int[] {0, -1, 65}) {
            Run run = estimate(new SmallEstate(), "--threads", threads);
            run.assertCode(2);
            assertTrue(run.err().contains("is not between 1 and 64"), run.err());
        }
        Path stand = Run.cruise(Files.createDirectory(folder.resolve("stand")), new SmallDesign(), Run.TALLY);
        Run alone = Run.of("estimate", stand, "--threads", 2, "--out", out());
        alone.assertCode(2);
        assertTrue(alone.err().contains("--threads is for an estate"), alone.err());
    }

    @Test
    void missingFilesAreNamed() throws IOException {
        Run stands = estimate(new SmallEstate().with("stands = \"stands.csv\"", "stands = \"other.csv\""));
        stands.assertCode(2);
        assertTrue(stands.err().contains("under [estate] that are not there"), stands.err());
        assertTrue(stands.err().contains("other.csv"), stands.err());
        Run tally = estimate(new SmallEstate().with("file = \"tally.csv\"", "file = \"other\""));
        tally.assertCode(2);
        assertTrue(tally.err().contains("tally files that are not there"), tally.err());
    }

    /** The table of stands has the name of an output; it is looked for before any work, and stays. */
    @Test
    void inputsAreNotWrittenOver() throws IOException {
        SmallEstate estate = new SmallEstate();
        Path design = estate.write(folder);
        Run run = Run.of("estimate", design, "--out", folder);
        run.assertCode(2);
        assertTrue(run.err().contains("stands.csv"), run.err());
        assertEquals(estate.stands(), Files.readString(folder.resolve("stands.csv")));
        assertEquals(
                Set.of("estate.toml", "stands.csv", "tally.csv"),
                Run.files(folder).keySet());
        assertFalse(Files.exists(folder.resolve(".unfinished")));
    }

    @Test
    void tallyMayBeAFolder() throws IOException {
        SmallEstate estate = new SmallEstate().with("file = \"tally.csv\"", "file = \"days\"");
        Path days = Files.createDirectory(folder.resolve("days"));
        int second = estate.tally().indexOf("B,1,1");
        String header = estate.tally().lines().findFirst().orElseThrow();
        Files.writeString(days.resolve("1.csv"), estate.tally().substring(0, second));
        Files.writeString(days.resolve("2.csv"), header + "\n" + estate.tally().substring(second));
        estimate(estate).assertCode(0);
        String fromFolder = Run.files(out()).get("stands.csv");
        estimate(new SmallEstate()).assertCode(0);
        assertEquals(Run.files(out()).get("stands.csv"), fromFolder);
    }

    @Test
    void curvesOfARunFillTheHeightsOfTheNext() throws IOException {
        Path out = folder.resolve("first");
        Run.of("estimate", "designs/estate.toml", "--out", out).assertCode(0);
        String design = Files.readString(Path.of("designs/estate.toml"))
                .replace("../datasets/", Path.of("datasets").toAbsolutePath() + "/")
                .replace("[estate]\n", "[estate]\ncurves = \"first/curves.csv\"\n");
        Path again = Files.writeString(folder.resolve("again.toml"), design);
        Run.of("estimate", again, "--out", out()).assertCode(0);
        assertEquals(Run.files(out).get("stands.csv"), Run.files(out()).get("stands.csv"));
        assertTrue(Run.files(out()).get("report.html").contains("those of the file curves.csv"));
    }
}
