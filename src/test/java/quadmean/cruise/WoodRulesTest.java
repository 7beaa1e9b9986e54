package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.estimate.EstimateRow;
import quadmean.support.SmallWoodlot;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.volume.CutLog;

/** Which trees and which part of them give logs. */
class WoodRulesTest {
    private static final SmallWoodlot LOT = new SmallWoodlot();
    private static final String TREE = "1,1,PSME,20,104.5,,,,,,,10";

    @TempDir
    private Path folder;

    /**
     * Of tree 1-1 three sawlogs with their trim end at 50 ft; a hair lower there is room for pulpwood alone. Two counted
     * logs end, each with its trim, at 33.5 ft; one and a half at 0.5 + 24 + 2·0.5 = 25.5 ft.
     */
    @ParameterizedTest
    @CsvSource({
        "merchantable height, '50,,,,,,10', SAW SAW SAW",
        "a hair less, '49.9,,,,,,10', SAW SAW PULP",
        "two counted logs, ',2,,,,,10', SAW SAW",
        "one and a half, ',1.5,,,,,10', SAW PULP",
        "no log counted, ',0,,,,,10', ''",
        "the lower of both, '33.5,3,,,,,10', SAW SAW",
        "the whole stem, ',,,,,,10', SAW SAW SAW PULP PULP PULP PULP"
    })
    void merchantableHeightAndCountedLogsEndTheLogs(String what, String cells, String products) {
        CruiseResult result = LOT.where(TREE, "1,1,PSME,20,104.5," + cells).run(folder);
        List<CutLog> logs = result.wood().get(0).logs();
        assertEquals(products, logs.stream().map(CutLog::product).collect(Collectors.joining(" ")), what);
    }

    /** A tree broken at 50 ft is as thick below the break as a whole one of the height that the curve gives. */
    @Test
    void aBrokenStemEndsAtTheBreakAndTapersAsIfItWereWhole() {
        SmallWoodlot broken = LOT.where("1,2,ABGR,10,54.5,,,,,,,", "1,99,PSME,16,50,,,,,yes,,")
                .where("2,1,PSME,16,84.5,,,,,,,\n", heights());
        CruiseResult result = broken.run(folder);
        int at = index(result, "99");
        List<CutLog> logs = result.wood().get(at).logs();
        assertTrue(logs.stream().allMatch(l -> l.fromM() + l.lengthM() < 50 * 0.3048));
        double whole = result.curves()
                .fill(result.trees().get(at).tree().withoutHeight())
                .heightM();
        assertTrue(whole > 70 * 0.3048, "the curve gives a whole tree's height");
        CutLog butt = logs.get(0);
        double expected = 16 * 2.54 * (whole - butt.fromM()) / (whole - 4.5 * 0.3048);
        assertEquals(expected, butt.largeEndCm(), 1e-9);
    }

    /** Twelve whole trees on a smooth curve, so that the species has one. */
    private static String heights() {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 12; i++) {
            double dbh = 8 + i;
            double height = 4.5 + dbh * dbh / Math.pow(0.6 + 0.07 * dbh, 2) + (i % 3 - 1) * 0.5;
            rows.append(String.format(java.util.Locale.ROOT, "2,%d,PSME,%.1f,%.1f,,,,,,,%n", i + 1, dbh, height));
        }
        return rows.toString();
    }

    /** Of tree 1-1 with a status: whether it counts in biomass, as trees do, and in what is made of volume. */
    @ParameterizedTest
    @CsvSource({"live, true, true", "cull, true, false", "dead, false, false", "snag, false, false"})
    void statusDecidesInWhatATreeCounts(String status, boolean biomass, boolean volume) {
        CruiseResult result =
                LOT.where(TREE, "1,1,PSME,20,104.5,,,," + status + ",,,10").run(folder);
        assertEquals(biomass, result.wood().get(0).dryKg() > 0);
        assertEquals(volume, result.wood().get(0).volumeM3() > 0);
        assertEquals(volume ? 7 : 0, result.wood().get(0).logs().size());
        // without tree 1-1 what is left of Doyle is tree 2-1's 136 bf, 10 trees an acre, on one of two plots
        assertEquals(
                (volume ? 3450 + 1360 : 1360) / 2.0,
                row(result, Attribute.BOARD_FEET).mean() * 0.40468564224,
                1e-6);
    }

    @Test
    void countedStatusesAreAChoice() {
        CruiseResult result = LOT.where(TREE, "1,1,PSME,20,104.5,,,,dead,,,10")
                .plus("[output]\ncounts_volume = [\"live\", \"dead\"]")
                .run(folder);
        assertEquals(7, result.wood().get(0).logs().size());
        assertEquals(0, result.wood().get(0).dryKg());
    }

    @Test
    void treesUnderTheMerchantableDbhHaveBiomassAndNoLogs() {
        CruiseResult result = LOT.plus("[output]\nmerchantable_dbh = 12").run(folder);
        assertEquals(0, result.wood().get(1).logs().size());
        assertTrue(result.wood().get(1).dryKg() > 0);
        assertEquals(
                "no log of this kind here",
                row(result, "ABGR", Attribute.LOG_VOLUME).reason());
    }

    @ParameterizedTest
    @EnumSource(names = {"NET_LOG_VOLUME", "NET_BOARD_FEET", "VALUE"})
    void aPlotWithoutTreesIsAZero(Attribute attribute) {
        EstimateRow two = row(LOT.run(folder), attribute);
        EstimateRow three = row(LOT.where("2,1,PSME", "3,,,,,,,,,,,\n2,1,PSME").run(folder), attribute);
        assertEquals(3, three.n());
        assertEquals(two.mean() * 2 / 3, three.mean(), 1e-9 * two.mean());
    }

    @Test
    void aStratumWithOnePlotHasWoodAndNoError() {
        CruiseResult result = LOT.with(
                        "area = 40\n",
                        "[[stratum]]\ncode = \"A\"\narea = 30\nplots = [\"1\"]\n"
                                + "[[stratum]]\ncode = \"B\"\narea = 10\nplots = [\"2\"]\n")
                .plus("[selection]\nmethod = \"stratified\"")
                .run(folder);
        for (Attribute attribute : List.of(Attribute.NET_BOARD_FEET, Attribute.VALUE)) {
            EstimateRow row = row(result, attribute);
            assertTrue(row.mean() > 0 && Double.isNaN(row.se()));
            assertEquals("no standard error: one plot in A, B", row.reason());
        }
        // Doyle: 30 ac of 3450 and 10 ac of 1360
        assertEquals(
                30 * 3450 + 10 * 1360,
                result.estimate()
                        .row("*", "*", Attribute.BOARD_FEET, Basis.TOTAL)
                        .orElseThrow()
                        .mean(),
                1e-6);
    }

    private static int index(CruiseResult result, String number) {
        return Stream.iterate(0, i -> i + 1)
                .filter(i -> result.trees().get(i).tree().number().equals(number))
                .findFirst()
                .orElseThrow();
    }

    private static EstimateRow row(CruiseResult result, Attribute attribute) {
        return row(result, "*", attribute);
    }

    private static EstimateRow row(CruiseResult result, String species, Attribute attribute) {
        return result.estimate().row("*", species, attribute, Basis.PER_AREA).orElseThrow();
    }
}
