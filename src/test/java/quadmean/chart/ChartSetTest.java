package quadmean.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.ClassRow;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Part;
import quadmean.estimate.RunningMean;
import quadmean.estimate.StandEstimate;
import quadmean.height.HeightedTree;
import quadmean.support.Pages;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

class ChartSetTest {

    private static Document parse(Picture picture) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(picture.svg().getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void drawsAllChartsAsXmlThatScales(UnitSystem units) throws Exception {
        ChartSet charts = ChartSet.of(SampleCruise.in(units));
        assertEquals("", charts.missing());
        assertEquals(
                List.of(
                        "estimate-by-species",
                        "estimate-by-stratum",
                        "running-mean",
                        "heights",
                        "residuals",
                        "diameters"),
                charts.pictures().stream().map(Picture::id).toList());
        for (Picture picture : charts.pictures()) {
            Document svg = parse(picture);
            assertEquals("svg", svg.getDocumentElement().getTagName());
            assertEquals("0 0 600 420", svg.getDocumentElement().getAttribute("viewBox"));
            assertEquals("", svg.getDocumentElement().getAttribute("width"), "a fixed width would not scale");
            assertFalse(picture.svg().contains("NaN"), picture.id());
        }
    }

    @Test
    void idsDoNotCollideAcrossCharts() throws Exception {
        Set<String> seen = new HashSet<>();
        for (Picture picture : ChartSet.of(SampleCruise.us()).pictures()) {
            NodeList clips = parse(picture).getElementsByTagName("clipPath");
            for (int i = 0; i < clips.getLength(); i++) {
                String id = clips.item(i).getAttributes().getNamedItem("id").getNodeValue();
                assertTrue(id.startsWith(picture.id()) && seen.add(id), id);
                assertTrue(picture.svg().contains("url(#" + id + ")"), id);
            }
        }
        assertFalse(seen.isEmpty());
    }

    @Test
    void titlesGiveTheUnitSystemAndExplainTheWhiskers() {
        Picture species = ChartSet.of(SampleCruise.us()).pictures().get(0);
        assertTrue(species.title().contains("per acre"), species.title());
        assertTrue(species.title().contains("95\u00a0% confidence limits"), species.title());
        assertTrue(species.title().contains("from memory"), species.title());
        assertTrue(species.altText().contains(SampleCruise.NASTY), species.altText());
    }

    @Test
    void drawsTheSameTwice() {
        CruiseResult result = SampleCruise.us();
        List<Picture> first = ChartSet.of(result).pictures();
        List<Picture> second = ChartSet.of(result).pictures();
        assertEquals(first.size(), second.size());
        for (int i = 0; i < first.size(); i++) {
            assertEquals(first.get(i).svg(), second.get(i).svg());
            assertArrayEquals(
                    first.get(i).raster().orElseThrow().png(),
                    second.get(i).raster().orElseThrow().png());
        }
    }

    /** The file holds what the page shows: as wide to its height, and not a blank. */
    @Test
    void pixelsHaveTheShapeOfTheDrawing() throws Exception {
        for (Picture picture : ChartSet.of(SampleCruise.us()).pictures()) {
            BufferedImage image = ImageIO.read(
                    new ByteArrayInputStream(picture.raster().orElseThrow().png()));
            assertEquals(1200, image.getWidth());
            assertEquals(840, image.getHeight());
            long colours = IntStream.range(0, 1200 * 840)
                    .map(i -> image.getRGB(i % 1200, i / 1200))
                    .distinct()
                    .count();
            assertTrue(colours > 10, picture.id());
        }
    }

    @Test
    void drawsNothingOfNothing() {
        ChartSet charts = ChartSet.of(SampleCruise.empty());
        assertEquals(List.of(), charts.pictures());
        assertEquals("", charts.missing());
    }

    @Test
    void saysWhatToInstallWhereFontsAreMissing() {
        // what AWT throws without fontconfig, by kind
        List<Throwable> kinds = List.of(
                new InternalError("Fontconfig head is null"),
                new UnsatisfiedLinkError("libfreetype.so.6"),
                new ExceptionInInitializerError("fonts"),
                new NoClassDefFoundError("sun.font.SunFontManager"));
        for (Throwable kind : kinds) {
            ChartSet charts = ChartSet.drawn(() -> {
                throw (Error) kind;
            });
            assertEquals(List.of(), charts.pictures());
            assertTrue(charts.missing().contains("apt-get install fontconfig fonts-dejavu-core"));
        }
        Error plain = new Error("Probable fatal error: No physical fonts found.");
        plain.setStackTrace(new StackTraceElement[] {new StackTraceElement("sun.font.SunFontManager", "x", "f", 1)});
        assertFalse(ChartSet.drawn(() -> {
                    throw plain;
                })
                .missing()
                .isEmpty());
        NullPointerException inside = new NullPointerException();
        inside.setStackTrace(new StackTraceElement[] {new StackTraceElement("sun.awt.FontConfiguration", "x", "f", 1)});
        assertFalse(ChartSet.drawn(() -> {
                    throw inside;
                })
                .missing()
                .isEmpty());
    }

    @Test
    void doesNotHideDefectsOfItsOwn() {
        assertThrows(
                IllegalStateException.class,
                () -> ChartSet.drawn(() -> {
                    throw new IllegalStateException("ours");
                }));
    }

    @Test
    void speciesKeepTheirColour() {
        SpeciesColours colours = SpeciesColours.of(SampleCruise.us());
        assertEquals(List.of(SampleCruise.NASTY, "ABGR", "PSME"), colours.codes());
        assertEquals("#005a8c", colours.hex(SampleCruise.NASTY));
        assertNotEquals(colours.hex("ABGR"), colours.hex("PSME"));
        assertEquals("#6e6e6e", colours.hex("none of them"));
    }

    /** Neighbours in a stack differ in lightness by a fifth of the way from black to white (CIE L*), as a grey print shows them. */
    @Test
    void neighboursStayApartInGrey() {
        List<Color> hues = SpeciesColours.hues();
        for (int i = 1; i < hues.size(); i++) {
            double apart = Math.abs(lightness(hues.get(i)) - lightness(hues.get(i - 1)));
            assertTrue(apart > 20, hues.get(i - 1) + " and " + hues.get(i) + ": " + apart);
        }
    }

    /** CIE 1976 lightness, 0 to 100. */
    private static double lightness(Color colour) {
        double y = Pages.luminance(String.format("#%06x", colour.getRGB() & 0xFFFFFF));
        return y > 216.0 / 24389 ? 116 * Math.cbrt(y) - 16 : y * 24389 / 27;
    }

    @Test
    void wordsOfNumbers() {
        assertEquals("95\u00a0%", Wording.confidence(0.95));
        assertEquals("68.3\u00a0%", Wording.confidence(0.683));
        assertEquals("0", Wording.plain(0));
        assertEquals("9.9999999", Wording.plain(9.9999999));
        assertEquals("12,000", Drawing.tick(12000));
        assertEquals("0.25", Drawing.tick(0.25));
        assertEquals("1.619", Drawing.tick(1.6187426));
        assertEquals("0", Drawing.tick(0));
    }

    @Test
    void legendOfManySpeciesStandsBesideTheChart() throws Exception {
        CruiseResult r = SampleCruise.us();
        List<ClassRow> classes = new ArrayList<>();
        List<EstimateRow> rows = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            String code = "a species with a long code " + (i < 10 ? "0" : "") + i;
            classes.add(SampleCruise.trees(10, 15, code, 10 + i));
            rows.add(new EstimateRow(
                    "*", code, Part.ALL, Attribute.VOLUME, Basis.PER_AREA, 9, 8, 10, 2, 60, 5.4, 14.6, 46, ""));
        }
        StandEstimate estimate = new StandEstimate(
                0.95,
                rows,
                List.of(),
                SampleCruise.structure(classes),
                r.estimate().needed(),
                List.of());
        List<Picture> pictures = ChartSet.of(SampleCruise.result(
                        r.design(), r.tally(), r.curves(), r.trees(), r.equations(), estimate, List.of()))
                .pictures();
        assertEquals(
                List.of("estimate-by-species", "heights", "residuals", "diameters"),
                pictures.stream().map(Picture::id).toList());
        // taller than the usual 420, so that twenty entries fit
        String box = parse(pictures.get(3)).getDocumentElement().getAttribute("viewBox");
        assertTrue(Double.parseDouble(box.split(" ")[3]) > 600, box);
        // cut to fourteen characters, yet all distinct
        assertTrue(
                pictures.get(0).altText().contains("a species wit… (2)"),
                pictures.get(0).altText());
    }

