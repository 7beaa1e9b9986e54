package quadmean.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quadmean.report.Content;
import quadmean.report.InputOverwriteException;
import quadmean.report.OutputFolder;

/** Where commands put their results. */
final class Results {
    private Results() {}

    /** Writes files, and names them. */
    @FunctionalInterface
    private interface Writing {
        List<Path> written() throws IOException;
    }

    /** Refuses a name of a folder that is none. */
    static void checkName(@Nullable Path out) {
        if (out != null && out.toString().isBlank()) {
            throw new CommandException(ExitCode.USAGE, "--out needs the name of a folder, such as --out results");
        }
    }

    /**
     * The folder that {@code --out} names, else one under {@code out/} named after the input.
     *
     * @param ending ending of the input's name that is left out
     * @param suffix put behind the name
     */
    static Path folder(@Nullable Path out, Path input, String ending, String suffix) {
        if (out != null) {
            return out;
        }
        String name = String.valueOf(input.getFileName());
        String plain = name.endsWith(ending) ? name.substring(0, name.length() - ending.length()) : name;
        return Path.of("out", plain + suffix);
    }

    /** Asks before long work what {@link #write} would refuse after it. */
    private static CommandException cannotWrite(Path folder, IOException e) {
        return new CommandException(
                ExitCode.CANNOT_WRITE,
                "the results cannot be written to " + folder + " (" + FileTrouble.explain(e)
                        + "); name another folder with --out");
    }

    /** Writes files into a folder; trouble becomes a message with the exit code that belongs to it. */
    static List<Path> write(Path folder, List<Path> inputs, Map<String, Content> files) {
        return of(folder, () -> OutputFolder.write(folder, inputs, files));
    }

    /** Looks before long work whether files of these names could be written. */
    static void check(Path folder, List<Path> inputs, List<String> names) {
        of(folder, () -> {
            OutputFolder.check(folder, inputs, names);
            return List.of();
        });
    }

    private static List<Path> of(Path folder, Writing writing) {
        try {
            return writing.written();
        } catch (InputOverwriteException e) {
            throw new CommandException(ExitCode.USAGE, String.valueOf(e.getMessage()));
        } catch (IOException e) {
            throw cannotWrite(folder, e);
        }
    }
}
