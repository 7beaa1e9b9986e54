package quadmean.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * JSON as a file: indented, in UTF-8, with the same ends of lines on every system. Nodes are written one by one, for a
 * mapper of objects would load some three hundred classes to come to the same.
 */
final class JsonFile {
    private static final DefaultIndenter LINES = new DefaultIndenter("  ", "\n");

    private JsonFile() {}

    /** A tree as an indented document in UTF-8. */
    static Content of(ObjectNode root) {
        return out -> out.write((text(root) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static String text(ObjectNode root) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(LINES).withArrayIndenter(LINES));
            write(root, json);
        }
        return text.toString();
    }

    private static void write(JsonNode node, JsonGenerator json) throws IOException {
        switch (node.getNodeType()) {
            case OBJECT -> {
                json.writeStartObject();
                for (Map.Entry<String, JsonNode> member : node.properties()) {
                    json.writeFieldName(member.getKey());
                    write(member.getValue(), json);
                }
                json.writeEndObject();
            }
            case ARRAY -> {
                json.writeStartArray();
                for (JsonNode element : node) {
                    write(element, json);
                }
                json.writeEndArray();
            }
            case STRING -> json.writeString(node.textValue());
            case BOOLEAN -> json.writeBoolean(node.booleanValue());
            case NUMBER -> number(node, json);
            case NULL -> json.writeNull();
            case BINARY, MISSING, POJO ->
                throw new IllegalArgumentException("no JSON is made of " + node.getNodeType());
        }
    }

    private static void number(JsonNode node, JsonGenerator json) throws IOException {
        if (node.isDouble()) {
            json.writeNumber(node.doubleValue());
        } else if (node.isInt() || node.isLong()) {
            json.writeNumber(node.longValue());
        } else {
            json.writeNumber(node.decimalValue());
        }
    }
}
