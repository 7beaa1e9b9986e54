package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import quadmean.estimate.PlotsNeeded;
import quadmean.estimate.PlotsNeeded.Verdict;
import quadmean.units.Attribute;

/** The line on plots still to run never denies the verdict beside it. */
class HeadlineMoreTest {
    private static String more(Verdict verdict) {
        return Headline.more(new PlotsNeeded(Attribute.VOLUME, 10.4, 30, OptionalInt.of(29), verdict));
    }

    /** By definition: a target that is missed is not one for which no more plots are needed. */
    @Test
    void aMissedTargetIsNotCalledEnough() {
        assertFalse(more(Verdict.MISSED).contains("No more plots needed"));
        assertTrue(more(Verdict.MISSED).contains("limits in use are wider"));
    }

    @Test
    void aTargetThatIsMetIsEnough() {
        assertTrue(more(Verdict.MET).startsWith("No more plots needed"));
    }
}
