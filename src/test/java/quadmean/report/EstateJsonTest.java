package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.cruise.EstateResult;
import quadmean.cruise.EstateResult.CurveOrigin;
import quadmean.estimate.PlotsNeeded.Verdict;
import quadmean.model.EstateOnePlot;
import quadmean.model.Policy;
import quadmean.model.Standing;
import quadmean.support.SmallEstate;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** {@code estimate.json} of an estate, and its schema by the validator of networknt. */
class EstateJsonTest {
    private static final CheckedSchema SCHEMA = CheckedSchema.of(EstimateSchema.ofEstate());

    @TempDir
    Path folder;

    private static ObjectNode json(EstateResult result) throws IOException {
        return (ObjectNode) new ObjectMapper().readTree(Written.text(EstateJson.of(result, result.spread())));
    }

    @Test
    void shippedEstateHoldsToItsSchema() throws IOException {
        JsonNode root = json(SmallEstate.run(Path.of("designs/estate.toml")));
        assertEquals(List.of(), SCHEMA.errors(root));
        assertEquals("estate.schema.json", root.get("$schema").asText());
        assertEquals(
                EstateJson.SCHEMA_VERSION,
                SCHEMA.text().at("/properties/schemaVersion/const").asInt());
    }

    @Test
    void estatesWithGapsHoldToo() throws IOException {
        assertEquals(
                List.of(),
                SCHEMA.errors(json(new SmallEstate().result(folder))),
                "a stand without plots, one with one");
        SmallEstate noError = new SmallEstate()
                .with("stands = \"stands.csv\"\n", "stands = \"stands.csv\"\none_plot = \"no_error\"\n");
        JsonNode root = json(noError.result(folder));
        assertEquals(List.of(), SCHEMA.errors(root));
        assertEquals("unknown", root.at("/target/verdict").asText());
        assertTrue(root.at("/target/achievedPercent").isNull());
        assertFalse(root.at("/target/reason").asText().isEmpty());
    }

    @Test
    void groundIsInBothSystems() throws IOException {
        JsonNode extent = json(new SmallEstate().result(folder)).get("extent");
        assertEquals(3, extent.get("stands").asInt());
        assertEquals(45, extent.get("areaHa").asDouble());
        Tolerance.ROUNDING.check(45 / 0.40468564224, extent.get("areaAc").asDouble(), "1 ac = 0.40468564224 ha");
        assertEquals(7, extent.get("plots").asInt());
        assertEquals(1, extent.get("onePlot").asInt());
        assertEquals(1, extent.get("withoutPlots").asInt());
        assertEquals(7, extent.get("areaWithoutPlotsHa").asDouble());
    }

    @Test
    void rowsAndProblemsAreAccountedFor() throws IOException {
        JsonNode root = json(SmallEstate.run(Path.of("designs/estate.toml")));
        assertEquals(
                root.at("/rows/in").asInt(),
                root.at("/rows/used").asInt() + root.at("/rows/dropped").asInt());
        int dropped = 0;
        for (JsonNode problem : root.get("problemsByRule")) {
            dropped += problem.get("policy").asText().equals("drop")
                    ? problem.get("count").asInt()
                    : 0;
        }
        assertEquals(root.at("/rows/dropped").asInt(), dropped);
    }

    @Test
    void curvesSayWhereTheyAreFrom() throws IOException {
        JsonNode curves = json(SmallEstate.run(Path.of("designs/estate.toml"))).get("curves");
        assertEquals("fitted", curves.get("origin").asText());
        assertEquals(8, curves.get("curves").size(), "three species and all together, in two regions");
        JsonNode none = json(new SmallEstate()
                        .with("height = { name = \"height_m\", unit = \"m\" }\n", "")
                        .result(folder))
                .get("curves");
        assertEquals("none", none.get("origin").asText());
    }

    /** A key too many is an error wherever it stands. */
    @Test
    void strangeKeyIsRefusedEverywhere() throws IOException {
        JsonNode root = json(SmallEstate.run(Path.of("designs/estate.toml")));
        List<ObjectNode> objects = CheckedSchema.objects(root);
        assertTrue(objects.size() > 20, "objects of each kind: " + objects.size());
        for (ObjectNode object : objects) {
            object.put("strange", "x");
            assertFalse(SCHEMA.errors(root).isEmpty(), () -> "a strange key passes in " + object);
            object.remove("strange");
        }
        assertEquals(List.of(), SCHEMA.errors(root));
    }

    @Test
    void numberWithoutReasonIsRefused() throws IOException {
        ObjectNode root = json(SmallEstate.run(Path.of("designs/estate.toml")));
        ((ObjectNode) root.get("target")).putNull("achievedPercent");
        assertFalse(SCHEMA.errors(root).isEmpty());
        ((ObjectNode) root.get("target")).put("reason", "too few plots");
        assertEquals(List.of(), SCHEMA.errors(root));
    }

    @Test
    void wordsAreThoseOfTheProgram() {
        SCHEMA.assertWords("/$defs/attribute/enum", Attribute.values(), Attribute::id);
        SCHEMA.assertWords("/$defs/basis/enum", Basis.values(), Basis::id);
        SCHEMA.assertWords("/$defs/standing/enum", Standing.values(), Standing::label);
        SCHEMA.assertWords("/properties/design/properties/onePlot/enum", EstateOnePlot.values(), EstateOnePlot::id);
        SCHEMA.assertWords("/properties/problemsByRule/items/properties/policy/enum", Policy.values(), Policy::id);
        SCHEMA.assertWords("/properties/target/properties/verdict/enum", Verdict.values(), EstateJsonTest::lower);
        SCHEMA.assertWords("/properties/curves/properties/origin/enum", CurveOrigin.values(), EstateJsonTest::lower);
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
