package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quadmean.chart.SampleCruise;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.model.CurveForm;
import quadmean.model.RowCount;
import quadmean.units.Attribute;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

class EstimateJsonTest {

    private static JsonNode json(CruiseResult result) throws IOException {
        return new ObjectMapper().readTree(Written.text(EstimateJson.of(result)));
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @Test
    void hasTheKeysOfTheHouse() throws IOException {
        JsonNode root = json(SampleCruise.us());
        assertEquals(
                List.of(
                        "$schema",
                        "schemaVersion",
                        "design",
                        "seed",
                        "confidence",
                        "target",
                        "estimates",
                        "alternatives",
                        "otherEstimates",
                        "rows",
                        "plots",
                        "trees",
                        "problemsByRule",
                        "problems",
                        "heightSources",
                        "extrapolatedTrees",
                        "extrapolated",
                        "remeasure",
                        "curves",
                        "equations",
                        "wood",
                        "diameterClasses",
                        "standTable",
                        "statistics",
                        "errorBudget",
                        "running",
                        "notes"),
                keys(root));
        assertEquals(1, root.get("schemaVersion").asInt());
        assertEquals(42, root.get("seed").asInt());
        assertEquals("sample.toml", root.at("/design/file").asText());
        assertEquals("us", root.at("/design/units").asText());
        assertEquals("missed", root.at("/target/attributes/0/verdict").asText());
        assertEquals(26, root.at("/target/attributes/0/more").asInt());
    }

    @Test
    void givesEachRowInBothSystemsUnrounded() throws IOException {
        CruiseResult result = SampleCruise.us();
        JsonNode estimates = json(result).get("estimates");
        assertEquals(2 * result.estimate().rows().size(), estimates.size());
        JsonNode metric = estimates.get(0);
        assertEquals(
                List.of(
                        "stratum",
                        "species",
                        "product",
                        "log",
                        "attribute",
                        "basis",
                        "unit",
                        "n",
                        "df",
                        "mean",
                        "se",
                        "cvPercent",
                        "lower",
                        "upper",
                        "samplingErrorPercent",
                        "interval",
                        "equationStanding"),
                keys(metric));
        assertEquals("m3", metric.get("unit").asText());
        assertEquals(SampleCruise.TOTAL_M3, metric.get("mean").asDouble());
        JsonNode us = estimates.get(1);
        assertEquals("ft3", us.get("unit").asText());
        // 1 ft³ = 0.3048³ m³ by definition of the foot
        assertEquals(SampleCruise.TOTAL_M3 / Math.pow(0.3048, 3), us.get("mean").asDouble(), 1e-9 * 436_000);
        assertEquals(
                metric.get("samplingErrorPercent").asDouble(),
                us.get("samplingErrorPercent").asDouble());
        assertEquals("from memory", us.get("equationStanding").asText());
    }

    @Test
    void unknownIsNullWithAReason() throws IOException {
        JsonNode estimates = json(SampleCruise.us()).get("estimates");
        int found = 0;
        for (JsonNode row : estimates) {
            if (row.get("stratum").asText().equals("B")) {
                found++;
                assertTrue(row.get("se").isNull()
                        && row.get("lower").isNull()
                        && row.get("upper").isNull());
                assertTrue(row.get("mean").isNumber());
                assertEquals(SampleCruise.REASON, row.get("reason").asText());
            } else {
                assertFalse(row.has("reason"));
            }
        }
        assertEquals(2, found);
    }

    @Test
    void emptyCruiseIsStillWholeJson() throws IOException {
        JsonNode root = json(SampleCruise.empty());
        assertTrue(root.at("/estimates/0/mean").isNull());
        assertEquals("no trees were tallied", root.at("/estimates/0/reason").asText());
        assertTrue(root.at("/target/attributes/0/needed").isNull());
        assertEquals(
                "no trees were tallied", root.at("/target/attributes/0/reason").asText());
        assertTrue(root.at("/curves/0/chosen").isNull());
        assertEquals("too few heights", root.at("/curves/0/fits/0/status").asText());
        assertTrue(root.at("/curves/0/fits/0/parameters").isNull());
    }

    @Test
    void holdsCurvesEquationsClassesAndRunningMean() throws IOException {
        JsonNode root = json(SampleCruise.us());
        RowCount rows = SampleCruise.us().tally().rows();
        assertEquals(
                rows.in(),
                root.at("/rows/used").asLong() + root.at("/rows/dropped").asLong());
        assertEquals("*", root.at("/curves/0/species").asText());
        assertEquals(CurveForm.values().length, root.at("/curves/0/fits").size());
        assertTrue(root.at("/curves/0/chosen/parameters/a").isNumber());
        assertEquals(SampleCruise.NASTY, root.at("/equations/0/species").asText());
        assertEquals("*", root.at("/equations/0/statedFor").asText());
        assertEquals("from memory", root.at("/equations/2/standing").asText());
        assertEquals(6, root.at("/diameterClasses/0/lowerIn").asDouble(), 1e-12);
        assertEquals(
                Unit.TREES_PER_HECTARE.convert(60, Unit.TREES_PER_ACRE),
                root.at("/diameterClasses/0/treesPerAc").asDouble());
        assertTrue(root.at("/running/0/us/mean").isNull());
        assertEquals(
                "a stratum has no plot yet", root.at("/running/0/us/reason").asText());
        assertEquals("ft3/ac", root.at("/running/11/us/unit").asText());
    }

    @Test
    void heightSourcesAddUpToTheTrees() throws IOException {
        JsonNode root = json(SampleCruise.us());
        long sum = 0;
        for (JsonNode count : root.get("heightSources")) {
            sum += count.asLong();
        }
        assertEquals(root.get("trees").asLong(), sum);
        assertEquals(
                root.get("extrapolatedTrees").asInt(), root.get("extrapolated").size());
        assertEquals("1-2", root.at("/extrapolated/0/tree").asText());
    }

    @Test
    void unitsFollowTheAttribute() {
        EstimateRow row = SampleCruise.us().estimate().rows().get(0);
        assertEquals(Attribute.VOLUME, row.attribute());
        assertEquals(Unit.CUBIC_FOOT, row.unit(UnitSystem.US));
    }
}
