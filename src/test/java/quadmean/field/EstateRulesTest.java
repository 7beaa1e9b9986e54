package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tally;
import quadmean.model.Tree;

/** The rows of an estate are held to the rules of a stand's tally: what {@link TallyReader} finds, the estate finds. */
class EstateRulesTest {
    private static final String HEADER = "plot,tree,species,dbh,height,status,count,defect,edge,broken";
    private static final String DESIGN = """
            schema = 1
            [cruise]
            name = "Case"
            units = "metric"
            area = 10
            [plot]
            kind = "nested"
            boundary = "mirage"
            [[plot.ring]]
            area = 0.01
            min_dbh = 4
            [[plot.ring]]
            area = 0.05
            min_dbh = 20
            [[tally]]
            file = "t.csv"
            [tally.columns]
            plot = "plot"
            tree = "tree"
            species = "species"
            dbh = { name = "dbh", unit = "cm" }
            height = { name = "height", unit = "m" }
            status = "status"
            count = "count"
            defect = "defect"
            edge = "edge"
            broken = "broken"
            [species.PSME]
            name = "Douglas-fir"
            recode_from = ["DF"]
            [species.ABGR]
            name = "grand fir"
            """;
    private static final List<String> ODD = List.of(
            "", " ", "0", "-1", "NaN", "1e9", "12,5", "x", "DF", "*", "PSMF", "dead", "2", "101", "3.5", "  30 ", "é",
            "1.5");

    @TempDir
    Path folder;

    @Test
    void casesOfTalliesComeOutTheSame() throws IOException {
        int compared = 0;
        List<TallyCase> cases = Stream.of("tally-cases.txt", "detail-cases.txt", "format-cases.txt")
                .flatMap(TallyCase::load)
                .toList();
        for (TallyCase c : cases) {
            compared += isSame(c.designText(), c.csv(), c.id()) ? 1 : 0;
        }
        assertTrue(compared > cases.size() / 2, compared + " of " + cases.size() + " compared");
    }

    @ParameterizedTest(name = "policies {0}")
    @ValueSource(strings = {"", "drop", "keep"})
    void changedRowsComeOutTheSame(String policy) throws IOException {
        String design = DESIGN
                + (policy.isEmpty()
                        ? ""
                        : EveryPolicy.lines(Policy.valueOf(policy.toUpperCase(java.util.Locale.ROOT))));
        int compared = 0;
        for (int seed = 1; seed <= 150; seed++) {
            compared += isSame(design, mutated(seed), "seed " + seed) ? 1 : 0;
        }
        assertTrue(compared > 100, compared + " compared");
    }

    /** A slip in the name of a stand costs its own row, wherever ranges are cut. */
    @Test
    void rowOfNoStandLeavesItsPlotWhole() throws IOException {
        StringBuilder csv = new StringBuilder("plot,tree,species,dbh,height,status,count,defect,edge,broken,stand\n");
        for (int tree = 1; tree <= 9; tree++) {
            csv.append("1," + tree + ",PSME,30,,,,,,," + (tree % 3 == 0 ? "S9" : "S1") + "\n");
        }
        Files.writeString(folder.resolve("t.csv"), csv.append("2,1,PSME,30,,,,,,,S1\n"));
        for (int bytes : List.of(20, 60, 1 << 20)) {
            EstateReading read = EstateReading.of(folder, DESIGN + EveryPolicy.lines(Policy.DROP), bytes);
            assertEquals(List.of("S1/1=6", "S1/2=1"), read.plots);
            assertEquals(
                    List.of(Rule.STAND_UNKNOWN, Rule.STAND_UNKNOWN, Rule.STAND_UNKNOWN),
                    read.problems.stream().map(Problem::rule).toList());
            assertEquals(List.of(7L, 3L), List.of(read.used, read.dropped));
        }
    }

    @Test
    void damagedTextsKeepTheirAccountAndTheirRanges() throws IOException {
        String clean = estate(rows(new Random(3)));
        for (int seed = 1; seed <= 150; seed++) {
            byte[] damaged = new Mutations(seed).mutate(clean);
            Files.write(folder.resolve("t.csv"), damaged);
            String design = DESIGN + EveryPolicy.lines(seed % 2 == 0 ? Policy.DROP : Policy.KEEP);
            EstateReading whole = EstateReading.of(folder, design, 1 << 20);
            for (int bytes : List.of(60, 200, 1000)) {
                EstateReading parts = EstateReading.of(folder, design, bytes);
                if (!whole.isScattered && isReadable(whole) && isReadable(parts)) {
                    assertEquals(whole.text(), parts.text(), "seed " + seed + ", ranges of " + bytes);
                }
                assertEquals(isReadable(whole), isReadable(parts), "seed " + seed + ", ranges of " + bytes);
            }
            assertAccount(whole, new String(damaged, StandardCharsets.UTF_8), "seed " + seed);
        }
    }

    private static boolean isReadable(EstateReading r) {
        return r.problems.stream().noneMatch(p -> p.rule() == Rule.FILE_UNREADABLE || p.rule() == Rule.COLUMN_MISSING);
    }

    /** Each line that is not empty is a row, whatever quotes it has; each row left out is listed. */
    private static void assertAccount(EstateReading read, String text, String what) {
        if (!isReadable(read)) {
            return;
        }
        String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
        long lines =
                Stream.of(bare.split("\r\n|\r|\n")).filter(l -> !l.isEmpty()).count();
        assertEquals(lines - 1, read.used + read.dropped, what + ": rows in");
        long listed = read.problems.stream()
                .filter(p -> p.row() > 0 && p.policy() != Policy.KEEP)
                .map(Problem::row)
                .distinct()
                .count();
        assertEquals(listed, read.dropped, what + ": rows left out are listed");
    }

