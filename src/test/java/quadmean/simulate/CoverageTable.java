package quadmean.simulate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import quadmean.design.Design;
import quadmean.model.IntervalRule;
import quadmean.model.Progress;
import quadmean.simulate.Trials.Stand;
import quadmean.units.Attribute;

/**
 * Makes the table of coverages in the README: every way of sampling in five known forests, basal area, 95 % limits by Student's t and on a
 * log scale. The seed stands in {@link Trials}' runs; the same numbers come out on every machine.
 */
public final class CoverageTable {
    private CoverageTable() {}

    /** Methods whose basal area is that of simple random points, so that stems tell more. */
    private static final Set<Methods> BY_STEMS = EnumSet.of(Methods.COUNT_POINTS, Methods.TWO_FACTORS);

    /**
     * Prints the table.
     *
     * @param args number of plots, cruises for each cell, and {@code bca} for bootstrap limits as a third number
     */
    public static void main(String[] args) throws IOException {
        int n = Integer.parseInt(args[0]);
        long cruises = Long.parseLong(args[1]);
        Set<IntervalRule> rules = EnumSet.copyOf(Trials.BY_FORMULA);
        if (args.length > 2) {
            rules.add(IntervalRule.BCA);
        }
        System.out.println("| " + n + " plots | longleaf | tropical | spruce | clumps | spaced |");
        System.out.println("|---|---|---|---|---|---|");
        for (Methods method : Methods.values()) {
            if (method == Methods.EVEN_GRID) {
                continue; // as good as the square grid, for tracts that a grid divides
            }
            Map<Attribute, StringBuilder> lines = new LinkedHashMap<>();
            if (!BY_STEMS.contains(method)) {
                lines.put(Attribute.BASAL_AREA, new StringBuilder("| " + method.label() + " |"));
            }
            if (BY_STEMS.contains(method) || method == Methods.SIMPLE_RANDOM || method == Methods.FIXED_PLOTS) {
                lines.put(Attribute.TREES, new StringBuilder("| " + method.label() + ": stems |"));
            }
            for (Stand stand : Stand.values()) {
                SimulationResult result = run(stand, method, n, cruises, rules);
                lines.forEach((a, line) -> line.append(cell(result.outcome(a).orElseThrow())));
            }
            lines.values().forEach(System.out::println);
        }
    }

    private static SimulationResult run(Stand stand, Methods method, int n, long cruises, Set<IntervalRule> rules)
            throws IOException {
        Path folder = Files.createTempDirectory("coverage");
        Design design = Trials.design(folder, method.design(stand, n));
        return Simulator.of(design, stand.forest(design), 1).run(cruises, 11, rules, Progress.SILENT);
    }

    /** Coverage by each rule, and what the standard error is put at (root mean square), in percent of the true one. */
    private static String cell(AttributeOutcome o) {
        List<String> shares = o.coverages().stream()
                .map(c -> c.intervals() == 0 ? "-" : String.format(Locale.ROOT, "%.1f", 100 * c.share()))
                .toList();
        return " " + String.join(" / ", shares)
                + String.format(Locale.ROOT, " (%.0f) |", 100 * Math.sqrt(o.meanVariance()) / o.sd());
    }
}
