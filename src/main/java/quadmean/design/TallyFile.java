package quadmean.design;

import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A tally file and how to read it.
 *
 * @param path where it is
 * @param name what messages call it: its file name, or its path as the design writes it if others have that name
 * @param separator field separator
 * @param decimal decimal mark
 * @param columns the columns in use
 */
public record TallyFile(Path path, String name, char separator, char decimal, Map<ColumnRole, ColumnSpec> columns) {
    public TallyFile {
        columns = Collections.unmodifiableMap(new TreeMap<>(columns)); // in one order, run for run
    }

    /** The same tally under another name in messages. */
    TallyFile called(String other) {
        return new TallyFile(path, other, separator, decimal, columns);
    }
}
