package quadmean.design;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import quadmean.model.Rule;

/** Where the tallies of a design lie, and what to call them so that no two are mistaken for each other. */
final class TallyPaths {
    private final Path designFile;

    TallyPaths(Path designFile) {
        this.designFile = designFile;
    }

    /** The path that a tally names, as seen from the design file; empty if it is no path, which is then noted. */
    Optional<Path> resolve(Section s, String name) {
        try {
            return Optional.of(designFile.toAbsolutePath().resolveSibling(name).normalize());
        } catch (InvalidPathException e) {
            s.problem(Rule.DESIGN_VALUE, "file", name, "this is no file name: " + e.getReason());
            return Optional.empty();
        }
    }

    /** Notes a tally that stands in the design already: its rows would count twice. */
    static void checkNew(Section s, Path path, String name, List<TallyFile> before) {
        if (isAmong(path, before)) {
            s.problem(Rule.DESIGN_VALUE, "file", name, name + " is a tally of this design already");
        }
    }

    /** Whether a file is one of some tallies. */
    static boolean isAmong(Path path, List<TallyFile> tallies) {
        return tallies.stream().anyMatch(t -> isSame(path, t.path()));
    }

    private static boolean isSame(Path a, Path b) {
        try {
            return a.equals(b) || (Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b));
        } catch (IOException e) {
            return false;
        }
    }

    /** The tallies, those that share a file name called by their paths. */
    static List<TallyFile> named(List<TallyFile> files, List<String> written) {
        List<String> names = files.stream().map(TallyFile::name).toList();
        return files.stream()
                .map(f -> names.indexOf(f.name()) == names.lastIndexOf(f.name())
                        ? f
                        : f.called(written.get(files.indexOf(f))))
                .toList();
    }
}
