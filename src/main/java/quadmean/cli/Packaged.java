package quadmean.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Files that travel in the jar, for commands that need no other file than it. */
final class Packaged {
    private Packaged() {}

    /** The bytes of a packaged file; {@code name} is seen from this package, or from the root with a slash. */
    static byte[] bytes(String name) {
        try (InputStream in = Packaged.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program was packaged without " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its own " + name, e);
        }
    }

    /**
     * Copies packaged files into a folder, all or none: a file of such a name is never replaced.
     *
     * @param folder where to; created if it is not there
     * @param files packaged name by path within the folder
     */
    static void copy(Path folder, Map<String, String> files) {
        Map<Path, byte[]> targets = new LinkedHashMap<>();
        files.forEach((path, name) -> targets.put(folder.resolve(path), bytes(name)));
        List<Path> taken = targets.keySet().stream().filter(Files::exists).toList();
        if (!taken.isEmpty() || Files.isRegularFile(folder)) {
            throw new CommandException(
                    ExitCode.USAGE,
                    (taken.isEmpty() ? folder : taken.get(0))
                            + " is there already and stays as it is; name another folder");
        }
        try {
            for (Map.Entry<Path, byte[]> target : targets.entrySet()) {
                Files.createDirectories(target.getKey().toAbsolutePath().getParent());
                Files.write(target.getKey(), target.getValue(), StandardOpenOption.CREATE_NEW);
            }
        } catch (FileAlreadyExistsException e) {
            throw new CommandException(
                    ExitCode.USAGE, e.getFile() + " is there already and stays as it is; name another folder");
        } catch (IOException e) {
            throw new CommandException(
                    ExitCode.CANNOT_WRITE, "files cannot be written to " + folder + ": " + FileTrouble.explain(e));
        }
    }
}
