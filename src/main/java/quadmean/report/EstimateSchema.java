package quadmean.report;

import java.io.IOException;
import java.io.InputStream;

/** The JSON Schema (2020-12) of {@code estimate.json}, written beside it so that editors and scripts can check the file. */
final class EstimateSchema {
    /** Name of the schema, packaged and beside {@code estimate.json}, which names it in its first key. */
    static final String NAME = "estimate.schema.json";

    private EstimateSchema() {}

    /** The schema as it is packaged. */
    static Content content() {
        return out -> out.write(bytes());
    }

    private static byte[] bytes() throws IOException {
        try (InputStream in = EstimateSchema.class.getResourceAsStream(NAME)) {
            if (in == null) {
                throw new IllegalStateException(NAME + " is not in the jar");
            }
            return in.readAllBytes();
        }
    }
}
