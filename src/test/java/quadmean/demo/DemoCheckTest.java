package quadmean.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import quadmean.audit.Audit;
import quadmean.audit.CheckCruise;
import quadmean.audit.CheckCruise.Verdict;
import quadmean.audit.CrewCheck;
import quadmean.audit.Finding;
import quadmean.audit.Reading;
import quadmean.design.Crew;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.stats.Interval;
import quadmean.units.Unit;

class DemoCheckTest {

    private static Design design() throws IOException {
        Design design = DesignReader.read(Path.of("designs/demo.toml")).design();
        assertNotNull(design);
        return design;
    }

    @Test
    void theShippedTallyIsWhatTheGeneratorMakes() throws IOException {
        assertEquals(DemoCheck.tally(), Files.readString(Path.of("datasets/demo-check.csv")));
    }

    @Test
    void theDesignHasTheGeneratorsCrews() throws IOException {
        List<String> sumac = DemoCheck.SUMAC.stream().map(String::valueOf).toList();
        List<Crew> crews = design().followUp().crews();
        assertEquals(sumac, crews.get(1).plots());
        assertEquals(40, crews.stream().mapToInt(c -> c.plots().size()).sum());
    }

    /** One biased crew, one species mix-up, two missed borderline trees: these and nothing else. */
    @Test
    void thePlantedMistakesAreFoundAndNothingElse() throws IOException {
        CheckCruise check = Audit.run(design()).result();
        assertNotNull(check);
        assertEquals(
                List.of("CREW_BIAS Sumac", "SPECIES 3-1", "MISSED 10-21", "MISSED 32-31"),
                check.findings().stream().map(f -> f.kind() + " " + f.where()).toList());
        assertTrue(check.findings().stream()
                .filter(f -> f.kind() == Finding.Kind.MISSED)
                .allMatch(f -> f.detail().contains("borderline")));
        assertEquals(Verdict.FAILED, check.verdict());
    }

    /** 0.3 in are planted; the crew's limits hold them, and those of the other crews hold 0. */
    @Test
    void theBiasIsTheOneThatWasPlanted() throws IOException {
        CheckCruise check = Audit.run(design()).result();
        assertNotNull(check);
        for (CrewCheck c : check.crews()) {
            if (c.reading() == Reading.DBH) {
                double planted = c.crew().equals("Sumac") ? Unit.INCH.convert(0.3, Unit.CENTIMETRE) : 0;
                Interval limits = c.limits();
                assertTrue(limits.lower() < planted && planted < limits.upper(), c.toString());
            }
        }
    }
}
