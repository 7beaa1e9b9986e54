package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import quadmean.support.Tolerance;

class RobustTest {

    @Test
    void theMedianIsTheMiddleOrTheMeanOfTheTwoMiddles() {
        assertEquals(3, Robust.median(new double[] {9, 1, 3}));
        assertEquals(2.5, Robust.median(new double[] {9, 1, 3, 2}));
        assertTrue(Double.isNaN(Robust.median(new double[0])));
    }

    /** 1.4826 is 1 over the upper quartile of the normal distribution, 0.67449. */
    @Test
    void ofNormalValuesItIsTheirStandardDeviation() {
        Random random = new Random(7);
        double[] values = new double[20_001];
        for (int i = 0; i < values.length; i++) {
            values[i] = 5 + 2 * random.nextGaussian();
        }
        // sampling error of the estimator: about 1.17·sd/√n, here 0.0165; four of them
        Tolerance.absolute("sampling", 0.066).check(2, Robust.sd(values, Robust.median(values)), "sd");
    }

    @Test
    void aFewWildValuesDoNotMoveIt() {
        double[] values = {1, 2, 3, 4, 5, 6, 7};
        double[] wild = {1, 2, 3, 4, 5, 6, 1e9};
        assertEquals(Robust.sd(values, 4), Robust.sd(wild, 4));
    }
}
