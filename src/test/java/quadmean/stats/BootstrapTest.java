package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class BootstrapTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final JsonNode REFERENCE = ReferenceFiles.json("bootstrap.json");
    private static final JsonNode LONGLEAF = ReferenceFiles.json("longleaf-estimates.json");

    /** bootstrap.json: limits by boot.ci of R's boot 1.3-28 from 999 resamples that the file holds. */
    @ParameterizedTest
    @CsvSource({"mean,0", "per_stem,1"})
    void limitsFromTheSameResamplesAreThoseOfR(String entry, int output) {
        JsonNode expected = REFERENCE.get("arithmetic").get(entry);
        double[] sorted = numbers(expected.get("t"));
        Arrays.sort(sorted);
        ReplicateLimits limits = new ReplicateLimits(sorted);
        ResampledStratum[] design = {new ResampledStratum(1, INFINITE, 16)};
        Jackknife jackknife = Jackknife.of(design, basalAreaAndPerStem());
        double a = jackknife.accelerations()[output];
        Tolerance.R_SCRIPT.check(number(expected.get("estimate")), jackknife.estimates()[output], "estimate");
        Tolerance.R_SCRIPT.check(number(expected.get("acceleration")), a, "acceleration");
        double bias = limits.bias(jackknife.estimates()[output]);
        double[] percentile = {limits.quantile(0.05), limits.quantile(0.95)};
        double[] bca = {
            limits.quantile(ReplicateLimits.corrected(0.05, bias, a)),
            limits.quantile(ReplicateLimits.corrected(0.95, bias, a))
        };
        Tolerance.R_SCRIPT.check(numbers(expected.get("percentile")), percentile, "percentile");
        Tolerance.R_SCRIPT.check(numbers(expected.get("bca")), bca, "BCa");
    }

    /**
     * bootstrap.json: 400 000 resamples drawn by a script in R. A 5 % quantile of a normal shape has a Monte Carlo error of
     * 2.1·SE/√R; two runs and five such errors make 0.024·SE.
     */
    @Test
    void resamplesOfStrataVaryAsThoseOfR() {
        JsonNode expected = REFERENCE.get("stratified");
        List<StratumSample> strata = longleafStrata();
        BootstrapSample sample = Bootstrap.run(design(strata), ColumnMeans.of(column(strata)), 400_000, 1);
        double se = number(expected.get("se"));
        Tolerance chance = Tolerance.absolute("Monte Carlo error of 400 000 resamples", 0.024 * se);
        Tolerance.R_SCRIPT.check(number(expected.get("estimate")), sample.estimate(0), "estimate");
        checkLimits(chance, expected.get("percentile"), sample.percentile(0, 0.9));
        checkLimits(chance, expected.get("bca"), sample.bca(0, 0.9));
        double design = number(
                LONGLEAF.get("stratified").get("with_fpc_df_n_minus_strata").get("se"));
        Tolerance.relative("five Monte Carlo errors of a standard deviation, 1/√(2R)", 5 / Math.sqrt(800_000))
                .check(design, sample.se(0), "the design's own standard error");
    }

    /**
     * All 27 draws of 2 from 3 and of 3 from 4 are as likely as each other: their variance is Σ W²s²/n·(1-f) (Rao and Wu 1988, by
     * algebra), which a million resamples show to five Monte Carlo errors.
     */
    @ParameterizedTest
    @CsvSource({"Infinity,Infinity", "5,12", "3,40"})
    void varianceIsTheDesigns(double first, double second) {
        List<StratumSample> strata = List.of(
                new StratumSample(0.3, first, new double[] {4, 9, 2}),
                new StratumSample(0.7, second, new double[] {1, 6, 3, 11}));
        double expected = StratifiedMean.estimate(strata, DegreesOfFreedom.UNITS_MINUS_STRATA)
                .variance();
        BootstrapSample sample = Bootstrap.run(design(strata), ColumnMeans.of(column(strata)), 1_000_000, 5);
        Tolerance.relative("five Monte Carlo errors of a variance", 5 * Math.sqrt(2e-6))
                .check(expected, sample.se(0) * sample.se(0), "variance");
    }

    @Test
    void threadsAndOrderOfWorkDoNotShow() throws Exception {
        List<StratumSample> strata = longleafStrata();
        ColumnMeans means = ColumnMeans.of(column(strata));
        double[] here = Bootstrap.run(design(strata), means, 5_000, 77).values(0);
        for (int threads : new int[] {1, 3}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            double[] there = pool.submit(() ->
                            Bootstrap.run(design(strata), means, 5_000, 77).values(0))
                    .get();
            pool.shutdown();
            assertArrayEquals(here, there, threads + " threads");
        }
        double[] fewer = Bootstrap.run(design(strata), means, 1_000, 77).values(0);
        assertArrayEquals(Arrays.copyOf(here, 1_000), fewer, "the first resamples do not depend on how many follow");
        assertNotEquals(here[0], Bootstrap.run(design(strata), means, 1, 78).values(0)[0]);
    }

    /** Many columns at once give what each gives alone, for they share their weights. */
    @Test
    void columnsShareTheirResamples() {
        Random random = new Random(3);
        double[][] rows = new double[30][];
        Arrays.setAll(rows, i -> Samples.positive(4, random));
        List<ResampledStratum> strata =
                List.of(new ResampledStratum(0.4, 90, 12), new ResampledStratum(0.6, INFINITE, 18));
        BootstrapSample together = Bootstrap.run(strata, ColumnMeans.of(rows), 500, 9);
        for (int c = 0; c < 4; c++) {
            int own = c;
            double[][] single =
                    Arrays.stream(rows).map(r -> new double[] {r[own]}).toArray(double[][]::new);
            assertArrayEquals(
                    Bootstrap.run(strata, ColumnMeans.of(single), 500, 9).values(0), together.values(c));
        }
        // k·y and a sum of columns: linear, so by algebra
        BootstrapSample functions =
                Bootstrap.run(strata, ColumnMeans.of(rows, 1, (m, out) -> out[0] = 2 * m[0] + m[1]), 500, 9);
        for (int r = 0; r < 500; r++) {
            Tolerance.ROUNDING.check(
                    2 * together.values(0)[r] + together.values(1)[r], functions.values(0)[r], "resample " + r);
        }
    }

    @Test
    void notesSayHowLittleIsKnown() {
        assertEquals(Set.of(BootstrapNote.FEW_UNITS), notes(new double[][] {{1}, {4}, {2}, {8}}, INFINITE));
        assertEquals(
                Set.of(BootstrapNote.FEW_UNITS, BootstrapNote.NO_SPREAD),
                notes(new double[][] {{3}, {3}, {3}}, INFINITE));
        assertEquals(Set.of(BootstrapNote.FEW_UNITS, BootstrapNote.NO_SPREAD), notes(new double[][] {{1}, {4}}, 2));
        List<ResampledStratum> single =
                List.of(new ResampledStratum(0.5, INFINITE, 1), new ResampledStratum(0.5, INFINITE, 20));
        double[][] rows = new double[21][];
        Arrays.setAll(rows, i -> new double[] {i});
        Set<BootstrapNote> alone =
                Bootstrap.run(single, ColumnMeans.of(rows), 999, 1).bca(0, 0.9).notes();
        assertEquals(Set.of(BootstrapNote.SINGLE_UNIT), alone);
        Set<BootstrapNote> tooFew = Bootstrap.run(
                        List.of(new ResampledStratum(1, INFINITE, 21)), ColumnMeans.of(rows), 20, 1)
                .percentile(0, 0.99)
                .notes();
        assertEquals(Set.of(BootstrapNote.BEYOND), tooFew);
    }

    /** One plot of twelve has trees: a ratio to nothing has no value in the resamples that miss it. */
    @Test
    void resamplesWithoutTreesAreSetAside() {
        double[][] rows = new double[12][2];
        rows[5] = new double[] {8, 2};
        rows[7] = new double[] {9, 3};
        ColumnMeans ratio = ColumnMeans.of(rows, 1, (m, out) -> out[0] = m[0] / m[1]);
        BootstrapSample sample = Bootstrap.run(List.of(new ResampledStratum(1, INFINITE, 12)), ratio, 2_000, 4);
        BootstrapInterval limits = sample.percentile(0, 0.9);
        assertEquals(Set.of(BootstrapNote.UNDEFINED), limits.notes());
        assertTrue(limits.limits().lower() >= 3 && limits.limits().upper() <= 4);
    }

    private static Set<BootstrapNote> notes(double[][] rows, double units) {
        return Bootstrap.run(List.of(new ResampledStratum(1, units, rows.length)), ColumnMeans.of(rows), 999, 1)
                .percentile(0, 0.8)
                .notes();
    }

    private static void checkLimits(Tolerance tolerance, JsonNode expected, BootstrapInterval actual) {
        Interval limits = actual.limits();
        tolerance.check(numbers(expected), new double[] {limits.lower(), limits.upper()}, "limits");
        assertTrue(actual.notes().isEmpty());
    }

    private static ColumnMeans basalAreaAndPerStem() {
        double[] ids = numbers(LONGLEAF.get("simple_random").get("ids"));
        double[] y = Samples.quadrats(ids, "ba_m2");
        double[] x = Samples.quadrats(ids, "stems");
        double[][] rows = new double[ids.length][];
        Arrays.setAll(rows, i -> new double[] {y[i], x[i]});
        return ColumnMeans.of(rows, 2, (means, out) -> {
            out[0] = means[0];
            out[1] = means[0] / means[1];
        });
    }

    private static List<StratumSample> longleafStrata() {
        var rows = ReferenceFiles.csv("longleaf-quadrats.csv");
        List<StratumSample> strata = new ArrayList<>();
        for (String name : List.of("SW", "SE", "NW", "NE")) {
            double[] ids = Arrays.stream(numbers(LONGLEAF.get("stratified").get("ids")))
                    .filter(id -> rows.get((int) id - 1).getField("stratum").equals(name))
                    .toArray();
            strata.add(new StratumSample(0.25, 16, Samples.quadrats(ids, "ba_m2")));
        }
        return strata;
    }

    private static List<ResampledStratum> design(List<StratumSample> strata) {
        return strata.stream().map(ResampledStratum::of).toList();
    }

    private static double[][] column(List<StratumSample> strata) {
        return strata.stream()
                .flatMapToDouble(s -> Arrays.stream(s.values()))
                .mapToObj(v -> new double[] {v})
                .toArray(double[][]::new);
    }
}
