package quadmean.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import quadmean.model.Problem;
import quadmean.support.SmallDesign;

/** A small design of 10 ha, or of strata, with a boundary beside it. */
final class TractCase {
    static final String LOCAL = "crs = \"local\"\nunit = \"m\"\n";

    private final Path folder;
    private final SmallDesign design;

    private TractCase(Path folder, SmallDesign design) {
        this.folder = folder;
        this.design = design;
    }

    /** An undivided stand of 10 ha. */
    static TractCase undivided(Path folder) {
        return new TractCase(folder, new SmallDesign());
    }

    /** Two strata, A (upper bench) of 6 ha and B of 4 ha. */
    static TractCase strata(Path folder) {
        return new TractCase(folder, new SmallDesign().with("area = 10\n", "").plus("""
                                [selection]
                                method = "stratified"
                                [[stratum]]
                                code = "A"
                                name = "upper bench"
                                area = 6
                                [[stratum]]
                                code = "B"
                                area = 4
                                """));
    }

    TractReading read(String file, String boundary, String keys) {
        return read(file, boundary.getBytes(StandardCharsets.UTF_8), keys);
    }

    TractReading read(String file, byte[] boundary, String keys) {
        try {
            Files.write(folder.resolve(file), boundary);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return readMissing(file, keys);
    }

    /** The same where the file was not written. */
    TractReading readMissing(String file, String keys) {
        return BoundaryReader.read(
                design.plus("[tract]\nboundary = \"" + file + "\"\n" + keys).valid(folder));
    }

    /** The tract of a boundary with nothing wrong. */
    Tract tract(String file, String boundary, String keys) {
        TractReading reading = read(file, boundary, keys);
        assertEquals(List.of(), reading.problems());
        return there(reading);
    }

    static Tract there(TractReading reading) {
        assertNotNull(
                reading.tract(),
                () -> reading.problems().stream().map(Problem::message).toList().toString());
        return reading.tract();
    }
}
