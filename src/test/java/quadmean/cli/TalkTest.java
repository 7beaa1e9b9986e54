package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.SmallDesign;

/** In sentences, quietly, or as one JSON object. */
class TalkTest {
    @TempDir
    Path folder;

    private Run run(String command, String... how) {
        Object[] words = new Object[4 + how.length];
        words[0] = command;
        words[1] = command.equals("fit-volume") ? "datasets/black-cherry.csv" : "designs/demo.toml";
        words[2] = "--out";
        words[3] = folder.resolve("out");
        System.arraycopy(how, 0, words, 4, how.length);
        return Run.of(words);
    }

    private static JsonNode json(Run run) throws IOException {
        assertEquals(1, run.out().lines().count(), run.out());
        return new ObjectMapper().readTree(run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "check", "curves", "estimate", "fit-volume"})
    void quietPrintsNothingWhereAllIsWell(String command) {
        Run run = run(command, "--quiet");
        run.assertCode(0);
        assertEquals("", run.out() + run.err());
        assertTrue(Files.isDirectory(folder.resolve("out")), "files are written all the same");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "check", "curves", "estimate", "fit-volume"})
    void jsonNamesTheFilesAndTheNextStep(String command) throws IOException {
        Run run = run(command, "--json");
        run.assertCode(0);
        JsonNode json = json(run);
        assertEquals(command, json.get("command").asText());
        assertEquals(0, json.get("exitCode").asInt());
        assertTrue(json.get("files").size() > 0);
        for (JsonNode file : json.get("files")) {
            assertTrue(Files.isRegularFile(Path.of(file.asText())), file.asText());
        }
        assertTrue(json.get("next").isTextual());
    }

    /** The figures are those of estimate.json. */
    @Test
    void headlineIsThatOfTheFile() throws IOException {
        JsonNode json = json(run("estimate", "--json"));
        JsonNode file =
                new ObjectMapper().readTree(folder.resolve("out/estimate.json").toFile());
        assertTrue(json.get("estimates").size() >= 6);
        for (JsonNode row : json.get("estimates")) {
            boolean found = false;
            for (JsonNode other : file.get("estimates")) {
                found |= other.equals(row);
            }
            assertTrue(found, row.toString());
        }
        assertEquals(file.at("/target/attributes/0/verdict"), json.at("/target/verdict"));
        assertEquals(file.at("/target/attributes/0/more"), json.at("/target/more"));
        assertEquals(file.get("rows"), json.get("rows"));
        assertEquals(
                file.get("problems").size(),
                json.at("/problems/keep").asInt() + json.at("/problems/drop").asInt());
    }

    @Test
    void refusedRunsSayWhyInEitherForm() throws IOException {
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY + "4,1,PSME,x,\n");
        Run quiet = Run.of("estimate", design, "--quiet", "--out", folder.resolve("out"));
        quiet.assertCode(1);
        assertEquals("", quiet.out());
        assertTrue(quiet.err().contains("number-unreadable") && quiet.err().contains("Next: mend"), quiet.err());
        Run run = Run.of("estimate", design, "--json", "--out", folder.resolve("out"));
        run.assertCode(1);
        JsonNode json = json(run);
        assertEquals(1, json.get("exitCode").asInt());
        assertEquals(1, json.at("/problems/refuse").asInt());
        assertTrue(json.at("/files/0").asText().endsWith("problems.csv"));
    }

    @Test
    void whatCannotBeRunIsSaidInJsonToo() throws IOException {
        Run run = Run.of("estimate", "nowhere.toml", "--json");
        run.assertCode(2);
        assertEquals(2, json(run).get("exitCode").asInt());
        assertTrue(json(run).get("error").asText().contains("nowhere.toml"));
        assertTrue(run.err().contains("nowhere.toml"), run.err());
    }

    @Test
    void arithmeticIsForPeople() {
        Run run = run("estimate", "--explain", "total", "--json");
        run.assertCode(2);
        assertTrue(run.err().contains("sentences"), run.err());
    }

    @Test
    void startAndDemoTalkSoToo() throws IOException {
        JsonNode start = json(Run.of("start", folder.resolve("new"), "--json"));
        assertEquals(2, start.get("files").size());
        Run demo = Run.of("demo", folder.resolve("demo"), "--json");
        demo.assertCode(0);
        assertEquals("demo", json(demo).get("command").asText());
        assertTrue(Files.isRegularFile(folder.resolve("demo/out/report.html")));
        Run again = Run.of("demo", folder.resolve("demo"), "--quiet");
        again.assertCode(2);
        assertTrue(again.err().contains("already"), again.err());
    }
}
