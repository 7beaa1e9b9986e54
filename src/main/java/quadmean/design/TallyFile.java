package quadmean.design;

import java.nio.file.Path;
import java.util.Map;

/**
 * A tally file and how to read it.
 *
 * @param path where it is
 * @param separator field separator
 * @param decimal decimal mark
 * @param columns the columns in use
 */
public record TallyFile(Path path, char separator, char decimal, Map<ColumnRole, ColumnSpec> columns) {
    public TallyFile {
        columns = Map.copyOf(columns);
    }
}
