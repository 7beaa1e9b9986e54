package quadmean.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts output files into a folder so that none is ever seen half-written and no input is lost. */
public final class OutputFolder {
    private OutputFolder() {}

    /**
     * Writes all files under temporary names first and then moves each into its place. A failure while writing leaves
     * the files of an earlier run as they were; temporary files go in any case.
     *
     * @param folder where to write; created if it is not there
     * @param inputs files that must not be replaced
     * @param files content by file name, a plain name without folders
     * @return the files written, in the order of the map
     * @throws InputOverwriteException if a target is the same file as an input
     * @throws IOException if the folder or a file cannot be written
     */
    public static List<Path> write(Path folder, Collection<Path> inputs, Map<String, Content> files)
            throws IOException {
        Map<Path, Content> targets = new LinkedHashMap<>();
        for (Map.Entry<String, Content> file : files.entrySet()) {
            targets.put(target(folder, file.getKey(), inputs), file.getValue());
        }
        Files.createDirectories(folder);
        Map<Path, Path> temporary = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, Content> target : targets.entrySet()) {
                Path temp = folder.resolve("." + target.getKey().getFileName() + "."
                        + ProcessHandle.current().pid() + ".part");
                temp.toFile().deleteOnExit();
                temporary.put(temp, target.getKey());
                writeOne(temp, target.getValue());
            }
            for (Map.Entry<Path, Path> move : temporary.entrySet()) {
                moveOne(move.getKey(), move.getValue());
            }
            return new ArrayList<>(targets.keySet());
        } finally {
            for (Path temp : temporary.keySet()) {
                Files.deleteIfExists(temp);
            }
        }
    }

    /**
     * Looks before long work whether files could be written.
     *
     * @param names plain file names
     * @throws InputOverwriteException if a target is the same file as an input
     * @throws IOException if something is in the way
     */
    public static void check(Path folder, Collection<Path> inputs, Collection<String> names) throws IOException {
        for (String name : names) {
            target(folder, name, inputs);
        }
    }

    private static Path target(Path folder, String name, Collection<Path> inputs) throws IOException {
        Path target = folder.resolve(name);
        if (Path.of(name).getNameCount() != 1 || !folder.equals(target.getParent())) {
            throw new IllegalArgumentException("an output needs a plain file name, got " + name);
        }
        for (Path input : inputs) {
            if (isSame(target, input)) {
                throw new InputOverwriteException(target);
            }
        }
        if (Files.isDirectory(target)) {
            throw new FileAlreadyExistsException(target.toString(), null, "a folder of that name is in the way");
        }
        return target;
    }

    private static boolean isSame(Path target, Path input) throws IOException {
        if (Files.exists(target) && Files.exists(input)) {
            return Files.isSameFile(target, input);
        }
        return target.toAbsolutePath().normalize().equals(input.toAbsolutePath().normalize());
    }

    private static void writeOne(Path file, Content content) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            content.writeTo(out);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static void moveOne(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
