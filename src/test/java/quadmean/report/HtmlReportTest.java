package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.chart.ChartSet;
import quadmean.chart.SampleCruise;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Part;
import quadmean.estimate.PlotsNeeded;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tally;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

class HtmlReportTest {

    private static String page(CruiseResult result) throws IOException {
        return Written.text(HtmlReport.of(result));
    }

    /** The page without style and drawings, as a reader sees it. */
    private static String words(String page) {
        return page.replaceAll("(?s)<style>.*?</style>|<script>.*?</script>|<svg.*?</svg>", "")
                .replaceAll("<[^>]+>", " ")
                .replace('\u00a0', ' ')
                .replaceAll("\\s+", " ");
    }

    private static String headline(CruiseResult result) throws IOException {
        String page = page(result);
        return words(page.substring(page.indexOf("<header"), page.indexOf("</header>")));
    }

    /** The reader's rounding worked out apart from ours: to the place of the second digit of the standard error. */
    private static String rounded(double value, double se) {
        int place = new BigDecimal(se).round(new MathContext(2)).scale();
        return String.format(
                Locale.ROOT,
                "%,d",
                new BigDecimal(value).setScale(place, RoundingMode.HALF_UP).longValueExact());
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void headlineAgreesWithJson(UnitSystem units) throws IOException {
        CruiseResult result = SampleCruise.in(units);
        String headline = headline(result);
        JsonNode estimates = EstimateJson.tree(result).get("estimates");
        for (int i = 0; i < 4; i++) { // total and per area, each in both systems
            JsonNode row = estimates.get(i);
            for (String key : List.of("mean", "lower", "upper")) {
                String shown = rounded(row.get(key).asDouble(), row.get("se").asDouble());
                assertTrue(headline.contains(shown), key + " " + shown + " of row " + i + " not in: " + headline);
            }
        }
        JsonNode target = EstimateJson.tree(result).at("/target/attributes/0");
        assertTrue(headline.contains(target.get("more").asInt() + " more plots"), headline);
        assertTrue(headline.contains(target.get("needed").asInt() + " in all"), headline);
        assertTrue(headline.contains("±18.1 %"), headline); // achievedPercent 18.05
        assertTrue(headline.contains("Target missed"), headline);
        assertTrue(headline.contains("95 % confidence limits"), headline);
    }

    @Test
    void headlineSaysWhatTheNumbersAreNot() throws IOException {
        String headline = headline(SampleCruise.us());
        assertTrue(headline.contains("from memory"), headline);
        assertTrue(headline.contains("no appraisal and no scale"), headline);
        assertTrue(headline.contains("do not cover mistakes in measuring"), headline);
    }

    @Test
    void unknownIsADashWithItsReason() throws IOException {
        String empty = headline(SampleCruise.empty());
        assertTrue(empty.contains("–"), empty);
        assertTrue(empty.contains("No confidence limits: no trees were tallied."), empty);
        assertTrue(empty.contains("Target: cannot tell"), empty);
        assertTrue(empty.contains("How many plots would reach it is unknown."), empty);
        assertTrue(words(page(SampleCruise.us())).contains(SampleCruise.REASON));
    }

    @Test
    void everythingFromFilesIsEscaped() throws IOException {
        String page = page(SampleCruise.us());
        assertFalse(page.contains("<b>"), "species code");
        assertFalse(page.contains("<i>"), "value of a problem");
        assertFalse(page.contains("<draft>"), "name of the cruise");
        assertTrue(page.contains("&lt;b&gt;&amp;&quot;"));
        assertTrue(page.contains("made up for a test &amp; nothing else"));
    }

    @Test
    void isOnePageThatNeedsNoNetwork() throws IOException {
        String page = page(SampleCruise.us());
        assertTrue(page.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"));
        String outside = page.replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
        assertFalse(outside.contains("http://") || outside.contains("https://"), "a link to the network");
        assertFalse(outside.contains(" src=") || outside.contains("<link") || outside.contains("@import"));
    }

    @Test
    void headingsAreInOrderAndIdsAreUnique() throws IOException {
        String page = page(SampleCruise.us());
        int level = 0;
        Matcher headings = Pattern.compile("<h([1-6])").matcher(page);
        while (headings.find()) {
            int next = Integer.parseInt(headings.group(1));
            assertTrue(next <= level + 1, "h" + next + " after h" + level);
            level = next;
        }
        List<String> ids = new ArrayList<>();
        Matcher all = Pattern.compile(" id=\"([^\"]+)\"").matcher(page);
        while (all.find()) {
            assertFalse(ids.contains(all.group(1)), "twice: " + all.group(1));
            ids.add(all.group(1));
        }
        Matcher links = Pattern.compile("href=\"#([^\"]+)\"").matcher(page);
        while (links.find()) {
            assertTrue(ids.contains(links.group(1)), "link to nowhere: " + links.group(1));
        }
    }

    @Test
    void accountsForRowsProblemsHeightsAndEquations() throws IOException {
        String words = words(page(SampleCruise.us()));
        assertTrue(words.contains("62 rows read = 60 used + 2 dropped"), words);
        assertTrue(words.contains("height-off-curve"));
        assertTrue(words.contains("Filled from the curve of all species"));
        assertTrue(words.contains("extrapolated"));
        assertTrue(words.contains("combined variable; Spurr 1952"));
        assertTrue(words.contains("Systematic sample within strata, its error estimated as if it were random"));
        assertTrue(words.contains("seed 42"));
        assertTrue(words.contains("Local safety codes"));
        assertTrue(words.contains("check-in"));
    }

    @Test
    void longListsOfProblemsPointToTheFile() throws IOException {
        CruiseResult r = SampleCruise.us();
        Problem one = r.tally().problems().get(0);
        List<Problem> many = new ArrayList<>();
        for (int i = 0; i < 1234; i++) {
            many.add(one);
        }
        Tally tally = new Tally(r.tally().plots(), r.tally().rows(), many);
        String words = words(page(
                SampleCruise.result(r.design(), tally, r.curves(), r.trees(), r.equations(), r.estimate(), List.of())));
        assertTrue(words.contains("The first 200 of 1,234 problems; all are in problems.csv"), words);
    }

    @Test
    void missingChartsLeaveAMessage() throws IOException {
        ChartSet none = new ChartSet(List.of(), "install <fonts>");
        String page = Written.text(HtmlReport.of(SampleCruise.us(), List.of(), none));
        assertTrue(page.contains("install &lt;fonts&gt;"));
        assertFalse(page.contains("<figure"));
    }

    @ParameterizedTest
    @CsvSource({"MET,12,Target met", "MISSED,38,Target missed", "UNKNOWN,-1,Target: cannot tell"})
    void verdictsInWords(PlotsNeeded.Verdict verdict, int needed, String words) {
        PlotsNeeded plots = new PlotsNeeded(
                Attribute.TREES, 9, 12, needed < 0 ? OptionalInt.empty() : OptionalInt.of(needed), verdict);
        assertEquals(words, Headline.verdict(plots));
        String more = Headline.more(plots);
        assertTrue(
                more.startsWith(
                        switch (verdict) {
                            case MET -> "No more plots needed";
                            case MISSED -> "About 26 more plots should reach it, 38 in all";
                            case UNKNOWN -> "How many plots would reach it is unknown";
                        }),
                more);
    }

    @Test
    void methodsFollowTheDesign() throws IOException {
        CruiseResult r = SampleCruise.us();
        String words = words(page(r));
        assertTrue(words.contains("Points with a basal area factor of 19.994 ft²/ac (4.59 m²/ha)"), words);
        assertTrue(words.contains("No correction"), words);
        assertEquals(FinitePopulation.IGNORE, r.design().finitePopulation());
        Design design = r.design();
        assertEquals(Policy.REFUSE, design.policy(Rule.HEIGHT_OFF_CURVE));
        assertTrue(words.contains("the design has the run stop there"), words);
    }

    @Test
    void describesFixedAndNestedPlots() throws IOException {
        PlotDesign fixed = new PlotDesign.Fixed(Unit.ACRE.convert(0.1, Unit.HECTARE));
        String words = words(page(SampleCruise.variant(fixed, Attribute.TREES)));
        assertTrue(words.contains("Plots of 0.1000 ac (0.04047 ha)"), words);
        assertTrue(words.contains("corrected by 1 - n/N"), words);
        assertTrue(words.contains("Satterthwaite 1946"), words);
        assertTrue(words.contains("corrected for a residual standard deviation of 0.05"), words);
        assertTrue(words.contains("set aside and filled from the curve"), words);
        assertFalse(words.contains("By stratum"), words);
        PlotDesign nested =
                new PlotDesign.Nested(List.of(new PlotDesign.Ring(12.7, 0.01), new PlotDesign.Ring(25.4, 0.05)));
        CruiseResult result = SampleCruise.variant(nested, Attribute.VOLUME);
        String rings = words(page(result));
        assertTrue(
                rings.contains("Nested plots: dbh from 5 in (12.7 cm) on 0.02471 ac (0.01000 ha); dbh from 10 in"),
                rings);
        assertTrue(rings.contains("Invented coefficients are made up for demonstration"), rings);
        JsonNode plot = EstimateJson.tree(result).at("/design/plot");
        assertEquals("nested", plot.get("kind").asText());
        assertEquals(10, plot.at("/rings/1/minDbhIn").asDouble(), 1e-12);
        assertEquals(
                "fixed",
                EstimateJson.tree(SampleCruise.variant(fixed, Attribute.TREES))
                        .at("/design/plot/kind")
                        .asText());
    }

    @Test
    void aRatioIsReportedWithoutATotal() throws IOException {
        CruiseResult result = SampleCruise.variant(new PlotDesign.Point(4.59), Attribute.QUADRATIC_MEAN_DIAMETER);
        String headline = headline(result);
        assertTrue(headline.contains("12.49 in of quadratic mean diameter (31.72 cm)"), headline);
        assertTrue(headline.contains("Is it enough Unknown"), headline);
        assertFalse(headline.contains("ft³"), headline);
    }

    @Test
    void aTargetWithoutEstimateSaysSo() throws IOException {
        String headline = headline(SampleCruise.variant(new PlotDesign.Point(4.59), Attribute.BASAL_AREA));
        assertTrue(headline.contains("No estimate."), headline);
    }

    @Test
    void noTreesGiveNoLimits() {
        // a variance of zero from plots that are all empty
        EstimateRow zero = new EstimateRow(
                "*",
                "X",
                Part.ALL,
                Attribute.TREES,
                Basis.TOTAL,
                5,
                4,
                0,
                0,
                Double.NaN,
                0,
                0,
                Double.NaN,
                "no trees here");
        RowText text = RowText.of(SampleCruise.us().design(), zero, UnitSystem.METRIC);
        assertEquals("0\u00a0trees", text.estimate());
        assertEquals("–", text.limits());
        assertEquals("–", text.standardError());
        assertEquals("–", RowText.error(zero));
        assertEquals("", RangeStrip.markup(zero, 10));
    }

    @Test
    void consoleHasTheSameNumbersInPlainSpaces() {
        List<String> lines = ConsoleSummary.of(SampleCruise.us());
        assertEquals("Alder Bench <draft>: 12 plots, 60 trees", lines.get(0));
        assertEquals(
                "volume 436,000 ft³, 95 % limits 357,000 to 515,000 ft³  [volume equations: from memory]",
                lines.get(1));
        assertTrue(
                lines.contains("About 26 more plots should reach it, 38 in all, if they vary like those already run."));
        String empty = String.join("\n", ConsoleSummary.of(SampleCruise.empty()));
        assertTrue(empty.contains("volume –, no limits: no trees were tallied"), empty);
        assertFalse(empty.contains("\u00a0"));
    }

    @Test
    void saysWhoCruisedHowAndWhatCounts() {
        Design design = SampleCruise.us().design();
        String words = FieldworkItems.of(design).toString();
        assertTrue(words.contains("Date: 2024-09-12"), words);
        assertTrue(words.contains("As trees: live, cull. As basal area: live, cull. As volume: live."), words);
        String plots = FieldworkItems.of(SampleCruise.variant(new PlotDesign.Fixed(0.04), Attribute.TREES)
                        .design())
                .toString();
        assertTrue(plots.contains("horizontal distance from the centre"), plots);
    }
}
