package quadmean.report;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;

/** JSON as a file: indented, in UTF-8, with the same ends of lines on every system. */
final class JsonFile {
    private JsonFile() {}

    /** A tree as an indented document in UTF-8. */
    static Content of(ObjectNode root) {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        return out -> out.write(
                (new ObjectMapper().writer(printer).writeValueAsString(root) + "\n").getBytes(StandardCharsets.UTF_8));
    }
}
