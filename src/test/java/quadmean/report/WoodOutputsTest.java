package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.SmallWoodlot;

/** What the outputs say of wood; the numbers are those of {@code WoodByHandTest}. */
class WoodOutputsTest {
    private static final SmallWoodlot LOT = new SmallWoodlot();

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Board feet by the log rule Doyle: V = ((D - 4)/4)²·L",
                "rounded to the nearest inch",
                "Stump 0.5 ft, trim 0.5 ft a log",
                "SAW (sawlogs), lengths 16 ft, small end inside bark from 8 in, less 5\u00a0% hidden defect",
                "PULP (PULP), lengths 8 ft, small end inside bark from 4 in, cubic volume alone",
                "Net is gross less the defect tallied on the tree and that of its product.",
                "Net board feet per acre (bf/ac)",
                "Net log volume, total (ft³)",
                "Value of logs per acre (EUR/ac)",
                "no appraisal: nothing is taken off for felling",
                "Prices in EUR: made up (invented)",
                "prices, log rule and stem profiles: invented",
                "Green weight, total (ton)",
                "Logs and board feet are another matter"
            })
    void theReportSays(String words) throws IOException {
        String page = Written.text(HtmlReport.of(LOT.run(folder)));
        assertTrue(page.contains(words), words);
    }

    @Test
    void moneyStandsInItsCurrencyEverywhere() throws IOException {
        var result = LOT.with("area = 40", "area = 40\ntarget_attribute = \"value\"")
                .with("\"EUR\"", "\"<kr>\"")
                .run(folder);
        String page = Written.text(HtmlReport.of(result));
        assertTrue(page.contains("&lt;kr&gt;/ac"));
        assertFalse(page.contains("<kr>") || page.contains("$/ac") || page.contains("\u00a0$"));
        assertTrue(Written.text(EstimatesCsv.of(ShownRows.of(result))).contains(",value,total,<kr>,"));
        assertTrue(ConsoleSummary.of(result).stream().anyMatch(l -> l.contains("<kr>/ac")));
    }

    @Test
    void theHeadlineNamesWhatStandsBehindTheTarget() throws IOException {
        String page =
                Written.text(HtmlReport.of(LOT.with("area = 40", "area = 40\ntarget_attribute = \"net_board_feet\"")
                        .run(folder)));
        assertTrue(page.contains("Log rule and stem profiles in use: invented"));
        assertTrue(page.contains("of net board feet on the whole stand"));
    }

    /** Seven, four and five logs; lengths and heights are those of the design, not near it. */
    @Test
    void logsHaveALineEach() throws IOException {
        List<String> lines = Written.text(LogsCsv.of(LOT.run(folder))).lines().toList();
        assertEquals(1 + 7 + 4 + 5, lines.size());
        List<String> header = Arrays.asList(lines.get(0).split(","));
        assertEquals(24, header.size());
        String[] third = lines.get(3).split(",", -1);
        assertEquals(24, third.length);
        assertEquals("33.5", third[header.indexOf("from_ft")]);
        assertEquals("10.2108", third[header.indexOf("from_m")]);
        assertEquals("16.0", third[header.indexOf("length_ft")]);
        assertEquals("SAW", third[header.indexOf("product")]);
        assertEquals(49, Double.parseDouble(third[header.indexOf("gross_bf")]));
        // 2581.12·π/576 ft³, of which 0.9·0.95 is sound; 49 bf at 500 a thousand
        assertEquals(0.855 * 2581.12 * Math.PI / 576, Double.parseDouble(third[header.indexOf("net_ft3")]), 1e-9);
        assertEquals(0.855 * 24.5, Double.parseDouble(third[header.indexOf("value_eur")]), 1e-9);
    }

    @Test
    void treesHaveTheirBoardFeetAndLogs() throws IOException {
        List<String> lines = Written.text(TreesCsv.of(LOT.run(folder))).lines().toList();
        List<String> header = Arrays.asList(lines.get(0).split(","));
        String[] first = lines.get(1).split(",", -1);
        assertEquals("345.0", first[header.indexOf("board_feet")]);
        assertEquals("7", first[header.indexOf("logs")]);
        assertEquals(10, Double.parseDouble(first[header.indexOf("defect_percent")]), 1e-12);
    }

    @Test
    void jsonHasRowsByProductAndLogAndWhatTheyWereWorkedOutWith() throws IOException {
        JsonNode root = new ObjectMapper().readTree(Written.text(EstimateJson.of(LOT.run(folder))));
        boolean product = false;
        boolean place = false;
        for (JsonNode row : root.get("estimates")) {
            product |= row.get("product").asText().equals("SAW")
                    && row.get("unit").asText().equals("EUR/ac");
            place |= row.get("log").asText().equals("7")
                    && row.get("unit").asText().equals("bf/ac");
        }
        assertTrue(product && place);
        assertEquals("doyle", root.at("/wood/logs/scaling/rule").asText());
        assertEquals("nearest_inch", root.at("/wood/logs/scaling/diameters").asText());
        assertEquals(0.1524, root.at("/wood/logs/trimM").asDouble(), 1e-12);
        assertEquals("PULP", root.at("/wood/logs/products/1/code").asText());
        assertEquals("cubic", root.at("/wood/logs/products/1/measure").asText());
        assertEquals("ABGR", root.at("/wood/tapers/0/species").asText());
        assertEquals(1, root.at("/wood/tapers/0/coefficients/p").asDouble());
        assertEquals("EUR", root.at("/wood/prices/currency").asText());
        assertEquals("invented", root.at("/wood/prices/standing").asText());
        assertEquals(500, root.at("/wood/prices/prices/0/amount").asDouble());
        assertEquals(
                "common practice, no source", root.at("/wood/carbon/source").asText());
        assertTrue(root.at("/wood/statement").size() > 3);
    }

    @Test
    void withoutWoodJsonHasAnEmptyTable() throws IOException {
        var result = quadmean.chart.SampleCruise.us();
        assertEquals(
                0,
                new ObjectMapper()
                        .readTree(Written.text(EstimateJson.of(result)))
                        .get("wood")
                        .size());
    }
}
