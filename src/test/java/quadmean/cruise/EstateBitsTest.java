package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.height.FillingCurves;
import quadmean.model.Progress;
import quadmean.support.FormulaEstate;

/** No bit of an estate's results depends on threads, ranges, files, packing, order of rows, or an interruption. */
class EstateBitsTest {
    private static final FormulaEstate ESTATE = new FormulaEstate(4, 3);

    @TempDir
    Path folder;

    private String expected = "";

    @BeforeEach
    void asOneFileByOneThread() throws IOException {
        write("t.csv", ESTATE.lines());
        expected = text(run("t.csv", 1, 1 << 22, new Keeping(0)));
        assertTrue(expected.length() > 10_000, "much to compare");
    }

    private void write(String name, List<String> lines) throws IOException {
        Files.writeString(folder.resolve(name), FormulaEstate.HEADER + String.join("\n", lines) + "\n");
    }

    private EstateResult run(String tally, int threads, int bytes, Keeping keeping) throws IOException {
        Design design = FormulaEstate.estate(folder, tally, "region", "heights_per_curve = 20\n");
        return Estate.run(design, threads, bytes, keeping, Progress.SILENT)
                .orElseThrow(() -> new AssertionError(keeping.problems));
    }

    /** Every number, to its last bit. */
    private static String text(EstateResult result) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < result.stands().size(); i++) {
            List<String> species = new ArrayList<>(result.stands().speciesOf(i));
            species.add(EstimateRow.ALL);
            int stand = i;
            species.forEach(s ->
                    result.stands().rows(stand, s).forEach(r -> text.append(r).append('\n')));
        }
        result.estimate().rows().forEach(r -> text.append(r).append('\n'));
        result.curves()
                .forEach((region, c) -> text.append(region).append(curves(c)).append('\n'));
        return text.append(result.rows())
                .append(result.notes())
                .append(result.problems())
                .toString();
    }

    private static String curves(FillingCurves curves) {
        StringBuilder text = new StringBuilder();
        curves.curves()
                .forEach(c ->
                        text.append(c.species() + c.form() + java.util.Arrays.toString(c.parameters()) + c.scatterM()));
        return text.toString();
    }

    @Test
    void threadsAndRanges() throws IOException {
        for (int threads : new int[] {1, 2, 3, 7}) {
            for (int bytes : new int[] {200, 700, 5000, 1 << 22}) {
                assertEquals(
                        expected, text(run("t.csv", threads, bytes, new Keeping(0))), threads + " threads, " + bytes);
            }
        }
    }

    @Test
    void filesAndPacking() throws IOException {
        Path parts = Files.createDirectory(folder.resolve("parts"));
        List<String> lines = ESTATE.lines();
        int from = 0;
        for (int stand : new int[] {3, 8, FormulaEstate.STANDS}) {
            String last = FormulaEstate.code(stand);
            int to = IntStream.range(0, lines.size())
                            .filter(i -> lines.get(i).startsWith(last + ","))
                            .max()
                            .orElseThrow()
                    + 1;
            String csv = FormulaEstate.HEADER + String.join("\n", lines.subList(from, to)) + "\n";
            try (OutputStream out = stand == 8
                    ? new GZIPOutputStream(Files.newOutputStream(parts.resolve("p" + last + ".CSV.GZ")))
                    : Files.newOutputStream(parts.resolve("p" + last + ".csv"))) {
                out.write(csv.getBytes(StandardCharsets.UTF_8));
            }
            from = to;
        }
        assertEquals(expected, text(run("parts", 2, 300, new Keeping(0))));
    }

    @Test
    void orderOfStandsPlotsAndTrees() throws IOException {
        for (int seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            List<Integer> stands = new ArrayList<>(
                    IntStream.rangeClosed(1, FormulaEstate.STANDS).boxed().toList());
            Collections.shuffle(stands, random);
            List<String> lines = new ArrayList<>();
            for (int stand : stands) {
                List<Integer> plots = new ArrayList<>(IntStream.rangeClosed(1, FormulaEstate.plots(stand))
                        .boxed()
                        .toList());
                Collections.shuffle(plots, random);
                for (int plot : plots) {
                    List<String> trees = new ArrayList<>(ESTATE.lines(stand, plot));
                    Collections.shuffle(trees, random);
                    trees.forEach(t -> lines.add(FormulaEstate.code(stand) + "," + t));
                }
            }
            write("t.csv", lines);
            assertEquals(expected, text(run("t.csv", 2, 400, new Keeping(0))), "seed " + seed);
        }
    }

    @Test
    void otherDataAreSeen() throws IOException {
        List<String> lines = new ArrayList<>(ESTATE.lines());
        lines.remove(lines.size() / 2);
        write("t.csv", lines);
        assertNotEquals(expected, text(run("t.csv", 2, 400, new Keeping(0))));
    }

    @Test
    void twiceTheDiameterIsFourTimesTheBasalArea() throws IOException {
        EstateResult once = run("t.csv", 2, 400, new Keeping(0));
        write("t.csv", ESTATE.lines().stream().map(EstateBitsTest::doubled).toList());
        EstateResult twice = run("t.csv", 2, 400, new Keeping(0));
        for (int i = 0; i < once.stands().size(); i++) {
            EstimateRow before = once.stands().rows(i, EstimateRow.ALL).get(2);
            EstimateRow after = twice.stands().rows(i, EstimateRow.ALL).get(2);
            assertEquals(4 * before.mean(), after.mean(), 1e-12 * after.mean()); // rounding of doubles
            assertEquals(4 * before.se(), after.se(), 1e-12 * after.se());
        }
    }

    private static String doubled(String line) {
        String[] f = line.split(",", -1);
        return f[4].isEmpty()
                ? line
                : String.join(",", f[0], f[1], f[2], f[3], String.valueOf(2 * Double.parseDouble(f[4])), f[5]);
    }

    /** Interrupted after each number of parts that there is. */
    @Test
    void interruptedRunsGoOn() throws IOException {
        int goneOn = 0;
        for (int after = 1; after <= 12; after++) {
            Keeping keeping = new Keeping(after);
            keeping.isCutOff = true;
            assertThrows(Keeping.CutOff.class, () -> run("t.csv", 2, 400, keeping));
            keeping.isCutOff = false;
            goneOn += keeping.state == null ? 0 : 1;
            assertEquals(expected, text(run("t.csv", 3, 900, keeping)), "after " + after + " parts");
        }
        assertEquals(12, goneOn);
    }
}
