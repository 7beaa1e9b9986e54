package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class NormalCurveTest {
    /** NIST/SEMATECH e-Handbook, table of Student's t, row infinity: worked-examples.json t-table-nist. */
    @Test
    void publishedNormalValuesLeaveTheirTails() {
        JsonNode nist = ReferenceFiles.example("t-table-nist");
        double[] tails = ReferenceFiles.numbers(nist.get("inputs").get("upper_tail_probabilities"));
        double[] printed = ReferenceFiles.numbers(nist.get("published").get("infinity"));
        // the density is at most 0.4, so that 0.0005 of rounding in z is worth at most 0.0002
        Tolerance rounding = Tolerance.absolute("z printed with 3 decimals", 0.0002);
        for (int i = 0; i < tails.length; i++) {
            rounding.check(tails[i], NormalCurve.lowerTail(-printed[i]), "z " + printed[i]);
        }
    }

    /** By symmetry. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 1, 2.5, 6})
    void theTwoTailsMakeOne(double z) {
        Tolerance.ROUNDING.check(1, NormalCurve.lowerTail(z) + NormalCurve.lowerTail(-z), "sum at " + z);
    }

    @Test
    void theEndsAreZeroAndOne() {
        assertEquals(0, NormalCurve.lowerTail(Double.NEGATIVE_INFINITY));
        assertEquals(1, NormalCurve.lowerTail(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> NormalCurve.lowerTail(Double.NaN));
    }
}
