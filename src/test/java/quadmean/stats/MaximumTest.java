package quadmean.stats;

import org.junit.jupiter.api.Test;
import quadmean.support.Tolerance;

class MaximumTest {
    private static final Tolerance FLAT = Tolerance.absolute("a peak is flat to rounding", 1e-7);

    @Test
    void thePeakIsFound() {
        FLAT.check(0.7, Maximum.between(-1, 3, x -> -(x - 0.7) * (x - 0.7)), "parabola");
        FLAT.check(Math.E, Maximum.between(1, 10, x -> Math.log(x) / x), "ln x over x");
    }

    @Test
    void aFunctionThatRisesThroughoutPeaksAtTheEnd() {
        FLAT.check(3, Maximum.between(-1, 3, x -> x), "rising");
        FLAT.check(-1, Maximum.between(-1, 3, x -> -x), "falling");
    }
}
