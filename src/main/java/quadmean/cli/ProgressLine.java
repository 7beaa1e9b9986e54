package quadmean.cli;

import java.io.PrintWriter;
import java.util.concurrent.atomic.AtomicInteger;
import quadmean.cruise.Progress;

/** How far long work has come, as a line that is written over; on a terminal alone, so that logs stay clean. */
final class ProgressLine {
    private static final int STEPS = 20;

    private ProgressLine() {}

    /** Progress of some work. From Java 22 on there is a console without a terminal too: a log then has these lines. */
    @SuppressWarnings("SystemConsoleNull")
    static Progress of(PrintWriter err, String work) {
        return System.console() == null ? Progress.SILENT : on(err, work);
    }

    static Progress on(PrintWriter err, String work) {
        AtomicInteger shown = new AtomicInteger();
        return (done, of) -> {
            int step = (int) ((long) STEPS * done / of);
            int before = shown.getAndAccumulate(step, Math::max);
            if (step > before) {
                err.print("\r" + work + ": " + 100 * step / STEPS + " %" + (done == of ? "\n" : ""));
                err.flush();
            }
        };
    }
}
