package quadmean.scale;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;

/**
 * Whole lines of a file, from one byte to before another; a packed file is one range of the bytes it unpacks to.
 *
 * @param file the file
 * @param from first byte
 * @param to byte after the last one
 */
record FileRange(Path file, long from, long to) {
    private static final int BUFFER = 1 << 16;

    /**
     * Cuts a file at line starts. Ranges cover it without gaps and may be empty; lines must not break within quotes.
     *
     * @param pieces number of ranges asked for, 1 or more
     */
    static List<FileRange> cut(Path file, int pieces) throws IOException {
        long size = Files.size(file);
        List<FileRange> ranges = new ArrayList<>();
        if (isPacked(file)) {
            return List.of(new FileRange(file, 0, size));
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            long from = 0;
            for (int i = 1; i <= pieces; i++) {
                long to = i == pieces ? size : Math.max(from, lineStart(channel, size * i / pieces));
                ranges.add(new FileRange(file, from, to));
                from = to;
            }
        }
        return ranges;
    }

    private static boolean isPacked(Path file) {
        return file.toString().endsWith(".gz");
    }

    /** The first start of a line at a byte or after it; the end of the file is one. */
    private static long lineStart(FileChannel channel, long near) throws IOException {
        if (near == 0) {
            return 0;
        }
        ByteBuffer bytes = ByteBuffer.allocate(BUFFER);
        long at = near - 1;
        while (channel.read(bytes.clear(), at) > 0) {
            bytes.flip();
            while (bytes.hasRemaining()) {
                at++;
                if (bytes.get() == '\n') {
                    return at;
                }
            }
        }
        return at;
    }

    /** Opens the range for reading; a packed file is unpacked on the way. */
    InputStream open() throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
        if (isPacked(file)) {
            return new GZIPInputStream(Channels.newInputStream(channel), BUFFER);
        }
        channel.position(from);
        return new Part(Channels.newInputStream(channel), to - from);
    }

    /** As much of a stream as is asked for. */
    private static final class Part extends InputStream {
        private final InputStream in;
        private long left;

        Part(InputStream in, long left) {
            this.in = in;
            this.left = left;
        }

        @Override
        public int read() throws IOException {
            int got = left == 0 ? -1 : in.read();
            left -= got < 0 ? 0 : 1;
            return got;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            if (left == 0) {
                return -1;
            }
            int got = in.read(into, offset, (int) Math.min(length, left));
            left -= Math.max(got, 0);
            return got;
        }

        @Override
        public void close() throws IOException {
            in.close();
        }
    }
}
