package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import quadmean.support.Browser;
import quadmean.support.Browser.Scheme;

/** The pages that people see, opened in a browser. */
@Tag("browser")
class BrowserTest {
    private static final int PHONE = 360;
    private static final int DESKTOP = 1280;

    @TempDir
    static Path folder;

    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        browser = Browser.start();
        make("estimate", "designs/demo.toml", "demo");
        make("estimate", "designs/idaho-points.toml", "points");
        make("estimate", "designs/demo-laid-out.toml", "mapped");
        make("estimate", "designs/estate.toml", "estate");
        make("curves", "designs/demo.toml", "curves");
        make("plan", "designs/demo.toml", "plan");
        make("plan", laidOut(), "layout");
        make("plan", "designs/demo-laid-out.toml", "mapped-plan");
        make("fit-volume", "datasets/black-cherry.csv", "volume");
    }

    private static void make(String command, String input, String name) {
        Run.of(command, input, "--out", folder.resolve(name)).assertCode(0);
    }

    /** The demonstration with plots on the map, on the other paper. */
    private static String laidOut() throws IOException {
        String text = Files.readString(Path.of("designs/demo.toml"))
                .replace(
                        "../datasets",
                        Path.of("datasets").toAbsolutePath().toString().replace('\\', '/'));
        String a4 = text.replace("\n[output]\n", "\n[output]\nsheet_paper = \"a4\"\n");
        return Files.writeString(folder.resolve("laid-out.toml"), a4 + "\n[layout]\npattern = \"triangular\"\n")
                .toString();
    }

    @AfterAll
    static void end() {
        if (browser != null) {
            browser.close();
        }
    }

    private static void open(String page, int width, Scheme scheme) {
        browser.open(folder.resolve(page), width, scheme);
        browser.unfold();
    }

    @ParameterizedTest
    @CsvSource({
        "demo/report.html, 13",
        "points/report.html, 8",
        "mapped/report.html, 10",
        "estate/report.html, 4",
        "demo/remeasure.html, 0",
        "curves/curves.html, 6",
        "plan/sheets.html, 2",
        "plan/plan.html, 1",
        "layout/sheets.html, 3",
        "volume/fit-volume.html, 2"
    })
    void opensWithoutErrorsFitsAndDrawsItsCharts(String page, int charts) {
        for (int width : List.of(PHONE, DESKTOP)) {
            browser.console();
            open(page, width, Scheme.LIGHT);
            assertEquals(List.of(), browser.console(), page);
            assertEquals("", browser.overflow(), page + " runs over " + width + " pixels");
            assertTrue(charts <= browser.charts(), page + " has " + browser.charts() + " charts");
            assertEquals("", browser.poorCharts(), page);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "demo/report.html",
        "estate/report.html",
        "curves/curves.html",
        "demo/remeasure.html",
        "plan/plan.html",
        "volume/fit-volume.html"
    })
    void tablesAreSortedByKeyboard(String page) {
        open(page, DESKTOP, Scheme.LIGHT);
        int tables = ((Number) browser.run("""
                const varied = t => Array.from(t.querySelectorAll('thead button')).find((b, i) =>
                    new Set(Array.from(t.tBodies[0].rows).map(r => r.cells[i].innerText)).size > 1);
                window.tables = Array.from(document.querySelectorAll('.scroll table')).filter(varied);
                window.heads = window.tables.map(varied);
                return window.tables.length""")).intValue();
        assertTrue(tables > 0, "no table to sort in " + page);
        for (int i = 0; i < Math.min(tables, 6); i++) {
            String printed = rows(i);
            browser.run("window.heads[" + i + "].focus()");
            browser.type(Keys.ENTER);
            String up = rows(i);
            assertEquals("ascending", sorted(i));
            browser.type(Keys.SPACE);
            String down = rows(i);
            assertEquals("descending", sorted(i));
            assertNotEquals(up, down, "table " + i + " of " + page);
            assertEquals(up.lines().sorted().toList(), down.lines().sorted().toList());
            browser.type(Keys.ENTER);
            assertEquals("null", sorted(i));
            assertEquals(printed, rows(i), "back as printed");
        }
    }

    private static String rows(int table) {
        return browser.text("return Array.from(window.tables[" + table
                + "].tBodies[0].rows).map(r => r.innerText.replace(/\\s+/g, ' ')).join('\\n')");
    }

    private static String sorted(int table) {
        return browser.text("return window.heads[" + table + "].parentNode.getAttribute('aria-sort')");
    }

    /** Numbers of a column stand in their order, those of each size, and totals stay below them. */
    @ParameterizedTest
    @CsvSource({"species, 1", "strata, 6", "tables, 5", "statistics, 1"})
    void numbersSortAsNumbers(String section, int column) {
        open("demo/report.html", DESKTOP, Scheme.LIGHT);
        String before = "const t = document.querySelector('#" + section + " table'); ";
        String foot = browser.text(before + "return t.tFoot ? t.tFoot.innerText : ''");
        browser.run(before + "t.querySelectorAll('thead button')[" + column + "].focus()");
        browser.type(Keys.ENTER);
        List<Double> values = Pattern.compile(";")
                .splitAsStream(browser.text(before + "return Array.from(t.tBodies[0].rows).map(r => r.cells[" + column
                        + "].firstChild.textContent).join(';')"))
                .map(BrowserTest::number)
                .toList();
        assertEquals(values.stream().sorted().toList(), values);
        assertEquals(foot, browser.text(before + "return t.tFoot ? t.tFoot.innerText : ''"));
    }

    @ParameterizedTest
    @CsvSource({
        "demo/report.html, 12, 45",
        "points/report.html, 6, 30",
        "estate/report.html, 5, 20",
        "curves/curves.html, 4, 30",
        "demo/remeasure.html, 1, 4",
        "plan/sheets.html, 5, 9",
        "layout/sheets.html, 7, 14",
        "volume/fit-volume.html, 2, 8"
    })
    void printsOnAFewPages(String page, int least, int most) {
        browser.open(folder.resolve(page), DESKTOP, Scheme.DARK);
        Browser.Pdf pdf = browser.print();
        assertTrue(pdf.pages() >= least && pdf.pages() <= most, page + " prints on " + pdf);
        assertTrue(pdf.bytes() > 10_000, page + " prints as " + pdf);
    }

    @ParameterizedTest
    @CsvSource({
        "demo/report.html, LIGHT",
        "demo/report.html, DARK",
        "points/report.html, DARK",
        "estate/report.html, LIGHT",
        "estate/report.html, DARK",
        "curves/curves.html, LIGHT",
        "curves/curves.html, DARK",
        "demo/remeasure.html, LIGHT",
        "demo/remeasure.html, DARK",
        "mapped/report.html, LIGHT",
        "plan/plan.html, LIGHT",
        "plan/plan.html, DARK",
        "layout/sheets.html, LIGHT",
        "layout/sheets.html, DARK",
        "volume/fit-volume.html, LIGHT",
        "volume/fit-volume.html, DARK"
    })
    void nothingKeepsAReaderOut(String page, Scheme scheme) throws IOException {
        open(page, DESKTOP, scheme);
        browser.shorten(6);
        assertEquals("", browser.seriousFindings(), page);
    }

    /** A number with commas and perhaps a unit after it. */
    private static double number(String text) {
        return Double.parseDouble(text.replace(",", "").replaceAll("[^0-9.].*", ""));
    }

    /** The list of plots may run over; every other sheet is one page, of letter as of A4. */
    @ParameterizedTest
    @CsvSource({"plan/sheets.html", "layout/sheets.html", "mapped-plan/sheets.html"})
    void eachSheetFitsItsPaper(String page) {
        browser.open(folder.resolve(page), DESKTOP, Scheme.LIGHT);
        String ids = browser.text("return Array.from(document.querySelectorAll('.sheet')).map(s => s.id).join(' ')");
        int sheets = ids.split(" ", -1).length;
        assertTrue(sheets >= 6, ids);
        for (int i = 0; i < sheets; i++) {
            browser.run("document.querySelectorAll('.sheet').forEach((s, i) => s.hidden = i !== " + i + ")");
            int pages = browser.print().pages();
            boolean isList = ids.split(" ", -1)[i].equals("plots");
            assertTrue(isList ? pages >= 1 : pages == 1, ids.split(" ", -1)[i] + " takes " + pages + " pages");
        }
    }

    /** The check by axe-core finds what it is for. */
    @Test
    void axeFindsAPageThatKeepsReadersOut() throws IOException {
        Files.writeString(
                folder.resolve("bad.html"),
                "<!DOCTYPE html><html lang='en'><title>x</title><main><h1 style='color:#ccc;background:#fff'>pale</h1>"
                        + "<img src='data:,'></main>");
        browser.open(folder.resolve("bad.html"), DESKTOP, Scheme.LIGHT);
        String findings = browser.seriousFindings();
        assertTrue(findings.contains("color-contrast") && findings.contains("image-alt"), findings);
    }

    @Test
    void darkIsDark() {
        browser.open(folder.resolve("demo/remeasure.html"), DESKTOP, Scheme.DARK);
        String dark = browser.text("return getComputedStyle(document.body).backgroundColor");
        browser.open(folder.resolve("demo/remeasure.html"), DESKTOP, Scheme.LIGHT);
        assertNotEquals(dark, browser.text("return getComputedStyle(document.body).backgroundColor"));
    }
}
