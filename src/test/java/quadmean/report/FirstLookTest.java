package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.support.Browser;
import quadmean.support.Browser.Scheme;
import quadmean.support.ShippedCruises;

/** One look at one report, where there is a browser; {@code mvn test -Pbrowser} looks at everything. */
class FirstLookTest {
    @TempDir
    Path folder;

    @Test
    void aReportOpensOnAPhoneWithItsCharts() throws IOException {
        try (Browser browser = Browser.start()) {
            String page = Written.text(HtmlReport.of(
                    Objects.requireNonNull(ShippedCruises.run("demo").result())));
            browser.open(Files.writeString(folder.resolve("report.html"), page), 360, Scheme.LIGHT);
            assertEquals(List.of(), browser.console());
            assertEquals("", browser.overflow());
            assertTrue(browser.charts() >= 8, browser.charts() + " charts");
            assertEquals("", browser.poorCharts());
        }
    }
}
