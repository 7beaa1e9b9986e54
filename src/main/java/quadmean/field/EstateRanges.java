package quadmean.field;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.Charset;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Predicate;
import java.util.zip.ZipException;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;

/**
 * Cuts the files of an estate into ranges of some megabytes, each of whole plots. Where the cuts lie depends on the files alone, so that
 * what is added up range by range comes out the same whoever works on the ranges. A row is a line: a field that runs over several is
 * refused later.
 */
public final class EstateRanges implements AutoCloseable {
    /** Bytes of a range, about. */
    public static final int USUAL_BYTES = 1 << 22;

    /** A plot of more is a tally without plot numbers. */
    private static final int MOST_BYTES = 1 << 26;

    private final List<EstateFile> files;
    private final int usualBytes;
    private final Predicate<String> isStand;
    private final Queue<byte[]> spare = new ConcurrentLinkedQueue<>();
    private EstatePosition at;
    private @Nullable InputStream in;
    private @Nullable FileChannel channel;
    private byte[] kept = new byte[0];

    private EstateRanges(List<EstateFile> files, EstatePosition from, int usualBytes, Predicate<String> isStand) {
        this.isStand = isStand;
        this.files = files;
        this.at = from;
        this.usualBytes = usualBytes;
    }

    /**
     * The ranges behind a place.
     *
     * @param usualBytes bytes of a range, about
     * @param isStand whether there is a stand of a name; rows of others belong to no plot
     */
    public static EstateRanges of(
            List<EstateFile> files, EstatePosition from, int usualBytes, Predicate<String> isStand) {
        return new EstateRanges(files, from, usualBytes, isStand);
    }

    /**
     * The next range; null behind the last one.
     *
     * @throws IOException if a file cannot be read
     */
    public @Nullable EstateRange next() throws IOException {
        while (at.file() < files.size()) {
            EstateFile file = files.get(at.file());
            EstateRange range = read(file);
            if (range != null) {
                at = range.after();
                return range;
            }
            close();
            at = new EstatePosition(at.file() + 1, 0, 0);
        }
        return null;
    }

    private @Nullable EstateRange read(EstateFile file) throws IOException {
        try {
            return range(file, in == null ? open(file) : in);
        } catch (ZipException | EOFException e) {
            throw new BrokenTallyException(
                    file,
                    at.line(),
                    "what gzip packed breaks off or is damaged behind this line (" + e.getMessage() + ")");
        }
    }

    /** Takes the memory of a range back, whose rows were read. */
    public void giveBack(EstateRange range) {
        spare.add(range.bytes());
    }

    /** Bytes read from the disk so far, those of files before the first one too. */
    public long bytesRead() throws IOException {
        long bytes = 0;
        for (int i = 0; i < at.file(); i++) {
            bytes += files.get(i).size();
        }
        FileChannel open = channel;
        return bytes + (open == null ? 0 : open.position());
    }

    private InputStream open(EstateFile file) throws IOException {
        FileChannel disk = FileChannel.open(file.path(), StandardOpenOption.READ);
        channel = disk;
        if (at.line() == 0) {
            at = new EstatePosition(at.file(), file.rowsFrom(), file.firstLine());
        }
        if (!EstateFile.isPacked(file.path())) {
            disk.position(at.offset());
            in = Channels.newInputStream(disk);
        } else {
            in = EstateFile.unpacked(file.path(), Channels.newInputStream(disk));
            in.skipNBytes(at.offset());
        }
        kept = new byte[0];
        return in;
    }

    /** A range from the stream; null at its end. */
    private @Nullable EstateRange range(EstateFile file, InputStream from) throws IOException {
        byte[] bytes = spare.poll();
        int length = kept.length;
        int wanted = length < usualBytes ? usualBytes : 2 * length;
        if (bytes == null || bytes.length < wanted) {
            bytes = new byte[wanted];
        }
        System.arraycopy(kept, 0, bytes, 0, length);
        while (true) {
            length += from.readNBytes(bytes, length, wanted - length);
            boolean isEnd = length < wanted;
            int cut = isEnd ? length : lastPlot(file, bytes, length);
            if (cut > 0 || isEnd) {
                kept = Arrays.copyOfRange(bytes, cut, length);
                return cut == 0 ? null : part(file, bytes, cut);
            }
            if (length >= MOST_BYTES) {
                throw new BrokenTallyException(
                        file,
                        at.line(),
                        "the plot that starts near this line has more than 64 MB of rows; does the tally number its plots?");
            }
            wanted *= 2;
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length, wanted));
        }
    }

    private EstateRange part(EstateFile file, byte[] bytes, int cut) {
        long end = at.offset() + cut;
        return new EstateRange(file, at.file(), bytes, cut, end, at.line(), lines(bytes, cut));
    }

    /** Line ends: of any kind, one for each. */
    private static long lines(byte[] bytes, int length) {
        long lines = 0;
        for (int i = 0; i < length; i++) {
            byte b = bytes[i];
            if (b == '\n') {
                lines++;
            } else if (b == '\r' && (i + 1 == length || bytes[i + 1] != '\n')) {
                lines++;
            }
        }
        return lines;
    }

    /** Where the last plot starts that may go on beyond the bytes; 0 if it starts with them. */
    private int lastPlot(EstateFile file, byte[] bytes, int length) {
        int whole = lineStart(bytes, length, length);
        int end = whole;
        String last = "";
        while (end > 0) {
            int start = lineStart(bytes, end - 1, length);
            String plot = plot(file, bytes, start, end);
            if (!plot.isEmpty()) {
                if (!last.isEmpty() && !plot.equals(last)) {
                    return end;
                }
                last = plot;
            }
            end = start;
        }
        return last.isEmpty() ? whole : 0; // rows of no plot at all part nothing
    }

    /** Where the line starts that a place lies in. */
    private static int lineStart(byte[] bytes, int place, int length) {
        int start = place;
        while (start > 0 && !isLineEnd(bytes, start - 1, length)) {
            start--;
        }
        return start;
    }

    /** Whether a line ends with a byte; not with the first of the two that end it together. */
    private static boolean isLineEnd(byte[] bytes, int at, int length) {
        return bytes[at] == '\n' || (bytes[at] == '\r' && at + 1 < length && bytes[at + 1] != '\n');
    }

    /** Stand and plot of a line; empty where it does not say, or says what is no stand. */
    private String plot(EstateFile file, byte[] bytes, int start, int end) {
        Charset charset = file.charset();
        String line = new String(bytes, start, end - start, charset);
        char separator = file.header().file().separator();
        if (line.indexOf('"') >= 0 && QuoteWatch.isOpenAfter(line.strip(), separator)) {
            return "";
        }
        List<String> fields;
        try {
            fields = EstateFiles.fields(line, separator);
        } catch (RuntimeException e) {
            return ""; // the reading of the rows says what is wrong
        }
        int stand = file.header().position().getOrDefault(ColumnRole.STAND, -1);
        int plot = file.header().position().getOrDefault(ColumnRole.PLOT, -1);
        boolean isWhole = fields.size() == file.header().size();
        return isWhole && !fields.get(plot).isEmpty() && isStand.test(fields.get(stand))
                ? fields.get(stand) + '\u0000' + fields.get(plot)
                : "";
    }

    @Override
    public void close() throws IOException {
        InputStream open = in;
        in = null;
        channel = null;
        if (open != null) {
            open.close();
        }
    }
}
