package quadmean.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.BufferedOutputStream;
import java.io.DataInput;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import quadmean.cruise.EstateAccount;
import quadmean.cruise.EstateKeeping;
import quadmean.model.Problem;
import quadmean.report.StateFile.Head;
import quadmean.report.StateFile.Kept;

/**
 * Where a run over an estate works until it is done: a folder inside that of the results, locked against a second run, with the problems
 * so far and the state to go on from. Nothing under a final name is touched; the folder goes when the run is done.
 */
public final class EstateFolder implements EstateKeeping, AutoCloseable {
    /** Name of the folder inside that of the results. */
    public static final String NAME = ".unfinished";

    private static final String LOCK = "lock";
    private static final String PROBLEMS = "problems.csv";
    private static final int SHOWN = 20;

    private final Path folder;
    private final StateFile stateFile;
    private final Consumer<String> notes;
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
            Path folder,
            String input,
            long keepEveryNanos,
            FileChannel lockFile,
            FileLock lock,
            FileChannel problems,
            Consumer<String> notes) {
        this.folder = folder;
        this.stateFile = new StateFile(folder);
        this.notes = notes;
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
     * @param notes told in a sentence what becomes of the work of an interrupted run
     * @throws CannotKeepException if it cannot be written, or another run has it
     */
    public static EstateFolder take(Path results, String input, long keepEverySeconds, Consumer<String> notes) {
        EstateFolder[] taken = new EstateFolder[1];
        writing(() -> taken[0] = taken(results, input, keepEverySeconds, notes));
        return taken[0];
    }

    private static EstateFolder taken(Path results, String input, long keepEverySeconds, Consumer<String> notes)
            throws IOException {
        Path folder = results.resolve(NAME);
        Files.createDirectories(folder);
        FileChannel lockFile =
                FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = lock(lockFile);
        if (lock == null) {
            lockFile.close();
            throw new FileSystemException(results.toString(), null, "another run is writing there; wait for it");
        }
        FileChannel problems = FileChannel.open(
                folder.resolve(PROBLEMS), StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.READ);
        return new EstateFolder(
                folder, input, TimeUnit.SECONDS.toNanos(keepEverySeconds), lockFile, lock, problems, notes);
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
        Optional<Kept> found = usable();
        long until = found.map(k -> k.head().problemBytes()).orElse(0L);
        writing(() -> {
            problemFile.truncate(until);
            problemFile.position(until);
            if (until == 0) {
                problemRows.writeRecord(ProblemsCsv.HEADER);
            }
        });
        return found.map(Kept::in);
    }

    /** The state of the same input, if there is one in order; says what becomes of one that there is. */
    private Optional<Kept> usable() throws IOException {
        if (!stateFile.exists()) {
            return Optional.empty();
        }
        Kept kept = stateFile.read();
        if (kept == null) {
            notes.accept("What an interrupted run left here is damaged: this run starts anew.");
            return Optional.empty();
        }
        state = kept.in();
        boolean isSame = kept.head().input().equals(input);
        if (!isSame || problemFile.size() < kept.head().problemBytes()) {
            notes.accept("An interrupted run left its work here, but "
                    + (isSame ? "its list of problems is gone" : "design, input or program are not the same")
                    + ": this run starts anew.");
            return Optional.empty();
        }
        notes.accept(String.format(
                Locale.ROOT,
                "An interrupted run goes on: %,d rows were added up before.",
                kept.head().rows()));
        return Optional.of(kept);
    }

    @Override
    public void problems(List<Problem> problems) {
        writing(() -> {
            for (Problem problem : problems) {
                problemRows.writeRecord(ProblemsCsv.cells(problem));
                remember(problem);
            }
        });
    }

    /** Writes something. */
    @FunctionalInterface
    private interface Writing {
        void run() throws IOException;
    }

    private static void writing(Writing what) {
        try {
            what.run();
        } catch (UncheckedIOException e) {
            throw new CannotKeepException(Objects.requireNonNullElse(e.getCause(), new IOException(e)));
        } catch (IOException e) {
            throw new CannotKeepException(e);
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
    public void keep(long rows, Writer writer) {
        writing(() -> {
            problemRows.flush();
            stateFile.write(new Head(input, problemFile.position(), rows), writer);
        });
        lastKept = System.nanoTime();
    }

    /** The list of problems so far, to be written as an output. */
    public Content problemList() {
        return out -> {
            problemRows.flush();
            Files.copy(folder.resolve(PROBLEMS), out);
        };
    }

    /** The run is done, and nothing of it goes on. */
    public void done() throws IOException {
        closeFiles();
        stateFile.delete();
        close();
    }

    /**
     * Leaves the folder for a run that goes on; without a state there is nothing to go on from, and it is removed. The lock goes last, so
     * that no other run loses its files.
     */
    @Override
    public void close() throws IOException {
        boolean isLeft = stateFile.exists();
        try {
            closeFiles();
            if (!isLeft && lock.isValid()) {
                Files.deleteIfExists(folder.resolve(PROBLEMS));
            }
        } finally {
            boolean isOurs = lock.isValid();
            if (isOurs) {
                lock.release();
            }
            lockFile.close();
            if (isOurs && !isLeft) {
                removeEmpty();
            }
        }
    }

    private void removeEmpty() throws IOException {
        try {
            Files.deleteIfExists(folder.resolve(LOCK));
            Files.deleteIfExists(folder);
        } catch (DirectoryNotEmptyException e) {
            return; // another run has begun
        }
    }

    private void closeFiles() throws IOException {
        DataInputStream open = state;
        if (open != null) {
            open.close();
        }
        try {
            if (problemFile.isOpen()) {
                problemRows.flush();
            }
        } catch (IOException e) {
            // a run that fails for this has said so; one that goes on does so from what the state knows of
        } finally {
            problemFile.close();
        }
    }
}
