package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/** Diameters of the 339 longleaf pines of 20 cm and more. */
class WeibullTest {
    private static final double[] DBH = ReferenceFiles.csv("longleaf.csv").stream()
            .mapToDouble(r -> ReferenceFiles.number(r, "dbh_cm"))
            .filter(d -> d >= 20)
            .toArray();

    /** weibull.csv: likelihood equations solved in R, script weibull.R. */
    @ParameterizedTest
    @CsvSource({"0", "20"})
    void largestLikelihood(double limit) {
        assertEquals(339, DBH.length);
        var expected = ReferenceFiles.csv("weibull.csv").stream()
                .filter(r -> ReferenceFiles.number(r, "limit_cm") == limit)
                .findFirst()
                .orElseThrow();
        WeibullFit fit =
                WeibullFit.truncated(DBH, Samples.times(3, ones()), 0, limit).orElseThrow();
        Tolerance.R_SCRIPT.check(
                ReferenceFiles.number(expected, "shape"), fit.weibull().shape(), "shape");
        Tolerance.R_SCRIPT.check(
                ReferenceFiles.number(expected, "scale"), fit.weibull().scale(), "scale");
        Tolerance.R_SCRIPT.check(
                ReferenceFiles.number(expected, "log_likelihood"), fit.logLikelihood(), "log-likelihood");
        // the script takes second derivatives as differences
        Tolerance.FIT.check(ReferenceFiles.number(expected, "se_shape"), fit.shapeError(), "error of the shape");
        Tolerance.FIT.check(ReferenceFiles.number(expected, "se_scale"), fit.scaleError(), "error of the scale");
    }

    /** Formulary values for the same pines, printed with 6 and 5 decimals, 3 for the errors. */
    @Test
    void completeFitAsPrinted() {
        WeibullFit fit = WeibullFit.complete(DBH, 0).orElseThrow();
        Tolerance.printed(6).check(3.786245, fit.weibull().shape(), "shape");
        Tolerance.printed(5).check(44.47194, fit.weibull().scale(), "scale");
        Tolerance.printed(3).check(0.155, fit.shapeError(), "error of the shape");
        Tolerance.printed(3).check(0.675, fit.scaleError(), "error of the scale");
    }

    /**
     * The same by percentiles (type 6): 27.8882 and 66.6058 give c 3.43366; b 43.7828. The printed percentiles are those of 0.1673 and
     * 0.9737; at Dubey's 0.16731 and 0.97366, whose numerator is printed as 2.98882, R's quantile gives 27.88854 and 66.60444.
     */
    @Test
    void percentilesAsPrinted() {
        Weibull w = Weibull.byPercentiles(DBH, 0, 0.1673, 0.9737);
        Tolerance.printed(5).check(3.43366, w.shape(), "shape");
        Tolerance.printed(4).check(43.7828, w.scale(), "scale");
        Weibull dubey = Weibull.byPercentiles(DBH, 0, Weibull.LOW, Weibull.HIGH);
        // the numerator and both percentiles rounded: 2e-6, 2e-7 and 8e-8 of them
        Tolerance.relative("printed digits", 4e-6)
                .check(2.98882 / Math.log(66.60444 / 27.88854), dubey.shape(), "shape");
    }

    /** Shape 1 is the exponential distribution, whose best scale is the mean; moved values move the location only (by algebra). */
    @Test
    void shiftAndScale() {
        WeibullFit fit = WeibullFit.complete(DBH, 10).orElseThrow();
        double[] moved = Arrays.stream(DBH).map(d -> 2 * (d - 10)).toArray();
        WeibullFit other = WeibullFit.complete(moved, 0).orElseThrow();
        Tolerance close = Tolerance.relative("two solutions of one equation", 1e-10);
        close.check(fit.weibull().shape(), other.weibull().shape(), "shape");
        close.check(2 * fit.weibull().scale(), other.weibull().scale(), "scale");
        close.check(2 * fit.scaleError(), other.scaleError(), "error of the scale");
        Weibull exponential = new Weibull(0, 5, 1);
        Tolerance.ROUNDING.check(1 - Math.exp(-0.4), exponential.below(2), "share below 2");
        Tolerance.ROUNDING.check(Math.exp(-0.4) / 5, exponential.density(2), "density");
        assertEquals(0, exponential.below(-1));
        assertEquals(0, exponential.density(-1));
        Tolerance.ROUNDING.check(exponential.below(4) - exponential.below(2), exponential.between(2, 4), "class");
    }

    /** A tree that stands for three counts as three trees. */
    @Test
    void weightsAreCounts() {
        double[] values = {22, 30, 41};
        double[] twice = {22, 22, 22, 30, 41, 41};
        WeibullFit weighted =
                WeibullFit.truncated(values, new double[] {3, 1, 2}, 0, 20).orElseThrow();
        double[] ones = new double[6];
        Arrays.fill(ones, 1);
        WeibullFit counted = WeibullFit.truncated(twice, ones, 0, 20).orElseThrow();
        Tolerance close = Tolerance.relative("two solutions of one equation", 1e-10);
        close.check(counted.weibull().shape(), weighted.weibull().shape(), "shape");
        close.check(counted.weibull().scale(), weighted.weibull().scale(), "scale");
    }

    /** Values cut off at 20 from a known distribution: only the truncated likelihood finds it again. */
    @Test
    void truncationIsSeenThrough() {
        Random random = new Random(20);
        double[] all = random.doubles(40_000)
                .map(u -> 30 * Math.pow(-Math.log(u), 1 / 2.5))
                .filter(x -> x >= 20)
                .toArray();
        double[] ones = new double[all.length];
        Arrays.fill(ones, 1);
        WeibullFit fit = WeibullFit.truncated(all, ones, 0, 20).orElseThrow();
        assertEquals(2.5, fit.weibull().shape(), 4 * fit.shapeError());
        assertEquals(30, fit.weibull().scale(), 4 * fit.scaleError());
        WeibullFit plain = WeibullFit.complete(all, 0).orElseThrow();
        assertTrue(plain.weibull().shape() > 2.5 + 20 * plain.shapeError());
    }

    @Test
    void whatHasNoBestFitGetsNone() {
        assertTrue(WeibullFit.complete(new double[] {7, 7, 7}, 0).isEmpty());
        // one far value after many at the limit: the tail is heavier than any such curve
        double[] heavy = new double[30];
        Arrays.fill(heavy, 10.0001);
        heavy[29] = 1e9;
        double[] ones = new double[30];
        Arrays.fill(ones, 1);
        assertTrue(WeibullFit.truncated(heavy, ones, 0, 10).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> WeibullFit.truncated(heavy, ones, 0, 11));
        assertThrows(IllegalArgumentException.class, () -> WeibullFit.truncated(heavy, ones, 12, 11));
        assertThrows(IllegalArgumentException.class, () -> WeibullFit.complete(heavy, 10.5));
        assertThrows(IllegalArgumentException.class, () -> byPercentiles(0, 7, 7, 7));
        assertThrows(IllegalArgumentException.class, () -> byPercentiles(7, 7, 8));
        assertThrows(IllegalArgumentException.class, () -> new Weibull(0, -1, 2));
    }

    private static Weibull byPercentiles(double location, double... values) {
        return Weibull.byPercentiles(values, location, Weibull.LOW, Weibull.HIGH);
    }

    private static double[] ones() {
        double[] ones = new double[DBH.length];
        Arrays.fill(ones, 1);
        return ones;
    }
}
