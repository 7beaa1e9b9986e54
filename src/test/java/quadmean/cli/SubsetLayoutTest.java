package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plots laid out in subsets, each a sample of the whole tract, as {@code progress} wants them. */
class SubsetLayoutTest {
    @TempDir
    Path folder;

    private Path design(String layout) throws IOException {
        String text = Files.readString(Path.of("designs/demo.toml"))
                .replace(
                        "../datasets",
                        Path.of("datasets").toAbsolutePath().toString().replace('\\', '/'));
        return Files.writeString(folder.resolve("demo.toml"), text + "\n[layout]\n" + layout);
    }

    private List<String[]> plots() throws IOException {
        return Files.readAllLines(folder.resolve("out/plots.csv")).stream()
                .map(l -> l.split(",", -1))
                .toList();
    }

    /** Each subset has plots in every stratum, and is walked before the next: its numbers follow those of the subset before. */
    @ParameterizedTest
    @ValueSource(strings = {"square", "triangular", "random", "balanced"})
    void eachSubsetCoversTheTractAndIsWalkedToItsEnd(String pattern) throws IOException {
        Run run = Run.of(
                "plan",
                design("pattern = \"" + pattern + "\"\nplots = 60\nsubsets = 3\n"),
                "--out",
                folder.resolve("out"));
        run.assertCode(0);
        List<String[]> rows = plots();
        int at = List.of(rows.get(0)).indexOf("subset");
        List<String> order = new ArrayList<>();
        Set<String> strata = new HashSet<>();
        for (String[] row : rows.subList(1, rows.size())) {
            order.add(row[at]);
            strata.add(row[at] + row[1]);
        }
        assertEquals(order.stream().sorted().toList(), order, "walked subset by subset");
        assertEquals(9, strata.size(), "three strata in each of three subsets");
        assertTrue(rows.size() > 45 && rows.size() < 80, rows.size() + " plots");
        assertTrue(run.out().contains("make 3 subsets")
                || Files.readString(folder.resolve("out/sheets.html")).contains("make 3 subsets"));
    }

    /** Subsets have random starts of their own: no two of them lie in the same places, nor is one the single layout. */
    @Test
    void subsetsHaveStartsOfTheirOwn() throws IOException {
        Run.of("plan", design("plots = 30\nsubsets = 2\n"), "--out", folder.resolve("out"))
                .assertCode(0);
        Set<String> two = places();
        assertEquals(plots().size() - 1, two.size(), "no place twice");
        Run.of("plan", design("plots = 30\nsubsets = 2\n"), "--out", folder.resolve("out"))
                .assertCode(0);
        assertEquals(two, places(), "repeated from the seed");
        Run.of("plan", design("plots = 30\n"), "--out", folder.resolve("out")).assertCode(0);
        assertNotEquals(two, places());
        assertFalse(List.of(plots().get(0)).contains("subset"), "a single layout has no subsets");
    }

    private Set<String> places() throws IOException {
        return plots().stream().skip(1).map(r -> r[4] + " " + r[5]).collect(Collectors.toSet());
    }

    /** The list of plots goes on to progress, which knows the subsets from it. */
    @Test
    void progressKnowsTheSubsetsFromTheList() throws IOException {
        Run.of("plan", design("plots = 30\nsubsets = 2\n"), "--out", folder.resolve("out"))
                .assertCode(0);
        StringBuilder tally =
                new StringBuilder("plot,stratum,tree,species,dbh_in,top_pct,base_pct,dist_ft,grade,defect_pct\n");
        List<String[]> rows = plots();
        int at = List.of(rows.get(0)).indexOf("subset");
        for (String[] row : rows.subList(1, rows.size())) {
            if (row[at].equals("1")) {
                int dbh = 12 + Integer.parseInt(row[0]) % 5;
                tally.append(row[0] + "," + row[1] + ",1,PSME," + dbh + "," + (60 + dbh) + ",-6,100,,\n");
            }
        }
        Files.writeString(folder.resolve("tally.csv"), tally);
        String text = Files.readString(folder.resolve("demo.toml"))
                .replaceAll("plots = \\[.*\\]", "")
                .replaceAll("file = \"[^\"]*demo-tally.csv\"", "file = \"tally.csv\"")
                .replaceAll("(?s)\\[\\[crew\\]\\].*?(?=# Codes)", "")
                .replace("method = \"stratified\"", "method = \"stratified\"\nplot_list = \"out/plots.csv\"");
        Path design = Files.writeString(folder.resolve("progress.toml"), text);
        Run run = Run.of("progress", design, "--out", folder.resolve("progress"));
        run.assertCode(0);
        assertTrue(run.out().contains("Whole subsets walked."), run.out());
        assertTrue(run.out().contains("  subset 2: 0 of "), run.out());
    }

    @Test
    void subsetsShareOutSinglePlots() throws IOException {
        Run run = Run.of("plan", design("subsets = 2\nspacing = 400\n"), "--out", folder.resolve("out"));
        run.assertCode(1);
        assertTrue(run.err().contains("layout.subsets share out a number of single plots"), run.err());
    }
}
