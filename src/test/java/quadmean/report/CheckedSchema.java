package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** A JSON schema of the program, held by the validator of networknt. */
final class CheckedSchema {
    private static final int FEW = 2;

    private final JsonNode text;
    private final Schema schema;

    private CheckedSchema(JsonNode text) {
        this.text = text;
        this.schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text);
    }

    static CheckedSchema of(Content content) {
        try {
            return new CheckedSchema(new ObjectMapper().readTree(Written.text(content)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The schema itself. */
    JsonNode text() {
        return text;
    }

    /** What the validator says against a document. */
    List<String> errors(JsonNode document) {
        return schema.validate(document).stream().map(Error::toString).toList();
    }

    /** All objects of a document; its lists are shortened to a few elements, which stand for the others. */
    static List<ObjectNode> objects(JsonNode document) {
        List<ObjectNode> objects = new ArrayList<>();
        gather(document, objects);
        return objects;
    }

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

    /** A list of words in the schema is that of the program, so that a new constant is not forgotten. */
    <T> void assertWords(String pointer, T[] constants, Function<T, String> id) {
        List<String> words = new ArrayList<>();
        text.at(pointer).forEach(w -> words.add(w.asText()));
        assertEquals(
                Arrays.stream(constants).map(id).sorted().toList(),
                words.stream().sorted().toList(),
                pointer);
    }
}