    @Test
    void manyHeightsAreThinnedAndTheTitleSaysSo() {
        CruiseResult r = SampleCruise.us();
        List<HeightedTree> many = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            many.addAll(r.trees());
        }
        Picture heights = ChartSet.of(SampleCruise.result(
                        r.design(), r.tally(), r.curves(), many, r.equations(), r.estimate(), List.of()))
                .pictures()
                .get(3);
        // 39 of the 60 trees have field heights; 3900 thinned by 2 is 1950, the limit being 2000
        assertTrue(heights.title().contains("1950 of 3900 shown"), heights.title());
    }

    @Test
    void drawsTheLeastThereCanBe() {
        CruiseResult r = SampleCruise.us();
        EstimateRow zero = new EstimateRow(
                "*",
                "PSME",
                Part.ALL,
                Attribute.VOLUME,
                Basis.PER_AREA,
                2,
                1,
                0,
                0,
                Double.NaN,
                0,
                0,
                Double.NaN,
                "no trees");
        for (double mean : new double[] {0, 12}) {
            StandEstimate estimate = new StandEstimate(
                    0.95,
                    List.of(zero),
                    List.of(new RunningMean(1, "1", mean, Double.NaN, Double.NaN)),
                    SampleCruise.structure(List.of(SampleCruise.trees(10, 15, "PSME", mean))),
                    r.estimate().needed(),
                    List.of());
            List<HeightedTree> one = r.trees().subList(0, 1);
            List<Picture> pictures = ChartSet.of(SampleCruise.result(
                            r.design(), r.tally(), r.curves(), one, r.equations(), estimate, List.of()))
                    .pictures();
            // one step makes no line; without trees in any class there is nothing to stack
            assertEquals(mean == 0 ? 3 : 4, pictures.size());
            pictures.forEach(p -> assertFalse(p.svg().contains("NaN"), p.id()));
        }
    }

    @Test
    void manyClassesAreDrawn() {
        CruiseResult r = SampleCruise.us();
        List<ClassRow> classes = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            classes.add(SampleCruise.trees(i, i + 1, "PSME", 1 + i));
        }
        StandEstimate estimate = new StandEstimate(
                0.95,
                List.of(),
                List.of(),
                SampleCruise.structure(classes),
                r.estimate().needed(),
                List.of());
        assertEquals(
                List.of("heights", "residuals", "diameters"),
                ChartSet.of(SampleCruise.result(
                                r.design(), r.tally(), r.curves(), r.trees(), r.equations(), estimate, List.of()))
                        .pictures()
                        .stream()
                        .map(Picture::id)
                        .toList());
    }
}
