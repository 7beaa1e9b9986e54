package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
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
    private static final CheckedSchema SCHEMA = CheckedSchema.of(EstimateSchema.content());

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

    /** What was written, read again: the tree in memory could differ. */
    private static ObjectNode sample() throws IOException {
        return (ObjectNode) new ObjectMapper().readTree(Written.text(EstimateJson.of(SampleCruise.us())));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyShippedDesignHolds(String name) throws IOException {
        String text = Written.text(
                EstimateJson.of(Objects.requireNonNull(ShippedCruises.run(name).result())));
        assertEquals(List.of(), SCHEMA.errors(new ObjectMapper().readTree(text)));
    }

    @Test
    void cruisesWithoutTreesOrWithGapsHoldToo() throws IOException {
        assertEquals(List.of(), SCHEMA.errors(sample()));
        assertEquals(
                List.of(),
                SCHEMA.errors(new ObjectMapper().readTree(Written.text(EstimateJson.of(SampleCruise.empty())))));
    }

    @Test
    void fileNamesItsSchema() throws IOException {
        assertEquals("estimate.schema.json", sample().get("$schema").asText());
        assertEquals(
                EstimateJson.SCHEMA_VERSION,
                SCHEMA.text().at("/properties/schemaVersion/const").asInt());
    }

    /** The schema itself holds to the schema of schemas. */
    @Test
    void schemaIsOne() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
        assertEquals(List.of(), meta.validate(SCHEMA.text()));
    }

    /** A key too many is an error wherever it stands: each kind of object of two cruises is tried. */
    @ParameterizedTest
    @ValueSource(strings = {"demo"})
    void strangeKeyIsRefusedEverywhere(String name) throws IOException {
        JsonNode root = new ObjectMapper()
                .readTree(Written.text(EstimateJson.of(
                        Objects.requireNonNull(ShippedCruises.run(name).result()))));
        List<ObjectNode> objects = CheckedSchema.objects(root);
        assertTrue(objects.size() > 100, "objects of each kind: " + objects.size());
        assertEquals(List.of(), SCHEMA.errors(root), "as long as it has no strange key");
        for (ObjectNode object : objects) {
            object.put("strange", "x");
            assertFalse(SCHEMA.errors(root).isEmpty(), () -> "a strange key passes in " + object);
            object.remove("strange");
        }
    }

    @Test
    void missingKeyWrongTypeAndSilentNullAreRefused() throws IOException {
        ObjectNode root = sample();
        ObjectNode row = (ObjectNode) root.at("/estimates/0");
        row.put("mean", "12");
        assertFalse(SCHEMA.errors(root).isEmpty(), "a number as text");
        row.putNull("samplingErrorPercent").put("mean", 12);
        assertFalse(SCHEMA.errors(root).isEmpty(), "null without a reason");
        row.put("reason", "too few plots");
        assertEquals(List.of(), SCHEMA.errors(root));
        row.remove("unit");
        assertFalse(SCHEMA.errors(root).isEmpty(), "a number without its unit");
    }

    /** Lists of words in the schema are those of the program, so that a new constant is not forgotten. */
    @Test
    void wordsAreThoseOfTheProgram() {
        SCHEMA.assertWords("/$defs/attribute/enum", Attribute.values(), Attribute::id);
        SCHEMA.assertWords("/$defs/basis/enum", Basis.values(), Basis::id);
        SCHEMA.assertWords("/$defs/standing/enum", Standing.values(), Standing::label);
        SCHEMA.assertWords("/$defs/variance/enum", VarianceForm.values(), VarianceForm::id);
        SCHEMA.assertWords("/properties/design/properties/estimator/enum", Estimator.values(), Estimator::id);
        SCHEMA.assertWords(
                "/properties/design/properties/selection/enum", SelectionMethod.values(), SelectionMethod::id);
        SCHEMA.assertWords(
                "/properties/estimates/items/properties/interval/enum", IntervalRule.values(), IntervalRule::id);
        SCHEMA.assertWords(
                "/properties/curves/items/properties/fits/items/properties/status/enum",
                FitStatus.values(),
                FitStatus::label);
        SCHEMA.assertWords("/properties/heightSources/required", HeightSource.values(), HeightSource::id);
        SCHEMA.assertWords(
                "/properties/errorBudget/items/properties/parts/items/properties/name/enum",
                ErrorPart.Source.values(),
                s -> s.name().toLowerCase(java.util.Locale.ROOT));
    }
}
