package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.chart.SampleCruise;
import quadmean.cruise.ErrorPart;
import quadmean.height.FitStatus;
import quadmean.model.Estimator;
import quadmean.model.HeightSource;
import quadmean.model.IntervalRule;
import quadmean.model.SelectionMethod;
import quadmean.model.Standing;
import quadmean.model.VarianceForm;
import quadmean.support.ShippedCruises;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** {@code estimate.json} holds to its schema, by the validator of networknt, and the schema says no to what it should. */
class EstimateSchemaTest {
    private static final JsonNode TEXT = schemaText();
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(TEXT);

    private static final int FEW = 2;

    private static JsonNode schemaText() {
        try {
            return new ObjectMapper().readTree(Written.text(EstimateSchema.content()));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static Stream<String> designs() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("designs"))) {
            return files
                    .map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".toml"))
                    .filter(EstimateSchemaTest::hasTally)
                    .map(f -> f.replace(".toml", ""))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    /** A design without one is for planning alone; an estate has a schema of its own. */
    private static boolean hasTally(String design) {
        try {
            String text = Files.readString(Path.of("designs", design));
            return text.contains("[[tally]]") && !text.contains("[estate]");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<String> check(JsonNode document) {
        return SCHEMA.validate(document).stream().map(Error::toString).toList();
    }

    /** What was written, read again: the tree in memory could differ. */
    private static ObjectNode sample() throws IOException {
        return (ObjectNode) new ObjectMapper().readTree(Written.text(EstimateJson.of(SampleCruise.us())));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyShippedDesignHolds(String name) throws IOException {
        String text = Written.text(
                EstimateJson.of(Objects.requireNonNull(ShippedCruises.run(name).result())));
        assertEquals(List.of(), check(new ObjectMapper().readTree(text)));
    }

    @Test
    void cruisesWithoutTreesOrWithGapsHoldToo() throws IOException {
        assertEquals(List.of(), check(sample()));
        assertEquals(
                List.of(), check(new ObjectMapper().readTree(Written.text(EstimateJson.of(SampleCruise.empty())))));
    }

    @Test
    void fileNamesItsSchema() throws IOException {
        assertEquals("estimate.schema.json", sample().get("$schema").asText());
        assertEquals(
                EstimateJson.SCHEMA_VERSION,
                TEXT.at("/properties/schemaVersion/const").asInt());
    }

    /** The schema itself holds to the schema of schemas. */
    @Test
    void schemaIsOne() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
        assertEquals(List.of(), meta.validate(TEXT));
    }

    /** A key too many is an error wherever it stands: each kind of object of two cruises is tried. */
    @ParameterizedTest
    @ValueSource(strings = {"demo"})
    void strangeKeyIsRefusedEverywhere(String name) throws IOException {
        JsonNode root = new ObjectMapper()
                .readTree(Written.text(EstimateJson.of(
                        Objects.requireNonNull(ShippedCruises.run(name).result()))));
        List<ObjectNode> objects = new ArrayList<>();
        gather(root, objects);
        assertTrue(objects.size() > 100, "objects of each kind: " + objects.size());
        assertEquals(List.of(), check(root), "as long as it has no strange key");
        for (ObjectNode object : objects) {
            object.put("strange", "x");
            assertFalse(SCHEMA.validate(root).isEmpty(), () -> "a strange key passes in " + object);
            object.remove("strange");
        }
    }

    /** Shortens lists to a few elements, which stand for the others, and gathers all objects. */
    private static void gather(JsonNode node, List<ObjectNode> to) {
        if (node instanceof ObjectNode object) {
            to.add(object);
        } else if (node instanceof ArrayNode list) {
            while (list.size() > FEW) {
                list.remove(list.size() - 1);
            }
        }
        node.forEach(child -> gather(child, to));
    }

    @Test
    void missingKeyWrongTypeAndSilentNullAreRefused() throws IOException {
        ObjectNode root = sample();
        ObjectNode row = (ObjectNode) root.at("/estimates/0");
        row.put("mean", "12");
        assertFalse(SCHEMA.validate(root).isEmpty(), "a number as text");
        row.putNull("samplingErrorPercent").put("mean", 12);
        assertFalse(SCHEMA.validate(root).isEmpty(), "null without a reason");
        row.put("reason", "too few plots");
        assertEquals(List.of(), check(root));
        row.remove("unit");
        assertFalse(SCHEMA.validate(root).isEmpty(), "a number without its unit");
    }

    /** Lists of words in the schema are those of the program, so that a new constant is not forgotten. */
    @Test
    void wordsAreThoseOfTheProgram() {
        same("/$defs/attribute/enum", Attribute.values(), Attribute::id);
        same("/$defs/basis/enum", Basis.values(), Basis::id);
        same("/$defs/standing/enum", Standing.values(), Standing::label);
        same("/$defs/variance/enum", VarianceForm.values(), VarianceForm::id);
        same("/properties/design/properties/estimator/enum", Estimator.values(), Estimator::id);
        same("/properties/design/properties/selection/enum", SelectionMethod.values(), SelectionMethod::id);
        same("/properties/estimates/items/properties/interval/enum", IntervalRule.values(), IntervalRule::id);
        same(
                "/properties/curves/items/properties/fits/items/properties/status/enum",
                FitStatus.values(),
                FitStatus::label);
        same("/properties/heightSources/required", HeightSource.values(), HeightSource::id);
        same(
                "/properties/errorBudget/items/properties/parts/items/properties/name/enum",
                ErrorPart.Source.values(),
                s -> s.name().toLowerCase(java.util.Locale.ROOT));
    }

    private static <T> void same(String pointer, T[] constants, Function<T, String> id) {
        List<String> words = new ArrayList<>();
        TEXT.at(pointer).forEach(w -> words.add(w.asText()));
        assertEquals(
                Arrays.stream(constants).map(id).sorted().toList(),
                words.stream().sorted().toList(),
                pointer);
    }
}
