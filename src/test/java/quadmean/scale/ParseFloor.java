package quadmean.scale;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

/**
 * The floor that the speed of an estate is held against: {@code ParseFloor FILE_OR_FOLDER THREADS PASSES records|callback}. Reads the
 * tally of an estate with the CSV library and parses its numeric columns, and does nothing else.
 */
public final class ParseFloor {
    private static final long RANGE_BYTES = 4 << 20;

    private ParseFloor() {}

    /** Prints one line for each pass: rows, sums, seconds on the wall and of processors, rows a second on the wall. */
    public static void main(String[] args) throws IOException, InterruptedException, ExecutionException {
        int threads = Integer.parseInt(args[1]);
        FloorReader reader = FloorReader.valueOf(args[3].toUpperCase(Locale.ROOT));
        long begin = System.nanoTime();
        for (int pass = 1; pass <= Integer.parseInt(args[2]); pass++) {
            long start = System.nanoTime();
            long processors = processorTime();
            FloorSums sums = read(Path.of(args[0]), threads, reader);
            double seconds = (System.nanoTime() - start) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "%s, %d threads, pass %d: %d rows, %d trees, sum of dbh %.1f, %d heights, sum %.1f, %.3f s, %.3f s of processors, %.0f rows/s%n",
                    args[3],
                    threads,
                    pass,
                    sums.rows(),
                    sums.trees(),
                    sums.dbhSum(),
                    sums.heights(),
                    sums.heightSum(),
                    seconds,
                    (processorTime() - processors) / 1e9,
                    sums.rows() / seconds);
        }
        System.out.printf(Locale.ROOT, "all passes: %.3f s%n", (System.nanoTime() - begin) / 1e9);
    }

    /** Nanoseconds of all threads, the compiler's too: what other work on the machine disturbs least. */
    private static long processorTime() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    /** Reads a tally once: ranges of it by as many threads as are asked for, sums in the order of the ranges. */
    static FloorSums read(Path tally, int threads, FloorReader reader)
            throws IOException, InterruptedException, ExecutionException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<FloorSums>> parts = new ArrayList<>();
            for (FileRange range : ranges(tally, threads)) {
                parts.add(pool.submit(() -> reader.read(range)));
            }
            FloorSums all = new FloorSums();
            for (Future<FloorSums> part : parts) {
                all.add(part.get());
            }
            return all;
        } finally {
            pool.shutdownNow();
        }
    }

    private static List<FileRange> ranges(Path tally, int threads) throws IOException {
        List<FileRange> ranges = new ArrayList<>();
        try (Stream<Path> files = Files.isDirectory(tally) ? Files.list(tally).sorted() : Stream.of(tally)) {
            for (Path file : files.toList()) {
                ranges.addAll(FileRange.cut(file, Math.max(threads, (int) (Files.size(file) / RANGE_BYTES))));
            }
        }
        return ranges;
    }
}
