package quadmean.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import quadmean.chart.TractMap.Area;
import quadmean.chart.TractMap.Point;
import quadmean.chart.TractMap.Site;
import quadmean.support.Pages;
import quadmean.support.SampleTract;
import quadmean.support.Tolerance;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

class MapChartTest {
    /** Places of the drawing are written with two decimals. */
    private static final Tolerance DRAWN = Tolerance.absolute("two decimals of either end", 0.0101);

    private static Document svg(UnitSystem units) {
        return Pages.xml(MapChart.picture(SampleTract.map(units)).svg());
    }

    private static List<Element> ofClass(Document svg, String name) {
        List<Element> found = new ArrayList<>();
        NodeList all = svg.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element e = (Element) all.item(i);
            if (e.getAttribute("class").equals(name) && !hasTranslatedParent(e)) {
                found.add(e);
            }
        }
        return found;
    }

    private static boolean hasTranslatedParent(Element e) {
        return e.getParentNode() instanceof Element parent && parent.hasAttribute("transform");
    }

    private static double number(Element e, String attribute) {
        return Double.parseDouble(e.getAttribute(attribute));
    }

    /** Plots 2 and 3 lie 100 m apart toward east, plots 2 and 8 as far toward north: by the grid of the sample. */
    @Test
    void oneScaleInBothDirectionsAndNorthUp() {
        List<Element> plots = ofClass(svg(UnitSystem.METRIC), "plot");
        assertEquals(22, plots.size(), "plots that are not near the edge");
        double east = number(plots.get(1), "cx") - number(plots.get(0), "cx");
        double north = number(plots.get(0), "cy") - number(plots.get(5), "cy");
        assertTrue(east > 0 && north > 0, "east to the right, north up");
        DRAWN.check(east, north, "100 m on the drawing");
        assertEquals(2, ofClass(svg(UnitSystem.METRIC), "near").size());
        assertEquals(1, ofClass(svg(UnitSystem.METRIC), "start").size());
    }

    /** The bar is as long as it says, by the distance of two plots that are 100 m apart. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void theScaleBarIsRight(UnitSystem units) {
        Document svg = svg(units);
        List<Element> plots = ofClass(svg, "plot");
        double perMetre = (number(plots.get(1), "cx") - number(plots.get(0), "cx")) / 100;
        Element bar = Pages.byId(svg, "map-scale");
        double wide = number((Element) bar.getElementsByTagName("rect").item(0), "width");
        NodeList words = bar.getElementsByTagName("text");
        String[] end = words.item(2).getTextContent().split(" ");
        assertEquals(units.length().label(), end[1]);
        double metres = units.length().convert(Double.parseDouble(end[0].replace(",", "")), Unit.METRE);
        Tolerance.relative("two decimals of the drawing", 1e-3).check(metres * perMetre, wide, "bar");
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "1.9, 1", "2, 2", "49, 20", "50, 50", "999, 500", "0.3, 0.2"})
    void barsAreRound(double most, double length) {
        Tolerance.ROUNDING.check(length, MapLegend.round(most), "bar");
    }

    @Test
    void everyPlotHasItsNumberAndNoTwoNumbersMeet() {
        String svg = MapChart.picture(SampleTract.map(UnitSystem.US)).svg();
        for (int i = 1; i <= 24; i++) {
            assertTrue(svg.contains(">" + i + "</text>"), "plot " + i);
        }
        MapLabels labels = new MapLabels(14, 400, List.of(), List.of());
        MapLabels.Box first = labels.place("12", 100, 100);
        MapLabels.Box second = labels.place("13", 104, 100);
        assertFalse(first.meets(second), first + " " + second);
    }

    @Test
    void holesStayOpen() {
        String svg = MapChart.picture(SampleTract.map(UnitSystem.US)).svg();
        Matcher east = Pattern.compile("<path d=\"M[^\"]* Z M[^\"]* Z\" fill-rule=\"evenodd\"")
                .matcher(svg);
        assertTrue(east.find(), "outline and lake in one path");
        assertTrue(svg.contains("west &amp; north"), "names are escaped");
    }

    /** Contrast of letters on every tint: at least 7 to 1 (WCAG 2.2, success criterion 1.4.6), so that grey prints serve. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void lettersStandOutFromEveryTint(int area) {
        assertTrue(Pages.contrast("#222b26", MapHatch.tint(area)) >= 7, MapHatch.tint(area));
        assertTrue(Pages.contrast("#1d4ed8", MapHatch.tint(area)) >= 4.5, "walk on " + MapHatch.tint(area));
        assertTrue(Pages.contrast("#a23b00", MapHatch.tint(area)) >= 4.5, "start on " + MapHatch.tint(area));
    }

    @Test
    void neighbouringAreasDifferByHatching() {
        for (int i = 1; i < 6; i++) {
            assertFalse(MapHatch.fill(i).equals(MapHatch.fill(i - 1)), "area " + i);
        }
    }

    @Test
    void wordsForThoseWhoCannotSeeIt() {
        Picture picture = MapChart.picture(SampleTract.map(UnitSystem.US));
        assertTrue(picture.altText().contains("24 plots, 2 of them near an edge"), picture.altText());
        assertTrue(picture.altText().contains("2 days"), picture.altText());
        assertTrue(picture.title().contains("north of the grid up"), picture.title());
    }

    /** A point and nothing about it is drawn all the same. */
    @Test
    void aSinglePlotIsDrawn() {
        Point at = new Point(5, 5);
        TractMap map = new TractMap(
                List.of(new Area("a", List.of())),
                List.of(new Site("1", at, Set.of())),
                List.of(),
                new Site("s", at, Set.of()),
                UnitSystem.METRIC);
        Picture picture = MapChart.picture(map);
        assertFalse(picture.svg().contains("NaN"));
        assertFalse(picture.altText().contains("walk"));
        Pages.xml(picture.svg());
    }
}
