package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.DataInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** What an interrupted run over an estate leaves is taken up whole, or not at all. */
class EstateFolderTest {
    @TempDir
    Path results;

    private final List<String> notes = new ArrayList<>();

    private EstateFolder take(String input) {
        notes.clear();
        return EstateFolder.take(results, input, 0, notes::add);
    }

    private static Problem problem(int row) {
        return new Problem("t.csv", row, "dbh", "x", Rule.NUMBER_UNREADABLE, Policy.DROP, "\"x\" is no number");
    }

    private static String text(EstateFolder folder) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        folder.problemList().writeTo(out);
        return out.toString(StandardCharsets.UTF_8);
    }

    /** Leaves a state of 3 000 numbers with one problem before it and one behind. */
    private void interrupted(String input) throws IOException {
        try (EstateFolder folder = take(input)) {
            assertTrue(folder.kept().isEmpty());
            folder.problems(List.of(problem(2)));
            folder.keep(1_234_567, out -> {
                for (int i = 0; i < 3000; i++) {
                    out.writeDouble(Math.sqrt(i));
                }
            });
            folder.problems(List.of(problem(3)));
        }
    }

    @Test
    void aStateIsTakenUpWithItsProblems() throws IOException {
        interrupted("a");
        try (EstateFolder folder = take("a")) {
            DataInput in = folder.kept().orElseThrow();
            for (int i = 0; i < 3000; i++) {
                assertEquals(Math.sqrt(i), in.readDouble());
            }
            folder.problems(List.of(problem(4)));
            assertEquals(List.of("An interrupted run goes on: 1,234,567 rows were added up before."), notes);
            List<String> rows = text(folder).lines().map(l -> l.split(",")[1]).toList();
            assertEquals(List.of("row", "2", "4"), rows);
            folder.done();
        }
        assertFalse(Files.exists(results.resolve(EstateFolder.NAME)));
    }

    @Test
    void aStateOfOtherInputIsNotTakenUp() throws IOException {
        interrupted("a");
        try (EstateFolder folder = take("b")) {
            assertTrue(folder.kept().isEmpty());
            assertTrue(notes.get(0).contains("not the same"), notes.toString());
            assertEquals(1, text(folder).lines().count());
        }
    }

    @Test
    void aStateWithoutItsProblemsIsNotTakenUp() throws IOException {
        interrupted("a");
        Files.delete(results.resolve(EstateFolder.NAME).resolve("problems.csv"));
        try (EstateFolder folder = take("a")) {
            assertTrue(folder.kept().isEmpty());
            assertTrue(notes.get(0).contains("is gone"), notes.toString());
        }
    }

    @Test
    void aDamagedStateIsNotTakenUp() throws IOException {
        interrupted("a");
        Path file = results.resolve(EstateFolder.NAME).resolve("state");
        byte[] whole = Files.readAllBytes(file);
        for (int cut = 0; cut < whole.length; cut += 1000) {
            assertDamaged(file, Arrays.copyOf(whole, cut));
            byte[] turned = whole.clone();
            turned[cut] ^= 4;
            assertDamaged(file, turned);
        }
        assertDamaged(file, Arrays.copyOf(whole, whole.length - 1));
        assertDamaged(file, Arrays.copyOf(whole, whole.length + 1));
    }

    private void assertDamaged(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes);
        try (EstateFolder folder = take("a")) {
            Optional<DataInput> kept = folder.kept();
            assertTrue(kept.isEmpty(), bytes.length + " bytes");
            assertTrue(notes.get(0).contains("damaged"), notes.toString());
        }
    }

    @Test
    void aSecondRunIsTurnedAwayAndTheFirstUnharmed() throws IOException {
        try (EstateFolder first = take("a")) {
            first.kept();
            first.problems(List.of(problem(2)));
            CannotKeepException second = assertThrows(CannotKeepException.class, () -> take("a"));
            assertTrue(String.valueOf(second.trouble().getMessage()).contains("another run is writing there"));
            first.problems(List.of(problem(3)));
            assertEquals(3, text(first).lines().count());
        }
        take("a").done();
    }

    /** A disk that is full: the state before stays, and no half of one beside it. */
    @Test
    void aStateThatCannotBeWrittenLeavesTheOneBefore() throws IOException {
        interrupted("a");
        try (EstateFolder folder = take("a")) {
            folder.kept();
            CannotKeepException full = assertThrows(
                    CannotKeepException.class,
                    () -> folder.keep(9, out -> {
                        out.writeLong(1);
                        throw new IOException("No space left on device");
                    }));
            assertEquals("No space left on device", full.trouble().getMessage());
            assertFalse(Files.exists(results.resolve(EstateFolder.NAME).resolve("state.part")));
        }
        try (EstateFolder folder = take("a")) {
            assertTrue(folder.kept().isPresent());
            assertTrue(notes.get(0).contains("1,234,567"), notes.toString());
        }
    }

    @Test
    void aRunWithoutAStateLeavesNothing() throws IOException {
        try (EstateFolder folder = take("a")) {
            folder.kept();
            folder.problems(List.of(problem(2)));
        }
        assertFalse(Files.exists(results.resolve(EstateFolder.NAME)));
    }
}
