package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import quadmean.chart.ChartSet;
import quadmean.chart.EstateCharts;
import quadmean.cruise.EstateResult;
import quadmean.support.Pages;
import quadmean.support.SmallEstate;

class EstatePageTest {
    private static EstateResult shipped;
    private static String page;

    @TempDir
    Path folder;

    @BeforeAll
    static void draw() throws IOException {
        shipped = SmallEstate.run(Path.of("designs/estate.toml"));
        page = Written.text(EstatePage.of(shipped, shipped.spread(), EstateCharts.of(shipped, shipped.spread())));
    }

    private static String plain(EstateResult result) throws IOException {
        String whole = Written.text(EstatePage.of(result, result.spread(), new ChartSet(List.of(), "")));
        return whole.substring(whole.indexOf("<main>")); // the script knows the word NaN
    }

    @Test
    void headlineSaysHowMuchHowSureAndWhetherItIsEnough() {
        assertTrue(page.contains("Alder Fork estate"));
        assertTrue(page.contains("39 stands with plots"), "extent in the first lines");
        assertTrue(page.contains("class=\"verdict met\">Target met"));
        assertTrue(page.contains("An estimate is no appraisal and no scale."));
        assertTrue(page.contains("Volume equations in use: from memory."), "standing of the equations");
    }

    @Test
    void everyLinkOfTheContentsLeadsSomewhere() {
        for (String link : page.split("<a href=\"#")) {
            String id = link.split("\"")[0];
            assertTrue(link.startsWith("<!DOCTYPE") || page.contains("id=\"" + id + "\""), id);
        }
    }

    @Test
    void pageIsWellFormedButForItsScript() {
        String body = page.substring(page.indexOf("<main>"), page.indexOf("</main>") + "</main>".length());
        Element main = Pages.xml(body).getDocumentElement();
        assertEquals("main", main.getTagName());
    }

    @Test
    void standsWithoutPlotsAndWithOneAreSaidPlainly() {
        assertTrue(page.contains("1 stand of 36.10"), "with its area");
        assertTrue(page.contains("has no plots and is in no number here"), "in the first lines");
        assertTrue(page.contains("1 stand has a single plot"));
    }

    @Test
    void curvesStandByRegionWithTheHeightsBehindThem() {
        assertTrue(page.contains("Height curves in use"));
        assertTrue(page.contains("at most 500 of a species in a region (seed 20260501)"));
        assertTrue(page.contains("<th scope=\"row\">hills</th>"));
        assertTrue(page.contains("<th scope=\"row\">river</th>"));
    }

    @Test
    void problemsAreCountedAndNotListed() {
        assertTrue(page.contains("1,147 rows read = 1,140 used + 7 dropped."), "the account of rows");
        assertTrue(page.contains("species-unknown"));
        assertFalse(page.contains("PSMF"), "no single row");
    }

    @Test
    void methodsSayWhatIsNotInTheErrorsAndWhatAnEstateHasNot() {
        assertTrue(page.contains("Not in the errors"));
        assertTrue(page.contains("Not for an estate"));
        assertTrue(page.contains("common practice, no source"), "lent variances");
    }

    @Test
    void chartsAreThere() {
        for (String id : List.of("estimate-by-species", "estimate-by-stratum", "stands-by-mean", "stands-by-error")) {
            assertTrue(page.contains("<figure id=\"" + id + "\">"), id);
        }
    }

    /** The lists of stands have twenty rows whatever there is. */
    @Test
    void pageDoesNotGrowWithTheStands() {
        String stands = page.substring(
                page.indexOf("<section id=\"stands\">"), page.indexOf("<section id=\"heights-section\">"));
        assertEquals(40, stands.split("<tr><th scope=\"row\">").length - 1);
    }

    @Test
    void whatComesFromFilesIsNoMarkup() throws IOException {
        String nasty = plain(new SmallEstate()
                .withStands("A,10,R,old", "<b>&A,10,<i>,<u>old")
                .withTally("A,", "<b>&A,")
                .result(folder));
        assertFalse(nasty.contains("<b>"));
        assertFalse(nasty.contains("<i>"));
        assertFalse(nasty.contains("<u>"));
        assertTrue(nasty.contains("&lt;b&gt;&amp;A"));
    }

    @Test
    void estateWithoutErrorsSaysWhy() throws IOException {
        String without = plain(new SmallEstate()
                .with("stands = \"stands.csv\"\n", "stands = \"stands.csv\"\none_plot = \"no_error\"\n")
                .result(folder));
        assertTrue(without.contains("Target: cannot tell"));
        assertTrue(without.contains("No confidence limits: no standard error: a stand with a single plot."));
        assertFalse(without.contains("NaN"));
    }

    @Test
    void estateWithoutHeightsAndWithoutStrataIsReportedToo() throws IOException {
        String bare = plain(new SmallEstate()
                .with("height = { name = \"height_m\", unit = \"m\" }\n", "")
                .with("stratum = \"stratum\"\n", "")
                .with("region = \"region\"\n", "")
                .result(folder));
        assertTrue(bare.contains("nothing could be filled"));
        assertFalse(bare.contains("id=\"strata\""));
        assertFalse(bare.contains("NaN"));
    }

    @Test
    void consoleSaysTheSameInAFewLines() {
        List<String> lines = EstateSummary.of(shipped, shipped.spread());
        assertEquals("Alder Fork estate: 39 stands with plots, 3,078 ac (1,245 ha), 163 plots", lines.get(0));
        assertTrue(lines.get(1).startsWith("volume "), lines.get(1));
        assertTrue(lines.get(1).contains("90 % limits"), lines.get(1));
        assertTrue(lines.stream().anyMatch(l -> l.startsWith("Target met: Sampling error ±")), lines.toString());
        assertTrue(lines.size() < 10, "a few lines: " + lines.size());
    }
}
