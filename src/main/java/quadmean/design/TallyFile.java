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
 * @param format how it is written
 * @param columns the columns in use
 */
public record TallyFile(Path path, String name, TallyFormat format, Map<ColumnRole, ColumnSpec> columns) {
    public TallyFile {
        columns = Collections.unmodifiableMap(new TreeMap<>(columns)); // in one order, run for run
    }

    /** The field separator; a comma where none is known yet. */
    public char separator() {
        return format.separator() == null ? ',' : format.separator();
    }

    /** The decimal mark; a point where none is known yet. */
    public char decimal() {
        return format.decimal() == null ? '.' : format.decimal();
    }

    /** The same tally under another name in messages. */
    public TallyFile called(String other) {
        return new TallyFile(path, other, format, columns);
    }

    /** The same tally written in another way. */
    public TallyFile with(TallyFormat other) {
        return new TallyFile(path, name, other, columns);
    }

    /** The same tally with other columns in use. */
    public TallyFile with(Map<ColumnRole, ColumnSpec> other) {
        return new TallyFile(path, name, format, other);
    }
}
