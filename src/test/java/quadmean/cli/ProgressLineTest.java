package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import quadmean.cruise.Progress;

class ProgressLineTest {
    /** Twenty steps, each once, in place; a line of its own follows only when all is done. */
    @Test
    void countsUpInPlace() {
        StringWriter shown = new StringWriter();
        Progress progress = ProgressLine.on(new PrintWriter(shown), "Work");
        for (int done = 1; done <= 1000; done++) {
            progress.report(done, 1000);
        }
        String text = shown.toString();
        assertEquals(20, text.chars().filter(c -> c == '\r').count());
        assertEquals(1, text.lines().filter(l -> l.endsWith("Work: 100 %")).count());
        assertEquals("\rWork: 5 %", text.substring(0, text.indexOf('\r', 1)));
    }

    /** Threads report out of order: what is less than was shown is not shown again. */
    @Test
    void neverGoesBack() {
        StringWriter shown = new StringWriter();
        Progress progress = ProgressLine.on(new PrintWriter(shown), "Work");
        progress.report(50, 100);
        progress.report(20, 100);
        assertEquals("\rWork: 50 %", shown.toString());
    }
}
