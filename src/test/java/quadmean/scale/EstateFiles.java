package quadmean.scale;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;

/**
 * The files of an invented estate: {@code stands.csv}, {@code curves.csv}, {@code estate.toml}, {@code estate-given.toml}, and the tally
 * as {@code tally.csv} or as several files in the folder {@code tally}.
 *
 * @param folder folder that they lie in
 * @param tallies number of files that the tally is split into; 1 or more
 * @param packing whether the tally is packed
 * @param existing what happens to files of these names that are there already
 */
record EstateFiles(Path folder, int tallies, Packing packing, Existing existing) {
    private static final int BUFFER = 1 << 16;

    /** Whether the tally is packed. */
    enum Packing {
        PLAIN(""),
        GZIP(".gz");

        private final String ending;

        Packing(String ending) {
            this.ending = ending;
        }
    }

    /** What happens to files that are there already. */
    enum Existing {
        REFUSE,
        REPLACE
    }

    EstateFiles {
        if (tallies < 1) {
            throw new IllegalArgumentException("A tally has one file or more; given were " + tallies);
        }
    }

    Path stands() {
        return folder.resolve("stands.csv");
    }

    /** The curves that the heights were drawn about. */
    Path curves() {
        return folder.resolve("curves.csv");
    }

    /** The design that fits its curves. */
    Path design() {
        return folder.resolve("estate.toml");
    }

    /** The design that takes the curves given. */
    Path designWithCurves() {
        return folder.resolve("estate-given.toml");
    }

    /** What the design calls the tally: a file, or a folder of files. */
    String tallyName() {
        return tallies == 1 ? "tally.csv" + packing.ending : "tally";
    }

    /** One of the files of the tally; parts count from 0 and sort by their names. */
    Path tally(int part) {
        return tallies == 1
                ? folder.resolve(tallyName())
                : folder.resolve(tallyName())
                        .resolve(String.format(Locale.ROOT, "part-%04d.csv%s", part + 1, packing.ending));
    }

    /**
     * Makes the folders, after a look at what lies there.
     *
     * @throws FileAlreadyExistsException if a file is there already and must not be replaced
     */
    void prepare() throws IOException {
        Optional<Path> there = Stream.concat(
                        Stream.of(stands(), curves(), design(), designWithCurves()),
                        IntStream.range(0, tallies).mapToObj(this::tally))
                .filter(Files::exists)
                .findFirst();
        if (there.isPresent() && existing == Existing.REFUSE) {
            throw new FileAlreadyExistsException(there.get()
                    + " is there already; nothing was written. Name another folder, or" + " add the word replace.");
        }
        Files.createDirectories(folder);
        if (tallies > 1) {
            Files.createDirectories(folder.resolve(tallyName()));
        }
    }

    /** Opens one of the files of the tally for writing. */
    OutputStream openTally(int part) throws IOException {
        OutputStream file = Files.newOutputStream(tally(part));
        return packing == Packing.GZIP ? new GZIPOutputStream(file, BUFFER) : file;
    }
}
