package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.json;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.PlotsNeeded;
import quadmean.height.HeightedTree;
import quadmean.model.HeightSource;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * The shipped real cruise from design file to estimate. Expected values: R 4.2.2, script idaho.R, all 397 tree rows kept; its
 * output is idaho-points-1-72.json, to 1e-8 relative (means and standard errors are printed with twelve decimals).
 */
class IdahoCruiseTest {
    private static final Tolerance EXACT = Tolerance.relative("twelve decimals of the R reference", 1e-8);
    private static final JsonNode EXPECTED = json("idaho-points-1-72.json");
    private static Design design;
    private static CruiseResult result;

    @BeforeAll
    static void cruise() throws IOException {
        design = DesignReader.read(Path.of("designs/idaho-points.toml")).design();
        assertNotNull(design);
        result = Cruise.run(design).result();
        assertNotNull(result);
    }

    @Test
    void basalAreaAndStemsWithTheirErrors() {
        check("basal_area_m2_ha", row("*", Attribute.BASAL_AREA));
        check("stems_ha", row("*", Attribute.TREES));
    }

    @Test
    void quadraticMeanDiameter() {
        double qmd = result.estimate()
                .row("*", "*", Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO)
                .orElseThrow()
                .mean();
        EXACT.check(number(EXPECTED.get("qmd_cm")), qmd, "quadratic mean diameter");
    }

    @Test
    void speciesAreDomainsOfAllPlots() {
        JsonNode cedar = EXPECTED.get("basal_area_WC");
        EXACT.check(number(cedar.get("mean")), row("WC", Attribute.BASAL_AREA).mean(), "WC");
        EXACT.check(number(cedar.get("se")), row("WC", Attribute.BASAL_AREA).se(), "WC");
        JsonNode fir = EXPECTED.get("basal_area_GF_with_F_FG_recoded");
        EXACT.check(number(fir.get("mean")), row("GF", Attribute.BASAL_AREA).mean(), "GF");
        EXACT.check(number(fir.get("se")), row("GF", Attribute.BASAL_AREA).se(), "GF");
    }

    @Test
    void totalsAreForTheStatedArea() {
        double perHa = row("*", Attribute.BASAL_AREA).mean();
        double total = result.estimate()
                .row("*", "*", Attribute.BASAL_AREA, Basis.TOTAL)
                .orElseThrow()
                .mean();
        Tolerance.ROUNDING.check(161.87 * perHa, total, "total on 72 grid cells, 161.87 ha");
    }

    @Test
    void ninetyFourPointsForTenPercentOfBasalArea() {
        PlotsNeeded basalArea = result.estimate().needed().stream()
                .filter(n -> n.attribute() == Attribute.BASAL_AREA)
                .findFirst()
                .orElseThrow();
        assertEquals(
                EXPECTED.get("plots_for_10_percent_95").asInt(),
                basalArea.needed().orElseThrow());
        assertEquals(94 - 72, basalArea.more().orElseThrow());
    }

    @Test
    void noRowIsLost() {
        assertEquals(new RowCount(399, 399, 0, 8), result.tally().rows());
        assertEquals(EXPECTED.get("points").asInt(), result.tally().plots().size());
        assertEquals(EXPECTED.get("trees").asInt(), result.trees().size());
        long empty =
                result.tally().plots().stream().filter(p -> p.trees().isEmpty()).count();
        assertEquals(EXPECTED.get("empty_points").asInt(), empty);
    }

    /** What datasets/README.md says is wrong with the field book, and nothing else; lines counted in the file. */
    @Test
    void theKnownDirtIsFound() {
        List<String> found = result.tally().problems().stream()
                .map(p -> p.row() + " " + p.rule().code())
                .sorted()
                .toList();
        assertEquals(
                List.of(
                        "243 row-repeated", // 43-6
                        "244 row-repeated", // 44-1
                        "245 row-repeated", // 44-2
                        "246 tree-repeated", // 44-3
                        "366 species-recoded", // F
                        "377 unit-slip", // 67-6
                        "42 species-recoded", // FG
                        "43 species-recoded"), // FG
                found);
        assertTrue(result.tally().problems().stream().allMatch(p -> p.policy() == Policy.KEEP));
    }

    @Test
    void theOutlyingHeightStaysInItsRowAndTheTreeIsFilled() {
        Problem problem = result.tally().problems().stream()
                .filter(p -> p.rule() == Rule.UNIT_SLIP)
                .findFirst()
                .orElseThrow();
        assertEquals("34", problem.value());
        HeightedTree tree = result.trees().stream()
                .filter(t -> t.tree().label().equals("67-6"))
                .findFirst()
                .orElseThrow();
        assertEquals(57.5, tree.tree().dbhCm(), 1e-9);
        assertEquals(HeightSource.SPECIES_CURVE, tree.source());
        assertTrue(tree.heightM() > 25, tree.heightM() + " m");
        assertEquals(
                13,
                result.curves().species().stream()
                        .filter(s -> s.species().equals("WL"))
                        .findFirst()
                        .orElseThrow()
                        .heights());
    }

    @Test
    void everyTreeHasAHeightFromSomewhere() {
        assertTrue(result.trees().stream().allMatch(t -> t.heightM() > 1.3 && t.source() != HeightSource.NONE));
        // 232 heights stand in the file; one of them is set aside
        assertEquals(
                231,
                result.trees().stream()
                        .filter(t -> t.source() == HeightSource.MEASURED)
                        .count());
    }

    private static EstimateRow row(String species, Attribute attribute) {
        return result.estimate().row("*", species, attribute, Basis.PER_AREA).orElseThrow();
    }

    private static void check(String key, EstimateRow row) {
        JsonNode e = EXPECTED.get(key);
        EXACT.check(number(e.get("mean")), row.mean(), key);
        EXACT.check(number(e.get("se")), row.se(), key);
        EXACT.check(number(e.get("cv_percent")), row.cvPercent(), key);
        EXACT.check(number(e.get("lower")), row.lower(), key);
        EXACT.check(number(e.get("upper")), row.upper(), key);
        EXACT.check(number(e.get("sampling_error_percent")), row.samplingErrorPercent(), key);
        assertEquals(71, row.df(), "72 points, one mean");
    }
}
