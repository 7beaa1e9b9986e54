package quadmean.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import quadmean.model.Progress;

/** How far long work has come, as a bar that is written over and wiped at the end; on a terminal alone, so that logs stay clean. */
final class ProgressLine implements Progress {
    private static final int STEPS = 20;

    /** Work that is done sooner needs no bar. */
    private static final long PATIENCE = TimeUnit.MILLISECONDS.toNanos(500);

    /** A bar of rows is renewed after so long at the soonest. */
    private static final long PAUSE = TimeUnit.MILLISECONDS.toNanos(200);

    private final PrintWriter err;
    private final LongSupplier nanos;
    private final long start;
    private final Map<Work, Integer> shown = new EnumMap<>(Work.class);
    private final Map<Work, RowsLine> passes = new EnumMap<>(Work.class);
    private final Set<Work> over = EnumSet.noneOf(Work.class);
    private long lastRows;
    private int width;

    private ProgressLine(PrintWriter err, LongSupplier nanos) {
        this.err = err;
        this.nanos = nanos;
        this.start = nanos.getAsLong();
    }

    /** Progress on a terminal. From Java 22 on there is a console without a terminal too: a log then has these lines. */
    @SuppressWarnings("SystemConsoleNull")
    static Progress of(PrintWriter err) {
        return System.console() == null ? Progress.SILENT : on(err, System::nanoTime);
    }

    static Progress on(PrintWriter err, LongSupplier nanos) {
        return new ProgressLine(err, nanos);
    }

    /** Each step once; what threads report out of order never takes the bar back. */
    @Override
    public synchronized void report(Work work, int done, int of) {
        int step = (int) ((long) STEPS * done / of);
        int before = shown.getOrDefault(work, 0);
        if (step <= before || nanos.getAsLong() - start < PATIENCE) {
            return;
        }
        shown.put(work, step);
        String line =
                work.words() + " [" + "#".repeat(step) + ".".repeat(STEPS - step) + "] " + 100 * step / STEPS + " %";
        err.print("\r" + (done < of ? line : blank(line) + "\r"));
        err.flush();
    }

    /** The bar of a pass, wiped once all is read; some ranges are then still under way. */
    @Override
    public synchronized void rows(Work work, long rows, double share) {
        long now = nanos.getAsLong();
        RowsLine pass = passes.computeIfAbsent(work, w -> new RowsLine(w.words(), now, rows, share));
        boolean isOver = share >= 1;
        if (over.contains(work) || (!isOver && (now - start < PATIENCE || (width > 0 && now - lastRows < PAUSE)))) {
            return;
        }
        if (!isOver) {
            String line = pass.at(now, rows, share);
            String rest = " ".repeat(Math.max(0, width - line.length()));
            width = Math.max(width, line.length());
            lastRows = now;
            err.print("\r" + line + rest);
        } else if (over.add(work) && width > 0) {
            err.print("\r" + " ".repeat(width) + "\r");
            width = 0;
        }
        err.flush();
    }

    private static String blank(String line) {
        char[] blanks = new char[line.length()];
        Arrays.fill(blanks, ' ');
        return new String(blanks);
    }
}
