package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class StudentTTest {
    /** NIST/SEMATECH e-Handbook, upper critical values of Student's t, printed with three decimals. */
    private static final JsonNode NIST = ReferenceFiles.example("t-table-nist");

    private static final double[] TAILS =
            ReferenceFiles.numbers(NIST.get("inputs").get("upper_tail_probabilities"));

    static Stream<String> nistRows() {
        Iterable<String> rows = () -> NIST.get("published").get("table").fieldNames();
        return StreamSupport.stream(rows.spliterator(), false);
    }

    @ParameterizedTest
    @MethodSource("nistRows")
    void criticalValuesAreThoseOfTheNistTable(String df) {
        double[] printed =
                ReferenceFiles.numbers(NIST.get("published").get("table").get(df));
        for (int i = 0; i < TAILS.length; i++) {
            double t = StudentT.critical(1 - 2 * TAILS[i], Double.parseDouble(df));
            Tolerance.printed(3).check(printed[i], t, "t, df " + df + ", upper tail " + TAILS[i]);
        }
    }

    @Test
    void theNistTableHasAllItsRows() {
        assertEquals(33, nistRows().count());
    }

    @Test
    void infiniteDegreesOfFreedomGiveTheNormalValues() {
        double[] printed = ReferenceFiles.numbers(NIST.get("published").get("infinity"));
        for (int i = 0; i < TAILS.length; i++) {
            double z = StudentT.critical(1 - 2 * TAILS[i], Double.POSITIVE_INFINITY);
            Tolerance.printed(3).check(printed[i], z, "z, upper tail " + TAILS[i]);
        }
    }

    /** Closed forms: df 1 is Cauchy, t = tan(π·C/2); df 2 has t = C·√(2/(1 - C²)). */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.6827, 0.8, 0.9, 0.95, 0.99})
    void closedFormsForOneAndTwoDegreesHold(double c) {
        Tolerance inverse = Tolerance.relative("inverse of the distribution", 1e-8);
        inverse.check(Math.tan(Math.PI * c / 2), StudentT.critical(c, 1), "df 1");
        inverse.check(c * Math.sqrt(2 / (1 - c * c)), StudentT.critical(c, 2), "df 2");
    }

    /** Reclamation report, t one-tailed at 0.10: the rounded t of a printed table misses the published figures. */
    @Test
    void sampleAdequacyFiguresOfAPublishedReportComeOut() {
        JsonNode e = ReferenceFiles.example("sample-adequacy-t-10percent");
        for (JsonNode area : e.get("inputs")) {
            double t = StudentT.critical(0.8, area.get("n").asInt() - 1);
            double allowed = 0.1 * ReferenceFiles.number(area.get("mean"));
            double needed = t * t * ReferenceFiles.number(area.get("variance")) / (allowed * allowed);
            String name = area.get("area").asText();
            Tolerance.printed(2).check(ReferenceFiles.number(e.get("published").get(name)), needed, name);
        }
        assertEquals(3, e.get("inputs").size());
    }

    /** Arithmetic of a homework page: worked-examples.json sample-size-z-basal-area. */
    @Test
    void sampleSizeFromTheNormalValueComesOut() {
        JsonNode e = ReferenceFiles.example("sample-size-z-basal-area");
        JsonNode in = e.get("inputs");
        double z = StudentT.critical(ReferenceFiles.number(in.get("confidence")), Double.POSITIVE_INFINITY);
        double n = Math.pow(z * ReferenceFiles.number(in.get("sigma")) / ReferenceFiles.number(in.get("error")), 2);
        JsonNode published = e.get("published");
        Tolerance.printed(9).check(ReferenceFiles.number(published.get("z")), z, "z");
        Tolerance.printed(8).check(ReferenceFiles.number(published.get("n")), n, "n");
        assertEquals(published.get("n_rounded_up").asInt(), (int) Math.ceil(n));
    }

    @ParameterizedTest
    @CsvSource({"0,5", "1,5", "-0.1,5", "95,5", "NaN,5", "0.95,0", "0.95,-1", "0.95,NaN"})
    void valuesOutsideTheDomainAreRefused(double confidence, double df) {
        assertThrows(IllegalArgumentException.class, () -> StudentT.critical(confidence, df));
    }
}
