package quadmean.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInput;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import quadmean.cruise.EstateAccount;
import quadmean.cruise.EstateKeeping;
import quadmean.model.Problem;

/**
 * Where a run over an estate works until it is done: a folder inside that of the results, locked against a second run, with the problems
 * so far and the state to go on from. Nothing under a final name is touched; the folder goes when the run is done.
 */
public final class EstateFolder implements EstateKeeping, AutoCloseable {
    /** Name of the folder inside that of the results. */
    public static final String NAME = ".unfinished";

    private static final int SHOWN = 20;

    private final Path folder;
    private final String input;
    private final long keepEveryNanos;
    private final FileChannel lockFile;
    private final FileLock lock;
    private final FileChannel problemFile;
    private final CsvWriter problemRows;
    private final List<Problem> gravest = new ArrayList<>();
    private long lastKept = System.nanoTime();
    private @Nullable DataInputStream state;
    private EstateAccount account = EstateAccount.NONE;

    private EstateFolder(
            Path folder, String input, long keepEveryNanos, FileChannel lockFile, FileLock lock, FileChannel problems) {
        this.folder = folder;
        this.input = input;
        this.keepEveryNanos = keepEveryNanos;
        this.lockFile = lockFile;
        this.lock = lock;
        this.problemFile = problems;
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(problems), 1 << 16);
        this.problemRows = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out, StandardCharsets.UTF_8);
    }

    /**
     * Takes a folder for a run.
     *
     * @param results the folder of the results
     * @param input what a state belongs to: a text that changes with the input
     * @param keepEverySeconds how often to keep a state
     * @throws FileSystemException if another run has it
     * @throws IOException if it cannot be written
     */
    public static EstateFolder take(Path results, String input, long keepEverySeconds) throws IOException {
        Path folder = results.resolve(NAME);
        Files.createDirectories(folder);
        Path lockPath = folder.resolve("lock");
        FileChannel lockFile = FileChannel.open(lockPath, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = lock(lockFile);
        if (lock == null) {
            lockFile.close();
            throw new FileSystemException(
                    results.toString(),
                    null,
                    "another run is writing there; wait for it, or name another folder with --out");
        }
        FileChannel problems = FileChannel.open(
                folder.resolve("problems.csv"),
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE,
                StandardOpenOption.READ);
        return new EstateFolder(folder, input, TimeUnit.SECONDS.toNanos(keepEverySeconds), lockFile, lock, problems);
    }

    private static @Nullable FileLock lock(FileChannel file) throws IOException {
        try {
            return file.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    @Override
    public Optional<DataInput> kept() throws IOException {
        Path file = folder.resolve("state");
        Optional<DataInput> found = Optional.empty();
        long problemsUntil = 0;
        if (Files.exists(file)) {
            DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file), 1 << 16));
            state = in;
            if (in.readUTF().equals(input)) {
                problemsUntil = in.readLong();
                found = Optional.of(in);
            }
        }
        problemFile.truncate(problemsUntil);
        problemFile.position(problemsUntil);
        if (problemsUntil == 0) {
            problemRows.writeRecord(ProblemsCsv.HEADER);
        }
        return found;
    }

    @Override
    public void problems(List<Problem> problems) throws IOException {
        for (Problem problem : problems) {
            problemRows.writeRecord(ProblemsCsv.cells(problem));
            remember(problem);
        }
    }

    /** The first problems of each policy, for the console. */
    private void remember(Problem problem) {
        long alike =
                gravest.stream().filter(p -> p.policy() == problem.policy()).count();
        if (alike < SHOWN) {
            gravest.add(problem);
        }
    }

    /** The gravest problems of this run, at most twenty of each policy. */
    public List<Problem> gravest() {
        List<Problem> sorted = new ArrayList<>(gravest);
        sorted.sort((a, b) -> a.policy().compareTo(b.policy()));
        return sorted;
    }

    @Override
    public void account(EstateAccount all) {
        account = all;
    }

    /** The account of the run, as soon as it is done. */
    public EstateAccount account() {
        return account;
    }

    @Override
    public boolean isDue() {
        return System.nanoTime() - lastKept >= keepEveryNanos;
    }

    @Override
    public void keep(Writer writer) throws IOException {
        problemRows.flush();
        Path part = folder.resolve("state.part");
        try (DataOutputStream out =
                new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(part), 1 << 16))) {
            out.writeUTF(input);
            out.writeLong(problemFile.position());
            writer.write(out);
        }
        Files.move(part, folder.resolve("state"), StandardCopyOption.ATOMIC_MOVE);
        lastKept = System.nanoTime();
    }

    /** The list of problems so far, to be written as an output. */
    public Content problemList() {
        return out -> {
            problemRows.flush();
            Files.copy(folder.resolve("problems.csv"), out);
        };
    }

    /** Removes the folder: the run is done. */
    public void done() throws IOException {
        close();
        for (String name : List.of("state", "state.part", "problems.csv", "lock")) {
            Files.deleteIfExists(folder.resolve(name));
        }
        Files.deleteIfExists(folder);
    }

    /** Leaves the folder as it is, for a run that goes on. */
    @Override
    public void close() throws IOException {
        DataInputStream open = state;
        if (open != null) {
            open.close();
        }
        if (problemFile.isOpen()) {
            problemRows.flush();
            problemFile.close();
        }
        if (lock.isValid()) {
            lock.release();
        }
        lockFile.close();
    }
}
