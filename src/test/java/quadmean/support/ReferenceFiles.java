package quadmean.support;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.StreamSupport;

/** Reads the reference values under {@code src/test/resources/reference}; their README says where they come from. */
public final class ReferenceFiles {
    private ReferenceFiles() {}

    /** The rows of a CSV file. */
    public static List<NamedCsvRecord> csv(String name) {
        try (CsvReader<NamedCsvRecord> reader =
                CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(open(name), StandardCharsets.UTF_8))) {
            return reader.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A field of a row as a number. */
    public static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }

    /** The root of a JSON file. */
    public static JsonNode json(String name) {
        try (InputStream in = open(name)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A published worked example by its id. */
    public static JsonNode example(String id) {
        return StreamSupport.stream(json("worked-examples.json").spliterator(), false)
                .filter(e -> e.get("id").asText().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no worked example " + id));
    }

    /** A JSON array as numbers. */
    public static double[] numbers(JsonNode array) {
        if (!array.isArray() || array.isEmpty()) {
            throw new IllegalArgumentException("not an array of numbers: " + array);
        }
        return StreamSupport.stream(array.spliterator(), false)
                .mapToDouble(ReferenceFiles::number)
                .toArray();
    }

    /** A JSON number; anything else is refused, where Jackson would give 0. */
    public static double number(JsonNode node) {
        if (!node.isNumber()) {
            throw new IllegalArgumentException("not a number: " + node);
        }
        return node.doubleValue();
    }

    private static InputStream open(String name) {
        InputStream in = ReferenceFiles.class.getResourceAsStream("/reference/" + name);
        if (in == null) {
            throw new IllegalArgumentException("no reference file " + name);
        }
        return in;
    }
}
