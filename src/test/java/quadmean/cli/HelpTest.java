package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Help fits a terminal, has examples, and the examples of help and README run as they stand. */
class HelpTest {
    private static final int TERMINAL = 80;
    private static final Set<String> ON_DESIGNS =
            Set.of("plan", "check", "curves", "estimate", "simulate", "fit-volume");

    /** A copy of what the examples name, so that nothing is written among the sources. */
    @TempDir
    private static Path work;

    @BeforeAll
    static void copy() throws IOException {
        for (String folder : List.of("designs", "datasets")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.toList()) {
                    Files.copy(file, work.resolve(file.toString()), StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
    }

    /** All commands as the program's own help lists them, and the program itself. */
    static Stream<String> commands() {
        List<String> commands = new ArrayList<>(List.of(""));
        Run.of("--help")
                .out()
                .lines()
                .dropWhile(l -> !l.startsWith("Commands:"))
                .skip(1)
                .takeWhile(l -> l.startsWith("  "))
                .filter(l -> l.matches("  [a-z].*"))
                .forEach(l -> commands.add(l.strip().split(" ")[0]));
        return commands.stream();
    }

    private static List<String> help(String command) {
        Run run = command.isEmpty() ? Run.of("--help") : Run.of(command, "--help");
        run.assertCode(0);
        return run.out().lines().toList();
    }

    static Stream<String> examples() throws IOException {
        Stream<String> ofHelp = commands()
                .flatMap(c ->
                        String.join("\n", help(c)).replaceAll("\\\\\n +", "").lines())
                .filter(l -> l.startsWith("  quadmean "))
                .map(l -> l.strip().substring("quadmean ".length()));
        Stream<String> ofReadme = Files.readAllLines(Path.of("README.md")).stream()
                .filter(l -> l.startsWith("java -jar target/quadmean.jar "))
                .map(l -> l.substring("java -jar target/quadmean.jar ".length()));
        Stream<String> ofMaven = Files.readAllLines(Path.of("README.md")).stream()
                .filter(l -> l.contains("-Dexec.args=\""))
                .map(l -> l.replaceAll(".*-Dexec.args=\"([^\"]*)\".*", "$1"));
        return Stream.of(ofHelp, ofReadme, ofMaven)
                .flatMap(s -> s)
                .map(l -> l.replaceAll(" +#.*", ""))
                .distinct();
    }

    @Test
    void commandsAreFound() {
        assertTrue(commands().count() >= 14, commands().toList().toString());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpFitsATerminalAndHasExamples(String command) {
        List<String> lines = help(command);
        for (String line : lines) {
            assertTrue(line.length() <= TERMINAL, line.length() + " columns: " + line);
        }
        assertTrue(
                lines.stream().anyMatch(l -> l.startsWith("  quadmean ") || l.startsWith("  source ")), "an example");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleRuns(String line) {
        List<String> words = new ArrayList<>();
        for (String word : line.split(" +")) {
            boolean isOfWork = word.startsWith("designs/") || word.startsWith("datasets/");
            boolean isOut = !words.isEmpty() && words.get(words.size() - 1).equals("--out");
            boolean isNewFolder = words.equals(List.of("start")) || words.equals(List.of("demo"));
            Path here = isNewFolder ? work.resolve("new-" + line.hashCode()) : work;
            words.add(isOfWork || isOut || isNewFolder ? here.resolve(word).toString() : word);
        }
        if (words.equals(List.of("demo"))) {
            words.add(work.resolve("quadmean-demo").toString());
        }
        if (ON_DESIGNS.contains(words.get(0)) && !words.contains("--out") && !words.contains("--help")) {
            words.addAll(List.of("--out", work.resolve("out").toString()));
        }
        if (words.contains("simulate") && !words.contains("--cruises") && !words.contains("--help")) {
            words.addAll(List.of("--cruises", "200"));
        }
        Run run = Run.of(words.toArray());
        run.assertCode(0);
        assertFalse(run.out().isBlank(), line);
        assertFalse(run.err().contains("quadmean:"), run.err());
        boolean isWork = ON_DESIGNS.contains(words.get(0)) && !line.matches(".*--(explain|json|help).*");
        assertTrue(!isWork || run.out().contains("\nNext: "), () -> "names the next step: " + run.out());
    }

    @Test
    void colourIsForThoseWhoWantIt() {
        assertTrue(Run.of("check", "--help", "--color=always").out().contains("\u001b["));
        assertTrue(Run.of("--color", "ALWAYS", "--help").out().contains("\u001b["));
        assertFalse(Run.of("check", "--help", "--color", "never").out().contains("\u001b"));
        assertFalse(Run.of("check", "--help").out().contains("\u001b"), "a test is no terminal");
        Run wrong = Run.of("check", "--color=green", "designs/demo.toml");
        wrong.assertCode(2);
        assertTrue(wrong.err().contains("green"), wrong.err());
        assertEquals("", wrong.out());
    }
}
