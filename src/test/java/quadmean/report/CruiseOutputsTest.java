package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quadmean.chart.ChartSet;
import quadmean.chart.SampleCruise;
import quadmean.model.CurveForm;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.units.UnitSystem;

class CruiseOutputsTest {
    private static final ChartSet NO_CHARTS = new ChartSet(java.util.List.of(), "no charts in this test");

    private static List<NamedCsvRecord> read(String file) throws IOException {
        return read(CruiseOutputs.of(SampleCruise.us(), List.of(), NO_CHARTS).get(file));
    }

    private static List<NamedCsvRecord> read(Content content) throws IOException {
        return CsvReader.builder().ofNamedCsvRecord(Written.text(content)).stream()
                .toList();
    }

    @Test
    void writesTheFilesOfTheHouseInOrder() {
        Map<String, Content> files = CruiseOutputs.of(SampleCruise.us(), List.of(), NO_CHARTS);
        assertEquals(
                List.of(
                        "report.html",
                        "estimate.json",
                        "estimate.schema.json",
                        "estimates.csv",
                        "plot-results.csv",
                        "plot-results.geojson",
                        "trees.csv",
                        "curves.csv",
                        "diameters.csv",
                        "stand-table.csv",
                        "stock-table.csv",
                        "statistics.csv",
                        "plots-needed.csv",
                        "remeasure.html",
                        "remeasure.csv",
                        "problems.csv",
                        "tables.xlsx"),
                new ArrayList<>(files.keySet()));
    }

    @Test
    void estimatesAreUnroundedAndEmptyWhereUnknown() throws IOException {
        List<NamedCsvRecord> rows = read("estimates.csv");
        assertEquals(Double.toString(SampleCruise.TOTAL_M3), rows.get(0).getField("mean"));
        assertEquals("m3", rows.get(0).getField("unit"));
        assertEquals("ft3", rows.get(1).getField("unit"));
        assertEquals("from memory", rows.get(0).getField("equation_standing"));
        NamedCsvRecord unknown = rows.stream()
                .filter(r -> r.getField("stratum").equals("B"))
                .findFirst()
                .orElseThrow();
        assertEquals("", unknown.getField("se"));
        assertEquals("", unknown.getField("upper"));
        assertEquals(SampleCruise.REASON, unknown.getField("reason"));
    }

    @Test
    void treesSayWhereTheirHeightCameFrom() throws IOException {
        List<NamedCsvRecord> rows = read("trees.csv");
        assertEquals(60, rows.size());
        assertEquals("15.0", rows.get(0).getField("dbh_cm"));
        assertEquals("measured", rows.get(0).getField("height_source"));
        assertEquals("no", rows.get(0).getField("extrapolated"));
        // the second tree is thinner than any of its species with a height
        assertEquals("species curve", rows.get(1).getField("height_source"));
        assertEquals("yes", rows.get(1).getField("extrapolated"));
        assertEquals(SampleCruise.NASTY, rows.get(9).getField("species"));
    }

    @Test
    void curvesListEveryFormTried() throws IOException {
        List<NamedCsvRecord> rows = read("curves.csv");
        // every form for all species, ABGR and PSME; one line for the species with too few heights
        assertEquals(3 * CurveForm.values().length + 1, rows.size());
        assertEquals(
                3, rows.stream().filter(r -> r.getField("chosen").equals("yes")).count());
        NamedCsvRecord none = rows.stream()
                .filter(r -> r.getField("species").equals(SampleCruise.NASTY))
                .findFirst()
                .orElseThrow();
        assertEquals("not tried", none.getField("status"));
        assertTrue(none.getField("remark").contains("8 needed"), none.getField("remark"));
        assertTrue(rows.stream()
                .filter(r -> r.getField("chosen").equals("yes"))
                .allMatch(r -> r.getField("status").equals("converged")
                        && !r.getField("se_a").isEmpty()));
    }

    @Test
    void diametersHaveBothUnits() throws IOException {
        NamedCsvRecord first = read("diameters.csv").get(0);
        assertEquals("15.24", first.getField("lower_cm"));
        assertEquals(6, Double.parseDouble(first.getField("lower_in")), 1e-12);
        assertEquals("60.0", first.getField("trees_per_ha"));
    }

    @Test
    void problemsCarryRuleAndRemedy() throws IOException {
        Problem whole = new Problem("t.csv", 0, "", "a,\"b\"\n", Rule.FILE_UNREADABLE, Policy.REFUSE, "not UTF-8");
        NamedCsvRecord row = read(ProblemsCsv.of(List.of(whole))).get(0);
        assertEquals(
                List.of("file", "row", "column", "value", "rule", "policy", "problem", "rule_says", "to_do"),
                row.getHeader());
        assertEquals("", row.getField("row"));
        assertEquals(whole.value(), row.getField("value"));
        assertTrue(whole.value().startsWith("a,\"b\""), "quotes and separators survive");
        assertEquals("file-unreadable", row.getField("rule"));
        assertEquals("refuse", row.getField("policy"));
        assertEquals(Rule.FILE_UNREADABLE.remedy(), row.getField("to_do"));
    }

    @Test
    void nothingBreaksWithoutTrees() throws IOException {
        for (Map.Entry<String, Content> file :
                CruiseOutputs.of(SampleCruise.empty(), List.of(), NO_CHARTS).entrySet()) {
            assertTrue(!Written.text(file.getValue()).isEmpty(), file.getKey());
        }
        assertEquals(Set.of(UnitSystem.METRIC, UnitSystem.US), Set.of(UnitSystem.values()));
    }
}
