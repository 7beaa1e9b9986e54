package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.stats.NextUnits.Target;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class NextUnitsTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final Target TARGET = new Target(10, 0.95);

    /** R 4.2.2, pchisq((n-1)·n·(E/(t·cv))²/(1-n/N), n-1), searched upward. */
    @ParameterizedTest
    @CsvSource({
        "40,10,0.95,Infinity,0.8,73",
        "60,15,0.9,Infinity,0.8,53",
        "25,20,0.95,Infinity,0.8,11",
        "50,10,0.95,200,0.8,73",
        "20,20,0.95,Infinity,0.8,8",
        "40,10,0.95,Infinity,0.9,77",
        "60,15,0.9,Infinity,0.9,57",
        "25,20,0.95,Infinity,0.9,12",
        "50,10,0.95,200,0.9,76",
        "20,20,0.95,Infinity,0.9,9"
    })
    void assuredSizes(double cv, double error, double confidence, double units, double assurance, int n) {
        assertEquals(OptionalInt.of(n), SampleSize.assured(cv, error, confidence, units, assurance));
    }

    /** Formulary: at CV 40 %, n = 64 reaches ±10 % in 52 to 55 of 100 cruises; R: pchisq gives 0.527404906425. */
    @Test
    void plainSizesReachTheTargetHalfTheTime() {
        assertEquals(OptionalInt.of(64), SampleSize.simpleRandom(40, 10, 0.95, INFINITE));
        Tolerance.R_SCRIPT.check(0.527404906425, SampleSize.assurance(64, 40, 10, 0.95, INFINITE), "assurance");
        assertEquals(1, SampleSize.assurance(20, 40, 10, 0.95, 20));
        assertTrue(SampleSize.assured(100, 0.01, 0.95, INFINITE, 0.8).isEmpty());
        assertTrue(SampleSize.assured(1e4, 6.2, 0.95, INFINITE, 0.999999).isEmpty());
    }

    /** And in simulated cruises of normal plots: 73 reach it in 80 of 100 or little more. */
    @Test
    @Tag("slow")
    void assuredSizesReachTheTargetAsOftenAsTheySay() {
        Random random = new Random(64);
        for (int n : new int[] {64, 73, 77}) {
            int reached = 0;
            int cruises = 40_000;
            for (int k = 0; k < cruises; k++) {
                double[] plots = new double[n];
                Arrays.setAll(plots, i -> 100 + 40 * random.nextGaussian());
                double half = StratifiedMean.simple(StratumSample.of(1, plots)).halfWidth(0.95);
                reached += half <= 10 ? 1 : 0;
            }
            double expected = SampleSize.assurance(n, 40, 10, 0.95, INFINITE);
            double chance = 4 * Math.sqrt(0.25 / cruises);
            Tolerance.absolute("four Monte Carlo errors", chance).check(expected, (double) reached / cruises, "n " + n);
        }
    }

    /** One stratum needs what a simple random sample needs. */
    @ParameterizedTest
    @EnumSource(Allocation.class)
    void oneStratum(Allocation allocation) {
        List<StratumSample> sample = List.of(new StratumSample(1, 900, Samples.positive(12, new Random(5))));
        Moments m = Moments.of(sample.get(0).values());
        double cv = 100 * m.sd() / m.mean();
        NextUnits next = NextUnits.reach(sample, allocation, TARGET).orElseThrow();
        assertEquals(SampleSize.simpleRandom(cv, 10, 0.95, 900), OptionalInt.of(next.total()));
        NextUnits sure = NextUnits.reach(sample, allocation, TARGET, 0.9).orElseThrow();
        assertEquals(SampleSize.assured(cv, 10, 0.95, 900, 0.9), OptionalInt.of(sure.total()));
        assertTrue(sure.assurance() >= 0.9 && next.assurance() < 0.9);
    }

    /** Freese's three types (partly from memory): ten in each so far; what is needed by hand is the allocation's own answer. */
    @Test
    void measuredUnitsStay() {
        List<StratumSample> sample = freese();
        NextUnits now = NextUnits.reach(sample, Allocation.NEYMAN, TARGET).orElseThrow();
        assertArrayEquals(new int[] {0, 0, 0}, now.more());
        MeanEstimate m = StratifiedMean.estimate(sample, DegreesOfFreedom.UNITS_MINUS_STRATA);
        Tolerance.ROUNDING.check(m.samplingErrorPercent(0.95), now.expectedErrorPercent(), "error so far");
        Target narrow = new Target(4.5, 0.95);
        NextUnits next = NextUnits.reach(sample, Allocation.NEYMAN, narrow).orElseThrow();
        assertTrue(next.expectedErrorPercent() <= 4.5);
        assertEquals(next.total(), Arrays.stream(next.units()).sum());
        assertEquals(next.total() - 30, Arrays.stream(next.more()).sum());
        assertTrue(Arrays.stream(next.units()).allMatch(n -> n >= 10));
        int[] without = Allocation.NEYMAN.smallest(4.5, 0.95, planned(sample));
        assertTrue(next.total() >= Arrays.stream(without).sum(), "what is measured cannot be moved");
        int[] fewer = next.units().clone();
        fewer[0]--;
        assertTrue(Allocation.errorPercent(fewer, 0.95, planned(sample)) > 4.5, "one fewer is not enough");
    }

    @Test
    void theCurveFalls() {
        List<NextUnits> curve = NextUnits.gainCurve(freese(), Allocation.PROPORTIONAL, TARGET, 230, 9);
        assertEquals(9, curve.size());
        assertEquals(30, curve.get(0).total());
        for (int k = 1; k < curve.size(); k++) {
            assertTrue(curve.get(k).total() > curve.get(k - 1).total());
            assertTrue(curve.get(k).expectedErrorPercent() < curve.get(k - 1).expectedErrorPercent());
        }
        assertEquals(
                1,
                NextUnits.gainCurve(freese(), Allocation.NEYMAN, TARGET, 30, 5).size());
    }

    @Test
    void outOfReachOrWithoutSpread() {
        Target never = new Target(1e-4, 0.95);
        List<StratumSample> endless = List.of(StratumSample.of(1, new double[] {1, 5, 9}));
        assertTrue(NextUnits.reach(endless, Allocation.NEYMAN, never).isEmpty());
        List<StratumSample> small = List.of(new StratumSample(1, 7, new double[] {1, 5, 9}));
        NextUnits census = NextUnits.reach(small, Allocation.NEYMAN, never).orElseThrow();
        assertEquals(7, census.total());
        assertEquals(1, census.assurance());
        List<StratumSample> single = List.of(StratumSample.of(1, new double[] {4}));
        assertThrows(IllegalArgumentException.class, () -> NextUnits.reach(single, Allocation.NEYMAN, TARGET));
    }

    private static List<Allocation.PlannedStratum> planned(List<StratumSample> sample) {
        return sample.stream()
                .map(s -> {
                    Moments m = Moments.of(s.values());
                    return new Allocation.PlannedStratum(s.weight(), s.populationUnits(), m.mean(), m.sd());
                })
                .toList();
    }

    private static List<StratumSample> freese() {
        var strata =
                ReferenceFiles.example("stratified-freese-3types").get("inputs").get("strata");
        return java.util.stream.IntStream.range(0, 3)
                .mapToObj(strata::get)
                .map(s -> new StratumSample(
                        ReferenceFiles.number(s.get("N")) / 2500,
                        ReferenceFiles.number(s.get("N")),
                        ReferenceFiles.numbers(s.get("values"))))
                .toList();
    }
}
