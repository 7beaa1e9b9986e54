package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.chart.ChartSet;
import quadmean.cruise.EstateResult;
import quadmean.estimate.EstimateRow;
import quadmean.support.SmallEstate;
import quadmean.support.Tolerance;
import quadmean.units.Unit;

/** The tables of an estate, read again by the CSV library. */
class EstateOutputsTest {
    private static final ChartSet NO_CHARTS = new ChartSet(List.of(), "no charts in this test");
    private static final Content NO_PROBLEMS = ProblemsCsv.of(List.of());

    private static EstateResult shipped;

    @TempDir
    Path folder;

    @BeforeAll
    static void work() throws IOException {
        shipped = SmallEstate.run(Path.of("designs/estate.toml"));
    }

    private static Map<String, Content> files(EstateResult result) {
        return EstateOutputs.of(result, result.spread(), NO_CHARTS, NO_PROBLEMS);
    }

    private static List<NamedCsvRecord> read(EstateResult result, String file) throws IOException {
        return CsvReader.builder().ofNamedCsvRecord(Written.text(files(result).get(file))).stream()
                .toList();
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }

    @Test
    void writesTheFilesOfAnEstateInOrder() {
        assertEquals(
                List.of(
                        "report.html",
                        "estimate.json",
                        "estate.schema.json",
                        "estimates.csv",
                        "stands.csv",
                        "stand-species.csv",
                        "curves.csv",
                        "problems.csv"),
                new ArrayList<>(files(shipped).keySet()));
        assertEquals(EstateOutputs.NAMES, new ArrayList<>(files(shipped).keySet()));
    }

    @Test
    void estimatesHaveEveryRowInBothSystems() throws IOException {
        List<NamedCsvRecord> rows = read(shipped, "estimates.csv");
        assertEquals(2 * shipped.estimate().rows().size(), rows.size());
        EstimateRow first = shipped.estimate().rows().get(0);
        assertEquals(Double.toString(first.mean()), rows.get(0).getField("mean"));
        Tolerance.ROUNDING.check(
                Unit.TREES_PER_HECTARE.convert(first.mean(), Unit.TREES_PER_ACRE),
                number(rows.get(1), "mean"),
                "in US units");
        assertTrue(rows.stream()
                .filter(r -> r.getField("attribute").equals("volume"))
                .allMatch(r -> r.getField("equation_standing").equals("from memory")));
    }

    /** A stand is a row, in the order of the table, those without plots too. */
    @Test
    void standsAreAllThere() throws IOException {
        List<NamedCsvRecord> rows = read(shipped, "stands.csv");
        assertEquals(40, rows.size());
        assertEquals("H01", rows.get(0).getField("stand"));
        assertEquals("no plots", rows.get(30).getField("reason"));
        assertEquals("", rows.get(30).getField("volume_ft3_per_ac"));
        assertEquals("", rows.get(12).getField("volume_ft3_per_ac_se"), "a single plot");
        assertTrue(
                rows.get(12).getField("reason").contains("a single plot"),
                rows.get(12).getField("reason"));
    }

    /** What is by species adds up to the stand, and the stands to the estate. */
    @Test
    void partsAddUp() throws IOException {
        List<NamedCsvRecord> stands = read(shipped, "stands.csv");
        List<NamedCsvRecord> species = read(shipped, "stand-species.csv");
        double estate = 0;
        for (NamedCsvRecord stand : stands) {
            double sum = species.stream()
                    .filter(r -> r.getField("stand").equals(stand.getField("stand")))
                    .mapToDouble(r -> number(r, "volume_total_ft3"))
                    .sum();
            if (!stand.getField("plots").equals("0")) {
                Tolerance.ROUNDING.check(number(stand, "volume_total_ft3"), sum, stand.getField("stand"));
            }
            estate += sum;
        }
        double whole = read(shipped, "estimates.csv").stream()
                .filter(r -> r.getField("stratum").equals("*")
                        && r.getField("species").equals("*")
                        && r.getField("unit").equals("ft3"))
                .mapToDouble(r -> number(r, "mean"))
                .findFirst()
                .orElseThrow();
        Tolerance.ROUNDING.check(whole, estate, "estate");
    }

    @Test
    void speciesOfAStandHaveTheirOwnErrors() throws IOException {
        NamedCsvRecord row = read(new SmallEstate().result(folder), "stand-species.csv").stream()
                .filter(r ->
                        r.getField("stand").equals("B") && r.getField("species").equals("ABGR"))
                .findFirst()
                .orElseThrow();
        // one tree on one of three plots of 0.05 ha: 20, 0 and 0 to the hectare
        Tolerance.ROUNDING.check(20.0 / 3, number(row, "trees_trees_per_ha"), "mean");
        Tolerance.ROUNDING.check(20.0 / 3, number(row, "trees_trees_per_ha_se"), "s/√3, s² = 400/3");
        Tolerance.ROUNDING.check(200, number(row, "trees_total_trees"), "on 30 ha");
    }

    @Test
    void errorsOfASinglePlotAreEmpty() throws IOException {
        NamedCsvRecord row = read(new SmallEstate().result(folder), "stand-species.csv").stream()
                .filter(r -> r.getField("stand").equals("C"))
                .findFirst()
                .orElseThrow();
        assertEquals("20.0", row.getField("trees_trees_per_ha"));
        assertEquals("", row.getField("trees_trees_per_ha_se"));
    }

    @Test
    void noTextIsTakenForAFormula() throws IOException {
        EstateResult result = new SmallEstate()
                .withStands("A,10,R,old", "=A,10,R,@old")
                .withTally("A,", "=A,")
                .result(folder);
        assertEquals("'=A", read(result, "stands.csv").get(0).getField("stand"));
        assertEquals("'@old", read(result, "stands.csv").get(0).getField("stratum"));
        assertEquals("'=A", read(result, "stand-species.csv").get(0).getField("stand"));
    }
}
