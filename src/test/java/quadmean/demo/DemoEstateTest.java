package quadmean.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class DemoEstateTest {
    @Test
    void shippedFilesAreWhatTheGeneratorMakes() throws IOException {
        assertEquals(DemoEstate.standTable(), Files.readString(Path.of("datasets/estate-stands.csv")));
        assertEquals(DemoEstate.tally(), Files.readString(Path.of("datasets/estate-tally.csv")));
    }
}
