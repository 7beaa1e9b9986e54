package quadmean.report;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.CheckedOutputStream;
import org.jspecify.annotations.Nullable;
import quadmean.cruise.EstateKeeping;

/** The state of a run in a file that ends in a checksum, so that half a file, or a damaged one, is never taken for a whole one. */
final class StateFile {
    /** Name of the file. */
    private static final String NAME = "state";

    /** Name under which it is written. */
    private static final String PART = "state.part";

    private static final int BUFFER = 1 << 16;

    private final Path folder;

    StateFile(Path folder) {
        this.folder = folder;
    }

    /**
     * What a state belongs to.
     *
     * @param input changes with the input of the run
     * @param problemBytes length of the list of problems
     * @param rows rows added up
     */
    record Head(String input, long problemBytes, long rows) {}

    /**
     * A state to go on from.
     *
     * @param in what was written behind the head
     */
    record Kept(Head head, DataInputStream in) {}

    /** Whether there is a file, in order or not. */
    boolean exists() {
        return Files.exists(folder.resolve(NAME));
    }

    /** Removes the file. */
    void delete() throws IOException {
        Files.deleteIfExists(folder.resolve(NAME));
        Files.deleteIfExists(folder.resolve(PART));
    }

    /** Writes a state in place of the one before, which stays if that fails. */
    void write(Head head, EstateKeeping.Writer writer) throws IOException {
        Path part = folder.resolve(PART);
        try {
            write(part, head, writer);
            Files.move(part, folder.resolve(NAME), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void write(Path part, Head head, EstateKeeping.Writer writer) throws IOException {
        CRC32 sum = new CRC32();
        try (DataOutputStream out = new DataOutputStream(
                new CheckedOutputStream(new BufferedOutputStream(Files.newOutputStream(part), BUFFER), sum))) {
            out.writeUTF(head.input());
            out.writeLong(head.problemBytes());
            out.writeLong(head.rows());
            writer.write(out);
            out.writeLong(sum.getValue());
        }
    }

    /** The state, to be closed by who reads it; null if the file is damaged. */
    @Nullable
    Kept read() throws IOException {
        if (!isWhole()) {
            return null;
        }
        DataInputStream in = new DataInputStream(open());
        return new Kept(new Head(in.readUTF(), in.readLong(), in.readLong()), in);
    }

    private boolean isWhole() throws IOException {
        long rest = Files.size(folder.resolve(NAME)) - Long.BYTES;
        if (rest <= 0) {
            return false;
        }
        CRC32 sum = new CRC32();
        try (CheckedInputStream checked = new CheckedInputStream(open(), sum)) {
            checked.skipNBytes(rest);
            long found = sum.getValue();
            return new DataInputStream(checked).readLong() == found;
        }
    }

    private InputStream open() throws IOException {
        return new BufferedInputStream(Files.newInputStream(folder.resolve(NAME)), BUFFER);
    }
}
