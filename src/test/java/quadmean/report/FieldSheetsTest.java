package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import quadmean.chart.MapChart;
import quadmean.chart.SampleCruise;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.layout.SheetRoute;
import quadmean.layout.SheetSet;
import quadmean.support.Pages;
import quadmean.support.SampleTract;

class FieldSheetsTest {
    /** Nothing laid out. */
    static final SheetSet NOTHING = new SheetSet(
            OptionalInt.empty(), List.of(), new SheetRoute(SampleTract.start(), "", List.of(), List.of()), List.of());

    static Design design(String name) {
        try {
            return Objects.requireNonNull(
                    DesignReader.read(Path.of("designs", name + ".toml")).design());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static String page(Design design) {
        try {
            return FieldSheets.page(
                    design, SampleTract.set(), Optional.of(MapChart.picture(SampleTract.map(design.units()))));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static Stream<String> shipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("designs"))) {
            return files
                    .map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".toml") && !f.equals("estate.toml"))
                    .map(f -> f.replace(".toml", ""))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    /** Rows of the table under a section, each as the text of its cells. */
    private static List<List<String>> rows(Element section) {
        List<List<String>> rows = new ArrayList<>();
        NodeList all = section.getElementsByTagName("tr");
        for (int i = 0; i < all.getLength(); i++) {
            List<String> cells = new ArrayList<>();
            for (Node n = all.item(i).getFirstChild(); n != null; n = n.getNextSibling()) {
                cells.add(n.getTextContent());
            }
            rows.add(cells);
        }
        return rows;
    }

    private static List<String> row(Element section, String first) {
        return rows(section).stream()
                .filter(r -> r.get(0).equals(first))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + first));
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void sheetsOfEveryShippedDesignAreWellFormed(String name) {
        String page = page(design(name));
        Document document = Pages.xml(page);
        List<String> ids = new ArrayList<>();
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            if (!id.isEmpty()) {
                ids.add(id);
            }
        }
        assertEquals(ids.stream().distinct().toList(), ids, "ids are unique");
        assertFalse(page.contains("NaN"), "no unknown number");
        assertFalse(page.contains("<script"), "nothing runs");
        String links = page.replace("http://www.w3.org/2000/svg", "");
        assertFalse(links.contains("http"), "nothing is fetched");
    }

    @Test
    void whatComesFromTheDesignIsEscaped() {
        String page = page(SampleCruise.us().design());
        assertTrue(page.contains("Alder Bench &lt;draft&gt;"));
        assertFalse(page.contains("<draft>"));
        Pages.xml(page);
    }

    /** Formulary 4.1 and 6.1: 37.24 ft, and 1.0770 at 40 %; radius there as in FieldTablesTest. */
    @Test
    void slopesOfTheDemo() {
        Element slopes = Pages.byId(Pages.xml(page(design("demo"))), "slopes");
        assertEquals(List.of("0", "0.0", "1.0000", "100.00", "37.24"), row(slopes, "0"));
        assertEquals(List.of("40", "21.8", "1.0770", "107.70", "40.10"), row(slopes, "40"));
    }

    /** Formulary 4.3: 0.5/√7 = 0.1890 m per cm, so that 30 cm reach 5.67 m to the centre and 0.15 m less to the face. */
    @Test
    void limitsOfTheIdahoPoints() {
        Document page = Pages.xml(page(design("idaho-points")));
        Element centre = Pages.byId(page, "limiting-distances-factor-7-m-ha-to-the-centre-of-the-stem");
        Element face = Pages.byId(page, "limiting-distances-factor-7-m-ha-to-the-face-of-the-stem");
        assertEquals("5.67", row(centre, "30").get(1));
        assertEquals("5.52", row(face, "30").get(1));
        assertTrue(centre.getTextContent().contains("0.1890"));
        assertTrue(centre.getTextContent().contains("does not say to which part of the stem"));
    }

    /** By definition of percent. */
    @Test
    void heightsByClinometerOfTheDemo() {
        Element table = Pages.byId(Pages.xml(page(design("demo"))), "heights-by-clinometer-percent-scale");
        assertEquals(List.of("50", "25.0", "33.0", "40.0", "50.0"), row(table, "50"));
        assertEquals(List.of("150", "75.0", "99.0", "120.0", "150.0"), row(table, "150"));
    }

    @Test
    void thePlotListHasEveryPlotWithItsWay() {
        Element plots = Pages.byId(Pages.xml(page(design("demo"))), "plots");
        List<String> toPlots = rows(plots).stream().map(r -> r.get(1)).toList();
        SampleTract.plots()
                .forEach(p -> assertEquals(
                        1, toPlots.stream().filter(p.number()::equals).count(), p.number()));
        // plot 2 lies 100 m east of plot 1 by the sample: 328 ft
        List<String> second = rows(plots).stream()
                .filter(r -> r.get(0).equals("1"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("1", "2", "W", "090°", "076°", "328"), second.subList(0, 6));
        assertTrue(plots.getTextContent().contains("Day 2: 12 plots"));
    }

    @ParameterizedTest
    @CsvSource({"0, 000°", "359.6, 000°", "90.4, 090°", "7.5, 008°", "-0.2, 000°", "NaN, –"})
    void bearings(double degrees, String text) {
        assertEquals(text, SheetPlots.bearing(degrees));
    }

    @Test
    void aFormHasTheColumnsOfTheTally() {
        Element form = Pages.byId(Pages.xml(page(design("demo"))), "tally");
        List<String> head = rows(form).get(0);
        assertEquals("tree no.tree", head.get(0));
        assertEquals("dbh (in)dbh_in", head.get(2));
        assertEquals("remarks", head.get(head.size() - 1));
        assertFalse(head.contains("plot"), "plot and stratum stand at the head of the form");
        assertTrue(rows(form).size() > 20, "lines for trees");
        assertTrue(form.getTextContent().contains("PSME Douglas-fir"));
    }

    @Test
    void countPointsHaveFormsOfTheirOwn() {
        Document page = Pages.xml(page(design("count-points")));
        assertEquals(
                "dbh (mm)",
                rows(Pages.byId(page, "tally-measured-point")).get(0).get(1));
        assertEquals(
                List.of("species", "count", "remarks"),
                rows(Pages.byId(page, "tally-count-point")).get(0));
    }

    @ParameterizedTest
    @CsvSource({"mirage, mirage centre", "demo, Settle it before the first plot"})
    void theBoundaryHasItsInstruction(String design, String words) {
        assertTrue(Pages.byId(Pages.xml(page(design(design))), "edges")
                .getTextContent()
                .contains(words));
    }

    @Test
    void sheetsComeWithoutALayoutToo() throws IOException {
        String page = FieldSheets.page(design("demo"), NOTHING, Optional.empty());
        Pages.xml(page);
        assertFalse(page.contains("id=\"plots\""));
        assertTrue(page.contains("id=\"slopes\""));
    }

    @Test
    void theSeedAndTheCautionsStandOnTheCover() {
        String cover = Pages.byId(Pages.xml(page(design("demo"))), "cover").getTextContent();
        for (String words : List.of(
                "20260401",
                "Look up",
                "strong wind",
                "steep",
                "alone",
                "licensed practice",
                "no appraisal",
                "no scale")) {
            assertTrue(cover.contains(words), words);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo", "demo-metric"})
    void paperGoesWithTheUnits(String name) {
        assertTrue(page(design(name)).contains(name.equals("demo") ? "size: letter;" : "size: A4;"));
    }

    /** Contrast of at least 7 to 1 on the darkest ground that carries letters (WCAG 2.2, 1.4.6); headers and rows hold together. */
    @Test
    void printsInGreyWithHeadersOnEachPage() {
        String page = page(design("demo"));
        assertTrue(Pages.contrast("#111111", "#ececec") >= 7);
        assertTrue(
                page.contains("--ink: #111;") && page.contains("--pale: #ececec;"),
                "the colours tested are those in use");
        assertTrue(Pattern.compile("thead \\{ display: table-header-group")
                .matcher(page)
                .find());
        assertTrue(Pattern.compile("\ntr \\{ break-inside: avoid").matcher(page).find());
    }

    @Test
    void thePageIsTheSameEveryTime() {
        assertEquals(page(design("demo")), page(design("demo")));
    }

    @ParameterizedTest
    @CsvSource({"1, 1st", "2, 2nd", "3, 3rd", "4, 4th", "11, 11th", "12, 12th", "21, 21st", "100, 100th"})
    void ordinals(int n, String words) {
        assertEquals(words, SheetHeights.ordinal(n));
    }
}
