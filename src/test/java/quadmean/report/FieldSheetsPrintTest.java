package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import quadmean.support.Pages;

/** Prints the sheets with Chromium where that is installed: each sheet fills one page and none runs over. */
class FieldSheetsPrintTest {
    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final int SECONDS = 120;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"demo", "demo-metric", "demo-mistakes", "count-points", "threep"})
    void aSheetIsAPage(String name) throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(BROWSER), "Chromium is not installed: the sheets were not printed");
        String page = FieldSheetsTest.page(FieldSheetsTest.design(name));
        assertEquals(sheets(page), printed(page));
    }

    private static int sheets(String page) {
        NodeList sections = Pages.xml(page).getElementsByTagName("section");
        int sheets = 0;
        for (int i = 0; i < sections.getLength(); i++) {
            sheets += ((Element) sections.item(i)).getAttribute("class").startsWith("sheet") ? 1 : 0;
        }
        return sheets;
    }

    private int printed(String page) throws IOException, InterruptedException {
        Path html = Files.writeString(folder.resolve("sheets.html"), page);
        Path pdf = folder.resolve("sheets.pdf");
        Process browser = new ProcessBuilder(
                        BROWSER.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--user-data-dir=" + folder.resolve("browser"),
                        "--no-pdf-header-footer",
                        "--print-to-pdf=" + pdf,
                        html.toUri().toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("browser.log").toFile())
                .start();
        if (!browser.waitFor(SECONDS, TimeUnit.SECONDS)) {
            browser.destroyForcibly().waitFor();
            throw new IOException("the browser did not end in " + SECONDS + " s");
        }
        String text = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        return (int)
                Pattern.compile("/Type\\s*/Page\\b").matcher(text).results().count();
    }
}
