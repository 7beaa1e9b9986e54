package quadmean.simulate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import quadmean.cruise.Progress;
import quadmean.design.Design;
import quadmean.model.IntervalRule;
import quadmean.simulate.Trials.Stand;

/**
 * Makes the table of coverages in the README: every way of sampling in five known forests, basal area, 95 % limits by Student's t and on a
 * log scale. The seed stands in {@link Trials}' runs; the same numbers come out on every machine.
 */
public final class CoverageTable {
    private CoverageTable() {}

    /**
     * Prints the table.
     *
     * @param args numbers of plots, and cruises for each cell: {@code 30 10000}
     */
    public static void main(String[] args) throws IOException {
        int n = Integer.parseInt(args[0]);
        long cruises = Long.parseLong(args[1]);
        Path folder = Files.createTempDirectory("coverage");
        System.out.println("| " + n + " plots | longleaf | tropical | spruce | clumps | spaced |");
        System.out.println("|---|---|---|---|---|---|");
        for (Methods method : Methods.values()) {
            StringBuilder line = new StringBuilder("| " + method.label() + " |");
            for (Stand stand : Stand.values()) {
                line.append(cell(folder, stand, method, n, cruises));
            }
            System.out.println(line);
        }
    }

    /** Coverage by t and by log, and what the standard error is put at, in percent of the true one. */
    private static String cell(Path folder, Stand stand, Methods method, int n, long cruises) throws IOException {
        Design design = Trials.design(folder, method.design(stand, n));
        AttributeOutcome o = Simulator.of(design, stand.forest(design), 1)
                .run(cruises, 11, Trials.BY_FORMULA, Progress.SILENT)
                .target()
                .orElseThrow();
        return String.format(
                Locale.ROOT,
                " %.1f / %.1f (%.0f) |",
                100 * o.coverage(IntervalRule.STUDENT_T).orElseThrow().share(),
                100 * o.coverage(IntervalRule.LOG_SCALE).orElseThrow().share(),
                100 * Math.sqrt(o.meanVariance()) / o.sd());
    }
}
