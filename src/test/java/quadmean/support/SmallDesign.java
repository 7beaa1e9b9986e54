package quadmean.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.model.Problem;

/**
 * A small valid design of which tests change a line. Line numbers that tests expect are those of {@link #TEXT}.
 *
 * @param text the design
 */
public record SmallDesign(String text) {
    /** Twenty-three lines. */
    public static final String TEXT = """
            schema = 1

            [cruise]
            name = "Small"
            units = "metric"
            area = 10

            [plot]
            kind = "fixed"
            area = 0.1

            [[tally]]
            file = "tally.csv"

            [tally.columns]
            plot = "plot"
            tree = "tree"
            species = "species"
            dbh = { name = "dbh", unit = "cm" }
            height = { name = "height", unit = "m" }

            [species.PSME]
            name = "Douglas-fir"
            """;

    public SmallDesign() {
        this(TEXT);
    }

    /** The design with one text replaced, which must be there. */
    public SmallDesign with(String old, String now) {
        assertTrue(text.contains(old), "the design has no " + old);
        return new SmallDesign(text.replace(old, now));
    }

    /** The design with lines at its end, from line 24 on. */
    public SmallDesign plus(String lines) {
        return new SmallDesign(text + lines + "\n");
    }

    public Path write(Path folder) {
        try {
            return Files.writeString(folder.resolve("design.toml"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public DesignReading read(Path folder) {
        try {
            return DesignReader.read(write(folder));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public List<Problem> problems(Path folder) {
        return read(folder).problems();
    }

    /** The design, which must be in order. */
    public Design valid(Path folder) {
        DesignReading reading = read(folder);
        assertEquals(List.of(), reading.problems());
        return java.util.Objects.requireNonNull(reading.design());
    }
}
