package quadmean.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SampleTalliesTest {

    @ParameterizedTest
    @EnumSource(SampleTallies.Tally.class)
    void theShippedTallyIsWhatTheGeneratorMakes(SampleTallies.Tally tally) throws IOException {
        assertEquals(tally.text(), Files.readString(tally.path()));
    }
}
