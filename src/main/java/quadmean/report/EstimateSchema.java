package quadmean.report;

import java.io.IOException;
import java.io.InputStream;

/** The JSON Schemas (2020-12) of {@code estimate.json}, written beside it so that editors and scripts can check the file. */
final class EstimateSchema {
    /** Name of the schema, packaged and beside {@code estimate.json}, which names it in its first key. */
    static final String NAME = "estimate.schema.json";

    /** The same for an estate. */
    static final String ESTATE = "estate.schema.json";

    private EstimateSchema() {}

    /** The schema as it is packaged. */
    static Content content() {
        return out -> out.write(bytes(NAME));
    }

    /** The schema of an estate as it is packaged. */
    static Content ofEstate() {
        return out -> out.write(bytes(ESTATE));
    }

    private static byte[] bytes(String name) throws IOException {
        try (InputStream in = EstimateSchema.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not in the jar");
            }
            return in.readAllBytes();
        }
    }
}
