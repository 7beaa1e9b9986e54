package quadmean.field;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;

/** A tally file of an estate, its header matched to the columns of the design. */
public final class EstateFile {
    private static final int BUFFER = 1 << 16;

    private final Path path;
    private final Header header;
    private final Charset charset;
    private final long rowsFrom;
    private final long firstLine;

    /**
     * A file whose header was read.
     *
     * @param rowsFrom bytes before the rows, once unpacked
     * @param firstLine line on which the rows start
     */
    EstateFile(Path path, Header header, Charset charset, long rowsFrom, long firstLine) {
        this.path = path;
        this.header = header;
        this.charset = charset;
        this.rowsFrom = rowsFrom;
        this.firstLine = firstLine;
    }

    /** Where it is. */
    public Path path() {
        return path;
    }

    /** What messages call it. */
    public String name() {
        return header.file().name();
    }

    /** What its header calls the column of plots. */
    public String plotColumn() {
        ColumnSpec plot = header.file().columns().get(ColumnRole.PLOT);
        return plot == null ? ColumnRole.PLOT.key() : plot.name();
    }

    Header header() {
        return header;
    }

    Charset charset() {
        return charset;
    }

    long rowsFrom() {
        return rowsFrom;
    }

    long firstLine() {
        return firstLine;
    }

    /** Size as it lies on the disk (bytes). */
    public long size() throws IOException {
        return Files.size(path);
    }

    static boolean isPacked(Path path) {
        return String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT).endsWith(".gz");
    }

    /** The bytes of a file, unpacked if its name ends in {@code .gz}. */
    static InputStream open(Path path) throws IOException {
        return unpacked(path, Files.newInputStream(path));
    }

    static InputStream unpacked(Path path, InputStream in) throws IOException {
        return isPacked(path) ? new GZIPInputStream(new BufferedInputStream(in, BUFFER), BUFFER) : in;
    }
}
