package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import quadmean.chart.ChartSet;
import quadmean.chart.CurveCharts;
import quadmean.chart.Picture;
import quadmean.chart.SampleCruise;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CurvesRun;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.height.SpeciesCurve;
import quadmean.model.CurveForm;

/** Curves of the shipped real cruise and of the invented one, as files and on the console. */
class CurveOutputsTest {
    private static CurvesRun.Result idaho;
    private static CurvesRun.Result sample;

    @BeforeAll
    static void curves() throws IOException {
        Design design = DesignReader.read(Path.of("designs/idaho-points.toml")).design();
        idaho = Cruise.curves(java.util.Objects.requireNonNull(design)).result();
        CruiseResult cruise = SampleCruise.us();
        sample = new CurvesRun.Result(
                cruise.design(),
                cruise.trees().stream().map(t -> t.tree()).toList(),
                cruise.curves(),
                List.of(),
                List.of());
    }

    private static String text(CurvesRun.Result result, String file) throws IOException {
        return Written.text(CurveOutputs.of(result, CurveCharts.of(result)).get(file));
    }

    @Test
    void threeFilesThePageFirst() {
        ChartSet none = new ChartSet(List.of(), "no charts in this test");
        assertEquals(
                List.of("curves.html", "curves.json", "curves.csv"),
                new ArrayList<>(CurveOutputs.of(sample, none).keySet()));
    }

    @Test
    void everyCurveOfItsOwnHasTwoCharts() {
        long own =
                idaho.curves().searches().stream().filter(SpeciesCurve::isOwn).count();
        List<Picture> pictures = CurveCharts.of(idaho).pictures();
        assertEquals(2 * own, pictures.size());
        assertEquals(
                pictures.size(), pictures.stream().map(Picture::id).distinct().count());
        assertTrue(
                pictures.get(0).title().startsWith("All species: 231 heights"),
                pictures.get(0).title());
        assertTrue(
                pictures.get(2).title().startsWith("Group true firs: 67 heights"),
                pictures.get(2).title());
        assertFalse(pictures.stream().anyMatch(p -> p.svg().contains("NaN")));
    }

    @Test
    void thePageShowsWhatIsUsedAndNeedsNothingElse() throws IOException {
        String page = text(idaho, "curves.html");
        for (SpeciesCurve search : idaho.curves().searches()) {
            assertTrue(page.contains(Html.escape(search.reason().substring(1))), search.reason());
        }
        for (CurveForm form : CurveForm.values()) {
            assertTrue(page.contains(Html.escape(form.label() + " (" + form.source() + ")")), form.label());
        }
        assertTrue(page.contains("<svg"));
        assertFalse(page.contains(" src=") || page.contains("href=\"http"));
        String nasty = text(sample, "curves.html");
        assertFalse(nasty.contains(SampleCruise.NASTY), "species code");
    }

    @Test
    void jsonHasTheLeagueTablesWithMarksForWhatIsFromMemory() throws IOException {
        JsonNode root = new ObjectMapper().readTree(text(idaho, "curves.json"));
        assertEquals("equal", root.get("weights").asText());
        assertEquals(idaho.curves().searches().size(), root.get("curves").size());
        JsonNode group = root.at("/curves/1");
        assertEquals("group", group.get("scope").asText());
        assertEquals(CurveForm.values().length, group.get("fits").size());
        for (JsonNode fit : group.get("fits")) {
            CurveForm form = List.of(CurveForm.values()).stream()
                    .filter(f -> f.id().equals(fit.get("form").asText()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(form.source(), fit.get("source").asText());
            assertTrue(fit.get("leaveOneOutError").asDouble() > 3, fit.toString());
        }
        JsonNode firs = root.at("/curves").findParents("calibration").get(0);
        assertEquals("DF", firs.get("species").asText());
        assertTrue(firs.at("/calibration/plotEffects").size() > 1);
        assertTrue(firs.at("/calibration/outcome").asText().endsWith("not used"));
        JsonNode ratio = root.at("/curves").findValue("speciesRatio");
        assertTrue(
                ratio.get("heights").asInt() >= 3 && ratio.get("standardError").asDouble() > 0, ratio.toString());
    }

    @Test
    void adviceIsOnThePageAndInJsonWithItsTrees() throws IOException {
        String page = text(idaho, "curves.html");
        JsonNode root = new ObjectMapper().readTree(text(idaho, "curves.json"));
        assertEquals(idaho.more().size(), root.get("moreHeights").size());
        for (JsonNode species : root.get("moreHeights")) {
            double before = species.get("errorPercent").asDouble();
            for (JsonNode step : species.get("steps")) {
                assertTrue(page.contains("<td>" + step.get("tree").asText() + "</td>"), step.toString());
                assertTrue(step.get("errorPercent").asDouble() < before, step.toString());
                before = step.get("errorPercent").asDouble();
            }
        }
        assertFalse(text(sample, "curves.html").contains("Trees to measure next"), "nothing was asked for");
        assertEquals(idaho.plan().size(), root.get("heightPlan").size());
        JsonNode cedar = root.get("heightPlan").get(2);
        assertEquals("WC", cedar.get("species").asText());
        assertEquals(40, cedar.get("steps").size());
        String tenth = String.format(
                java.util.Locale.ROOT, "%.2f", cedar.at("/steps/9/errorPercent").asDouble());
        assertTrue(
                page.contains("<th scope=\"row\">WC</th><td class=\"num\">10</td><td class=\"num\">" + tenth), tenth);
    }

    /** Best first; forms without an optimum last and with their reason. */
    @Test
    void theConsoleShowsTheLeagueInOrder() {
        List<String> lines = CurveSummary.of(idaho);
        int firs = lines.indexOf(
                lines.stream().filter(l -> l.startsWith("WL: ")).findFirst().orElseThrow());
        List<String> league = lines.subList(firs + 3, firs + 3 + CurveForm.values().length);
        assertTrue(league.get(0).endsWith("converged, chosen"), league.get(0));
        double before = 0;
        for (String line : league) {
            String error = line.substring(22, 35).strip();
            double value = error.equals("-") ? Double.POSITIVE_INFINITY : Double.parseDouble(error);
            assertTrue(value >= before, line);
            before = value;
        }
        assertTrue(league.get(league.size() - 1).contains("did not converge: "), league.toString());
        assertTrue(lines.stream().anyMatch(l -> l.startsWith("All species: ")));
        List<String> advice = lines.stream()
                .filter(l -> l.contains("filled heights put the sum off"))
                .toList();
        assertEquals(idaho.more().size(), advice.size());
        assertTrue(advice.get(0).startsWith("  DF: "), advice.get(0));
        assertTrue(lines.stream().anyMatch(l -> l.startsWith("Group true firs: ")));
    }
}
