package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import quadmean.cruise.Cruise;
import quadmean.design.DesignReader;
import quadmean.model.Progress;
import quadmean.model.Progress.Work;

class ProgressLineTest {
    private final StringWriter shown = new StringWriter();
    private final AtomicLong clock = new AtomicLong();
    private final Progress progress = ProgressLine.on(new PrintWriter(shown), clock::get);

    /** Twenty steps, each once, in place; the last wipes the line. */
    @Test
    void countsUpInPlaceAndLeavesNothing() {
        clock.set(1_000_000_000);
        for (int done = 1; done <= 1000; done++) {
            progress.report(Work.CURVES, done, 1000);
        }
        String text = shown.toString();
        assertEquals(21, text.chars().filter(c -> c == '\r').count());
        assertTrue(text.startsWith("\rFitting height curves [#...................] 5 %\r"), text);
        assertTrue(text.contains("[###################.] 95 %\r"), text);
        assertTrue(text.endsWith(" \r") && !text.contains("\n"), "wiped");
    }

    /** Threads report out of order: what is less than was shown is not shown again. */
    @Test
    void neverGoesBack() {
        clock.set(1_000_000_000);
        progress.report(Work.REFITS, 50, 100);
        progress.report(Work.REFITS, 20, 100);
        assertEquals("\rFitting curves to resampled plots [##########..........] 50 %", shown.toString());
    }

    @Test
    void shortWorkShowsNothing() {
        for (int done = 1; done <= 100; done++) {
            clock.addAndGet(4_000_000);
            progress.report(Work.CURVES, done, 100);
        }
        assertEquals("", shown.toString());
    }

    /** Half a million rows a second, after 100 000 rows of an interrupted run: five bars a second at most, and nothing left. */
    @Test
    void rowsAreCountedWithTheTimeLeft() {
        for (int tick = 0; tick <= 1000; tick++) {
            clock.set(10_000_000L * tick);
            progress.rows(Work.ROWS, 100_000 + 5_000L * tick, 0.1 + 0.9 * tick / 1000);
        }
        String text = shown.toString();
        long bars = text.chars().filter(c -> c == '[').count();
        assertTrue(bars > 40 && bars <= 50, bars + " bars in ten seconds");
        assertTrue(
                text.startsWith("\rAdding up plots [##..................] 14 %, 350,000 rows, 500,000 rows/s, "), text);
        assertTrue(text.contains("] 55 %, 2,650,000 rows, 500,000 rows/s, 5 s left"), text);
        assertTrue(text.endsWith(" \r") && !text.contains("\n"), "wiped");
        int before = text.length();
        progress.rows(Work.ROWS, 6_000_000, 1);
        assertEquals(before, shown.toString().length(), "not shown again");
    }

    @Test
    void timeIsToldInItsUnits() {
        RowsLine pass = new RowsLine("Rows", 0, 0, 0);
        assertEquals("Rows [....................] 0 %, 5 rows", pass.at(0, 5, 0));
        assertTrue(pass.at(1_000_000_000, 5, 0.01).endsWith("5 rows/s, 1 min 39 s left"));
        assertTrue(pass.at(100_000_000_000L, 5, 0.01).endsWith("0 rows/s, 2 h 45 min left"));
    }

    /** The estimate tells of each curve search and ends its work at the whole. */
    @Test
    void theEstimateReportsItsCurves() throws Exception {
        Map<Work, String> last = new EnumMap<>(Work.class);
        Cruise.run(
                Objects.requireNonNull(DesignReader.read(java.nio.file.Path.of("designs/demo.toml"))
                        .design()),
                (work, done, of) -> last.put(work, done + "/" + of));
        // all species together, four species; no group
        assertEquals(Map.of(Work.CURVES, "5/5"), last);
    }
}
