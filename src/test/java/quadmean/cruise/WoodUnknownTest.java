package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.estimate.EstimateRow;
import quadmean.support.SmallWoodlot;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** What is said where something of the wood is not known, or was worked out on thin ground. */
class WoodUnknownTest {
    private static final SmallWoodlot LOT = new SmallWoodlot();
    private static final String TREE = "1,1,PSME,20,104.5,,,,,,,10";

    private static final String TREE_BOARD_FEET = """
            [board_feet."*"]
            form = "form_class"
            a0 = 0
            a1 = 10
            a2 = 0
            b0 = 0
            b1 = 0
            b2 = 0
            c0 = 0
            c1 = 0
            c2 = 0
            percent_per_point = 3
            table_form_class = 78
            form_class = 78
            dbh_unit = "in"
            volume_unit = "bf"
            source = "made up"
            standing = "invented"
            """;

    @TempDir
    private Path folder;

    @Test
    void withoutHeightsWhatNeedsThemIsUnknownAndNothingElse() {
        CruiseResult result =
                LOT.where("104.5", "").where("54.5", "").where("84.5", "").run(folder);
        Set<Attribute> known = Set.of(
                Attribute.TREES,
                Attribute.BASAL_AREA,
                Attribute.QUADRATIC_MEAN_DIAMETER,
                Attribute.BIOMASS,
                Attribute.CARBON);
        for (EstimateRow row : result.estimate().rows()) {
            boolean isKnown = known.contains(row.attribute());
            assertEquals(isKnown, Double.isFinite(row.mean()), row::toString);
            if (!isKnown) {
                assertTrue(row.reason().contains("no height and no height curve for"), row::toString);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"'', no number of 16-ft logs", "0, ''", "2, ''"})
    void boardFeetOfWholeTreesNeedTheirLogsCounted(String logs, String reason) {
        SmallWoodlot lot = LOT.with("rule = \"doyle\"", "")
                .with("product = \"SAW\"\namount = 500\nper = \"mbf\"", "product = \"SAW\"\namount = 5\nper = \"ft3\"")
                .plus(TREE_BOARD_FEET)
                .where(TREE, "1,1,PSME,20,104.5,," + logs + ",,,,,10")
                .where("54.5,,", "54.5,,0")
                .where("84.5,,", "84.5,,0");
        EstimateRow row = row(lot.run(folder), Attribute.NET_BOARD_FEET);
        if (reason.isEmpty()) {
            // 10 bf a log, less 10 % defect, 10 trees an acre, on one of two plots
            double expected = Double.parseDouble(logs) * 10 * 0.9 * 10 / 2;
            assertEquals(expected, row.mean() * 0.40468564224, 1e-9);
        } else {
            assertTrue(Double.isNaN(row.mean()));
            assertTrue(row.reason().startsWith(reason), row.reason());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[biomass.\"*\"] | [biomass.PSME] | BIOMASS | no biomass equation for ABGR",
                "[taper.\"*\"] | [taper.PSME] | NET_BOARD_FEET | no stem profile for ABGR",
                "[taper.\"*\"] | [taper.PSME] | VALUE | no stem profile for ABGR"
            })
    void aSpeciesThatNothingServesIsUnknownWithAReason(String old, String now, Attribute attribute, String reason) {
        CruiseResult result = LOT.with(old, now).run(folder);
        assertTrue(Double.isNaN(row(result, attribute).mean()));
        assertEquals(reason, row(result, attribute).reason());
        assertTrue(Double.isFinite(row(result, "PSME", attribute).mean()));
        assertTrue(Double.isFinite(row(result, Attribute.VOLUME).mean()));
    }

    @Test
    void aSpeciesWithoutAProfileThatNoProductTakesHasNoLogs() {
        CruiseResult result = LOT.with("[taper.\"*\"]", "[taper.PSME]")
                .with("lengths = [16]", "species = [\"PSME\"]\nlengths = [16]")
                .with("lengths = [8]", "species = [\"PSME\"]\nlengths = [8]")
                .run(folder);
        assertTrue(row(result, Attribute.LOG_VOLUME).mean() > 0);
        assertTrue(hasNote(result, "No log is cut from 1 tree that count"));
    }

    @Test
    void aSpeciesWithoutAGreenWeightIsUnknownWithAReason() {
        CruiseResult result = LOT.with("per = \"ton\"", "per = \"ft3\"")
                .with("[green_weight.\"*\"]", "[green_weight.PSME]")
                .run(folder);
        assertEquals(
                "no green weight for ABGR", row(result, Attribute.GREEN_WEIGHT).reason());
        assertTrue(row(result, Attribute.VALUE).mean() > 0);
    }

    @Test
    void whatLiesOutsideIsNoted() {
        CruiseResult result = LOT.with("doyle", "scribner_decimal_c")
                .with("volume_unit = \"ft3\"", "volume_unit = \"ft3\"\nmax_dbh = 18")
                .with("[[price]]\nproduct = \"PULP\"\namount = 10\nper = \"ton\"\n", "")
                .where(TREE, "1,1,PSME,40,104.5,,,,,,,10")
                .run(folder);
        assertTrue(hasNote(result, "1 tree outside the sizes that an equation was made from (made up): 1-1."));
        assertTrue(hasNote(result, "No price, and so no value: PULP of ABGR, PULP of PSME."));
        assertTrue(hasNote(result, "logs lie outside the table of the log rule"));
        assertFalse(hasNote(LOT.run(folder), "No price"));
    }

    @Test
    void stemsThatGiveNoLogAreCountedByReason() {
        CruiseResult result = LOT.with("min_small_end = 8", "min_small_end = 80")
                .with("min_small_end = 4", "min_small_end = 80")
                .run(folder);
        assertTrue(hasNote(
                result, "No log is cut from 3 trees that count in volume: 3 thinner than every product takes."));
        EstimateRow value = row(result, Attribute.VALUE);
        assertEquals(0, value.mean());
        assertEquals("no log here that fetches anything", value.reason());
    }

    private static boolean hasNote(CruiseResult result, String words) {
        return result.estimate().notes().stream().anyMatch(n -> n.contains(words));
    }

    private static EstimateRow row(CruiseResult result, Attribute attribute) {
        return row(result, "*", attribute);
    }

    private static EstimateRow row(CruiseResult result, String species, Attribute attribute) {
        return result.estimate().row("*", species, attribute, Basis.PER_AREA).orElseThrow();
    }
}
