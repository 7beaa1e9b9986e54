package quadmean.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Content as text. */
final class Written {
    private Written() {}

    static String text(Content content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        content.writeTo(out);
        return out.toString(StandardCharsets.UTF_8);
    }
}
