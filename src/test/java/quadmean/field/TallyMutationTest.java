package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tally;
import quadmean.model.Tree;

/** The account of rows holds whatever happens to a tally: in = used + dropped, and each dropped row is listed. */
class TallyMutationTest {
    private static final int NORMAL = 500;
    private static final int SLOW = 25_000;
    private static final Set<Rule> WHOLE_FILE = Set.of(Rule.FILE_UNREADABLE, Rule.COLUMN_MISSING);

    @TempDir
    Path folder;

    @ParameterizedTest(name = NORMAL + " damaged texts of {0}")
    @ValueSource(strings = {"demo", "idaho-points"})
    void accountHoldsForDamagedTallies(String name) throws IOException {
        tryMutations(name, ".csv", 1, NORMAL);
    }

    @Tag("slow")
    @ParameterizedTest(name = SLOW + " damaged texts of {0}")
    @ValueSource(strings = {"demo", "idaho-points"})
    void accountHoldsForManyDamagedTallies(String name) throws IOException {
        tryMutations(name, ".csv", 1_000_000, SLOW);
    }

    @Test
    void damageIsDamage() {
        Set<String> results = new HashSet<>();
        for (int seed = 0; seed < 100; seed++) {
            results.add(new String(new Mutations(seed).mutate("plot,dbh\n1,30\n2,40\n"), StandardCharsets.ISO_8859_1));
        }
        assertTrue(results.size() > 80, "different texts: " + results.size());
    }

    @ParameterizedTest(name = "300 damaged workbooks of {0}")
    @ValueSource(strings = {"demo", "idaho-points"})
    void accountHoldsForDamagedWorkbooks(String name) throws IOException {
        tryMutations(name, ".xlsx", 1, 300);
    }

    @Tag("slow")
    @ParameterizedTest(name = "10 000 damaged workbooks of {0}")
    @ValueSource(strings = {"demo", "idaho-points"})
    void accountHoldsForManyDamagedWorkbooks(String name) throws IOException {
        tryMutations(name, ".xlsx", 1_000_000, 10_000);
    }

    private void tryMutations(String name, String kind, long firstSeed, int count) throws IOException {
        boolean text = kind.equals(".csv");
        Design strict = design(name, kind, "");
        Design dropping = design(name, kind, EveryPolicy.lines(Policy.DROP));
        Design keeping = design(name, kind, EveryPolicy.lines(Policy.KEEP));
        String tally =
                Files.readString(Path.of("datasets", name.equals("demo") ? "demo-tally.csv" : "idaho-points-1-72.csv"));
        int refused = 0;
        for (long seed = firstSeed; seed < firstSeed + count; seed++) {
            Mutations mutations = new Mutations(seed);
            byte[] damaged = text ? mutations.mutate(tally) : mutations.mutateWorkbook(tally);
            Files.write(folder.resolve("tally" + kind), damaged);
            Design design = List.of(strict, dropping, keeping).get((int) (seed % 3));
            String what = name + kind + ", seed " + seed;
            Tally read = read(design, what);
            refused += read.isRefused() ? 1 : 0;
            assertAccount(read, what);
            if (text) {
                assertEveryLineIsARow(read, damaged, what);
            }
        }
        assertTrue(refused > count / 10 && refused < count, refused + " of " + count + " refused");
    }

    private static Tally read(Design design, String what) throws IOException {
        try {
            return TallyReader.read(design);
        } catch (RuntimeException e) {
            throw new AssertionError(what, e);
        }
    }

    private static void assertAccount(Tally tally, String what) {
        Set<Long> dropped = new HashSet<>();
        Set<Long> kept = new HashSet<>();
        for (Problem p : tally.problems()) {
            if (p.row() > 0 && !WHOLE_FILE.contains(p.rule())) {
                (p.policy() == Policy.KEEP ? kept : dropped).add(p.row());
            }
        }
        kept.removeAll(dropped);
        assertEquals(dropped.size(), tally.rows().dropped(), what + ": dropped rows are listed");
        assertEquals(kept.size(), tally.rows().kept(), what + ": kept rows are listed");
        assertEquals(tally.rows().in(), tally.rows().used() + tally.rows().dropped(), what);
        List<Long> used = tally.plots().stream()
                .flatMap(p -> p.trees().stream())
                .map(Tree::row)
                .toList();
        assertEquals(used.size(), new HashSet<>(used).size(), what + ": no row counts twice");
        assertTrue(used.stream().noneMatch(dropped::contains), what + ": no dropped row counts");
        assertTrue(used.size() <= tally.rows().used(), what + ": trees come from used rows");
    }

    /** Counted apart from the reader: without quotes, each line that is not blank is a row. */
    private static void assertEveryLineIsARow(Tally tally, byte[] csv, String what) {
        boolean wide = csv.length > 1 && (csv[0] == -1 || csv[0] == -2);
        String text = new String(csv, wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8);
        if (text.contains("\"") || tally.problems().stream().anyMatch(p -> WHOLE_FILE.contains(p.rule()))) {
            return;
        }
        String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
        long lines =
                Stream.of(bare.split("\r\n|\r|\n")).filter(l -> !l.isEmpty()).count();
        assertEquals(lines - 1, tally.rows().in(), what + ": rows in");
    }

    /** A shipped design whose tally lies in the temporary folder, with other policies. */
    private Design design(String name, String kind, String policies) throws IOException {
        String text = Files.readString(Path.of("designs", name + ".toml"))
                .replaceAll("(?s)\\[policy\\].*?\n\n", policies + "\n\n")
                .replaceFirst("file = \"[^\"]+\"", "file = \"tally" + kind + "\"");
        DesignReading reading = DesignReader.read(Files.writeString(folder.resolve(name + ".toml"), text));
        assertEquals(List.of(), reading.problems());
        return Objects.requireNonNull(reading.design());
    }
}
