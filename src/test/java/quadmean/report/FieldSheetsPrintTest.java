package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import quadmean.support.Browser;
import quadmean.support.Pages;

/** Prints the sheets with a browser: each sheet fills one page and none runs over. */
@Tag("browser")
class FieldSheetsPrintTest {
    @TempDir
    Path folder;

    private static Browser browser;

    @BeforeAll
    static void start() {
        browser = Browser.start();
    }

    @AfterAll
    static void end() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo", "demo-metric", "demo-mistakes", "count-points", "threep"})
    void aSheetIsAPage(String name) throws IOException {
        String page = FieldSheetsTest.page(FieldSheetsTest.design(name));
        browser.open(Files.writeString(folder.resolve("sheets.html"), page), 1280, Browser.Scheme.LIGHT);
        assertEquals(sheets(page), browser.print().pages());
    }

    private static int sheets(String page) {
        NodeList sections = Pages.xml(page).getElementsByTagName("section");
        int sheets = 0;
        for (int i = 0; i < sections.getLength(); i++) {
            sheets += ((Element) sections.item(i)).getAttribute("class").startsWith("sheet") ? 1 : 0;
        }
        return sheets;
    }
}
