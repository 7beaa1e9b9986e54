package quadmean.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.design.DesignReader;
import quadmean.model.Rule;

/** Every rule that a design can choose a policy for, and every flag of a reading, is shown on the demonstration stand. */
class DemoMistakesTest {
    private static final Path TALLY = Path.of("datasets/demo-mistakes.csv");
    private static final Set<String> FLAGS =
            Set.of("distance-short", "ground-not-level", "scale-coarse", "readings-disagree");

    /** Rules of file formats, of workbooks, of boundaries, and of columns that this tally does not have. */
    private static final Set<Rule> ELSEWHERE = EnumSet.of(
            Rule.FORMAT_DETECTED,
            Rule.FORMAT_CONTRADICTS,
            Rule.CELL_UNUSABLE,
            Rule.FORMULA_VALUE,
            Rule.CELLS_MERGED,
            Rule.LOGS_UNUSABLE,
            Rule.PREDICTION_UNUSABLE,
            Rule.DBH_CLASS,
            Rule.STAND_UNKNOWN,
            Rule.STAND_WITHOUT_PLOTS,
            Rule.BOUNDARY_AREA,
            Rule.BOUNDARY_READ);

    @Test
    void theShippedTallyIsWhatTheGeneratorMakes() throws IOException {
        assertEquals(DemoMistakes.tally(), Files.readString(TALLY));
    }

    @Test
    void eachRowIsFoundToBreakTheRuleThatItsNoteSays() throws IOException {
        CruiseRun run = run();
        CruiseResult result = run.result();
        assertNotNull(result);
        List<String> lines = Files.readAllLines(TALLY);
        TreeSet<String> seen = new TreeSet<>();
        for (int i = 1; i < lines.size(); i++) {
            int row = i + 1;
            String[] fields = lines.get(i).split(",", -1);
            String note = fields[fields.length - 1];
            boolean isRule = Stream.of(Rule.values()).anyMatch(r -> r.code().equals(note));
            if (isRule) {
                assertTrue(
                        run.tally().problems().stream()
                                .anyMatch(p -> p.row() == row && p.rule().code().equals(note)),
                        "line " + row + ": " + note);
            } else if (FLAGS.contains(note)) {
                seen.add(note);
                assertTrue(
                        result.remeasure().stream()
                                .filter(r -> r.tree().tree().row() == row)
                                .anyMatch(r -> r.remarks().stream().anyMatch(m -> m.startsWith(note + ": "))),
                        "line " + row + ": " + note);
            }
        }
        assertEquals(new TreeSet<>(FLAGS), seen);
    }

    @Test
    void everyRuleWithAChoiceIsShown() throws IOException {
        EnumSet<Rule> shown = EnumSet.copyOf(ELSEWHERE);
        run().tally().problems().forEach(p -> shown.add(p.rule()));
        TreeSet<String> missing = new TreeSet<>();
        for (Rule rule : Rule.values()) {
            if (rule.allowed().size() > 1 && !shown.contains(rule)) {
                missing.add(rule.code());
            }
        }
        assertEquals(new TreeSet<>(), missing);
    }

    private static CruiseRun run() throws IOException {
        return Cruise.run(
                DesignReader.read(Path.of("designs/demo-mistakes.toml")).design());
    }
}
