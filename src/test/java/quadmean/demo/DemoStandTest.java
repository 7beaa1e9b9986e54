package quadmean.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.model.HeightSource;
import quadmean.support.ShippedCruises;

class DemoStandTest {

    @Test
    void theShippedTallyIsWhatTheGeneratorMakes() throws IOException {
        assertEquals(DemoStand.tally(DemoStand.SEED), Files.readString(Path.of("datasets/demo-tally.csv")));
        assertNotEquals(DemoStand.tally(DemoStand.SEED), DemoStand.tally(DemoStand.SEED + 1));
    }

    @Test
    void thePlantedMistakesAreFoundAndNothingElse() {
        CruiseRun run = ShippedCruises.run("demo");
        assertEquals(
                List.of(
                        "26 species-recoded keep",
                        "77 dbh-missing drop",
                        "125 reading-unusable keep",
                        "332 tree-repeated keep",
                        "414 row-repeated drop",
                        "205 height-off-curve keep"),
                run.tally().problems().stream()
                        .map(p -> p.row() + " " + p.rule().code() + " "
                                + p.policy().id())
                        .toList());
        CruiseResult result = run.result();
        assertNotNull(result);
        assertEquals(40, result.tally().plots().size());
        assertEquals(
                2,
                result.tally().plots().stream().filter(p -> p.trees().isEmpty()).count());
        assertEquals(
                0,
                result.trees().stream()
                        .filter(t -> t.source() == HeightSource.NONE)
                        .count());
    }
}
