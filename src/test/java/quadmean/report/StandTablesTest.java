package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import quadmean.chart.SampleCruise;
import quadmean.support.Tolerance;

/** Stand and stock tables and stand statistics on the page and in files. */
class StandTablesTest {
    @Test
    void aTableHasALineForEachClassAndOneForAll() {
        String page = ClassTables.markup(SampleCruise.us());
        assertTrue(page.contains("Trees per acre (trees/ac) by dbh class and species"), page);
        assertTrue(page.contains("<span class=\"whole\">6–8</span>"), page);
        // 60 trees/ha ± 15 are 24.28 ± 6.07 trees/ac; sampling error 55.7 %
        assertTrue(page.contains("24.3<small>±55.7 %</small>"), page);
        assertTrue(
                page.contains("<span class=\"whole\">24–26</span></th><td class=\"num\">0</td>"),
                "an empty class is 0");
        assertTrue(page.contains("<th scope=\"row\">All</th>"), page);
        assertFalse(page.contains(SampleCruise.NASTY), "species codes are escaped");
        assertEquals("", ClassTables.markup(SampleCruise.empty()));
    }

    @Test
    void statisticsSayHowTheyAreMade() {
        String page = StatisticSection.markup(SampleCruise.us());
        assertTrue(page.contains("<th scope=\"row\">Lorey height</th><td class=\"num\">70.2 ft</td>"), page);
        assertTrue(page.contains("<dt>Lorey height</dt>\n<dd>Σwgh/Σwg (Lorey 1878, from memory).</dd>"), page);
        assertTrue(page.contains("Relative density, Curtis [1]"), page);
        // formulary: 2.124233 metric is 14.747111 imperial
        assertTrue(page.contains("14.7 ft²/ac/√in"), page);
        assertTrue(page.contains("[1] no error &lt;here&gt;."), page);
        assertEquals("", StatisticSection.markup(SampleCruise.empty()));
    }

    @Test
    void filesHaveBothUnitSystemsAndTheLineForAll() throws IOException {
        List<NamedCsvRecord> stand = read(StandTableCsv.stand(SampleCruise.us()));
        NamedCsvRecord metric = stand.get(2);
        assertEquals("PSME", metric.getField("species"));
        assertEquals("60.0", metric.getField("mean"));
        assertEquals("15.0", metric.getField("se"));
        assertEquals("trees/ac", stand.get(3).getField("unit"));
        Tolerance.ROUNDING.check(
                60 * 0.40468564224, Double.parseDouble(stand.get(3).getField("mean")), "trees per acre");
        assertEquals("310.4", stand.get(stand.size() - 2).getField("mean"));
        assertEquals("*", stand.get(stand.size() - 2).getField("lower_cm"));
        List<NamedCsvRecord> stock = read(StandTableCsv.stock(SampleCruise.us()));
        assertTrue(stock.stream().allMatch(r -> r.getField("attribute").equals("volume")));
        List<NamedCsvRecord> statistics = read(StatisticsCsv.of(SampleCruise.us()));
        assertEquals("lorey_height", statistics.get(0).getField("statistic"));
        assertEquals("21.4", statistics.get(0).getField("value"));
        assertEquals("ft2/ac/in^0.5", statistics.get(3).getField("unit"));
        // metric and imperial differ by 4.356·√2.54 = 6.9423 (by definition)
        Tolerance.ROUNDING.check(
                2.124233 * 4.356 * Math.sqrt(2.54),
                Double.parseDouble(statistics.get(3).getField("value")),
                "imperial");
        assertEquals("", statistics.get(3).getField("se"));
    }

    @Test
    void jsonHasEveryNumber() throws IOException {
        JsonNode root = new ObjectMapper().readTree(Written.text(EstimateJson.of(SampleCruise.us())));
        JsonNode first = root.at("/standTable/0");
        assertEquals("*", first.get("species").asText());
        assertEquals(15.24, first.get("lowerCm").asDouble());
        // classes with trees only, no line of all species: they may be added up
        assertTrue(StreamSupport.stream(root.get("diameterClasses").spliterator(), false)
                .allMatch(c -> !c.get("species").asText().equals("*")
                        && c.get("treesPerHa").asDouble() > 0));
        assertEquals(15, root.at("/diameterClasses/0/sePerHa").asDouble());
        assertEquals("Lorey height", root.at("/statistics/0/name").asText());
        assertTrue(root.at("/statistics/2/se").isNull());
        assertEquals("no error <here>", root.at("/statistics/2/reason").asText());
    }

    private static List<NamedCsvRecord> read(Content content) throws IOException {
        return CsvReader.builder().ofNamedCsvRecord(Written.text(content)).stream()
                .toList();
    }
}