    /** Whether the case could be compared; if so, it is the same. */
    private boolean isSame(String design, String csv, String what) throws IOException {
        Design ofEstate = EstateReading.open(folder, design);
        if (ofEstate == null || csv.contains("\"")) {
            return false;
        }
        Files.writeString(folder.resolve("t.csv"), estate(csv));
        EstateReading estate = EstateReading.of(ofEstate, 1 << 20);
        if (estate.isScattered) {
            return false;
        }
        Files.writeString(folder.resolve("t.csv"), csv);
        Design ofStand = DesignReader.read(Files.writeString(folder.resolve("s.toml"), design))
                .design();
        Tally stand = TallyReader.read(Objects.requireNonNull(ofStand));
        assertNotNull(ofStand);
        assertEquals(told(stand.problems(), ""), told(estate.problems, "S1"), what);
        assertEquals(stand.rows().used(), estate.used, what + ": used");
        assertEquals(stand.rows().dropped(), estate.dropped, what + ": dropped");
        assertEquals(stand.rows().kept(), estate.kept, what + ": kept");
        assertEquals(
                stand.plots().stream()
                        .map(p -> "S1/" + p.id() + "=" + p.trees().size())
                        .toList(),
                estate.plots,
                what);
        assertEquals(
                stand.plots().stream()
                        .flatMap(p -> p.trees().stream())
                        .map(EstateRulesTest::reading)
                        .toList(),
                estate.trees.stream().map(EstateRulesTest::reading).toList(),
                what);
        return true;
    }

    private static String reading(Tree t) {
        return t.species() + " " + t.dbhCm() + " " + t.height() + " " + t.detail();
    }

    /** Problems in one order; a row of wrong length without its stand and the blanks around its fields. */
    private static String told(List<Problem> problems, String stand) {
        return problems.stream()
                .filter(p -> p.rule() != Rule.STRATUM_WITHOUT_PLOTS
                        && !(p.rule() == Rule.COLUMN_MISSING && p.column().equals("stand")))
                .map(p -> {
                    String value = p.value();
                    String detail = p.detail();
                    if (p.rule() == Rule.ROW_LENGTH) {
                        value = Stream.of(value.split("[,;\t]", -1))
                                .map(String::strip)
                                .collect(Collectors.joining("|"));
                        int fields = value.split("[|]", -1).length - (stand.isEmpty() ? 0 : 1);
                        value = stand.isEmpty() ? value : value.substring(0, value.length() - stand.length() - 1);
                        detail = detail.replaceAll("has \\d+ fields", "has " + fields + " fields");
                    }
                    if (!stand.isEmpty()) {
                        detail = detail.replaceFirst("(the header has .*), ?stand$", "$1");
                    }
                    return String.format(
                            "%06d %s %s %s [%s] %s %s",
                            p.row(), p.rule(), p.policy(), p.column(), value, detail, p.file());
                })
                .sorted()
                .collect(Collectors.joining("\n"));
    }

    /** The rows with a stand at their end. */
    private static String estate(String csv) {
        List<String> out = new ArrayList<>();
        String header = null;
        for (String line : csv.split("\n", -1)) {
            String separator = header == null ? separator(line) : separator(header);
            out.add(line.isEmpty() ? line : line + separator + (header == null ? "stand" : "S1"));
            header = header == null && !line.isBlank() ? line : header;
        }
        return String.join("\n", out);
    }

    private static String separator(String header) {
        return Stream.of(";", "\t", "|").filter(header::contains).findFirst().orElse(",");
    }

    private static String rows(Random random) {
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        for (int plot = 1; plot <= 8; plot++) {
            int trees = random.nextInt(6);
            for (int tree = 1; tree <= trees; tree++) {
                String height = random.nextInt(3) == 0 ? String.valueOf(5 + random.nextInt(30)) : "";
                text.append("%d,%d,%s,%d,%s,,,,,\n"
                        .formatted(plot, tree, random.nextBoolean() ? "PSME" : "ABGR", 5 + random.nextInt(40), height));
            }
            text.append(trees == 0 ? plot + ",,,,,,,,,\n" : "");
        }
        return text.toString();
    }

    /** Some fields changed, some rows doubled, shortened or emptied. */
    private static String mutated(int seed) {
        Random random = new Random(seed);
        List<String> lines = new ArrayList<>(rows(random).lines().toList());
        int hurts = 1 + random.nextInt(6);
        for (int i = 0; i < hurts; i++) {
            int at = 1 + random.nextInt(lines.size() - 1);
            String[] fields = lines.get(at).split(",", -1);
            switch (random.nextInt(8)) {
                case 0 -> lines.add(at, lines.get(at));
                case 1 -> lines.set(at, lines.get(at) + "," + ODD.get(random.nextInt(ODD.size())));
                case 2 -> lines.set(at, fields[0] + ",,,,,,,,,");
                case 3 -> lines.add(at, lines.get(at).replace(",PSME,", ", PSME ,"));
                case 4 -> lines.add(at, random.nextBoolean() ? "" : " ");
                default -> {
                    fields[random.nextInt(fields.length)] = ODD.get(random.nextInt(ODD.size()));
                    lines.set(at, String.join(",", fields));
                }
            }
        }
        return String.join("\n", lines) + "\n";
    }
}
