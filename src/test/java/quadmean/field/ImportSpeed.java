package quadmean.field;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import quadmean.design.Design;
import quadmean.model.Policy;
import quadmean.support.SmallDesign;

/**
 * Measures how fast a big tally is read: {@code ImportSpeed ROWS [FOLDER]}. The streaming part goes from the file to the
 * checked tree of each row and keeps nothing; gathering plots, as {@link TallyReader} does, is measured apart for as many
 * rows as memory is meant to hold.
 */
public final class ImportSpeed {
    private static final int GATHERED = 200_000;

    private ImportSpeed() {}

    /** Prints rows a second and the memory in use. */
    public static void main(String[] args) throws IOException {
        long rows = Long.parseLong(args[0]);
        Path folder = args.length > 1 ? Path.of(args[1]) : Files.createTempDirectory("tally");
        Path tally = folder.resolve("tally.csv");
        Design design = new SmallDesign().valid(folder);
        try {
            write(tally, rows);
            System.out.printf(Locale.ROOT, "%d rows, %d MB%n", rows, Files.size(tally) / 1_000_000);
            for (int pass = 0; pass < 2; pass++) {
                stream(design);
            }
            write(tally, Math.min(rows, GATHERED));
            long start = System.nanoTime();
            long used = TallyReader.read(design).rows().used();
            report("gathered into plots", used, start);
        } finally {
            Files.deleteIfExists(tally);
        }
    }

    /** A tally of many plots of twenty trees, every fourth tree with a height. */
    static void write(Path tally, long rows) throws IOException {
        try (BufferedWriter csv = Files.newBufferedWriter(tally)) {
            csv.write("plot,tree,species,dbh,height\n");
            for (long i = 0; i < rows; i++) {
                long tree = i % 20 + 1;
                csv.write((i / 20 + 1) + "," + tree + ",PSME," + (10 + i % 50) + "." + i % 10 + ","
                        + (tree % 4 == 0 ? 12 + i % 20 : "") + "\n");
            }
        }
    }

    /** Reads all rows as far as their trees. */
    static long stream(Design design) throws IOException {
        TreeReader trees = new TreeReader(design);
        AtomicLong count = new AtomicLong();
        FileProblems log = new FileProblems(r -> Policy.REFUSE, "tally.csv", p -> {
            throw new AssertionError(p.message());
        });
        long start = System.nanoTime();
        TallyRows.forEach(design.tallies().get(0), log, row -> {
            RowProblems problems = new RowProblems(design, row);
            if (row.isOneLine() && !row.isEmptyPlot() && trees.read(row, problems) != null) {
                count.incrementAndGet();
            }
        });
        report("streamed", count.get(), start);
        return count.get();
    }

    private static void report(String what, long rows, long start) {
        double seconds = (System.nanoTime() - start) / 1e9;
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "%s: %d rows in %.1f s, %.0f rows/s; %d MB in use, heap of at most %d MB%n",
                what,
                rows,
                seconds,
                rows / seconds,
                (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000,
                runtime.maxMemory() / 1_000_000);
    }
}
