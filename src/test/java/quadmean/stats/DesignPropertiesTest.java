package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.support.Tolerance;

/** What holds for every sample of every design, by algebra. */
class DesignPropertiesTest {
    private static final DegreesOfFreedom RULE = DegreesOfFreedom.UNITS_MINUS_STRATA;

    /** An estimate of twelve units (y, x) out of N. */
    interface Estimator {
        MeanEstimate of(double[] y, double[] x, double units);
    }

    enum Design implements Estimator {
        SIMPLE((y, x, units) -> StratifiedMean.simple(new StratumSample(1, units, y))),
        RATIO_V0((y, x, units) -> ratio(y, x, units, RatioEstimate.Variance.V0)),
        RATIO_V2((y, x, units) -> ratio(y, x, units, RatioEstimate.Variance.V2)),
        REGRESSION((y, x, units) -> regression(y, x, units, RegressionEstimate.Variance.LARGE_SAMPLE)),
        REGRESSION_EXACT((y, x, units) -> regression(y, x, units, RegressionEstimate.Variance.EXACT)),
        POST_STRATIFIED((y, x, units) -> PostStratified.mean(
                new StratumSample(1, units, y),
                Arrays.stream(x).mapToInt(v -> v > 5 ? 1 : 0).toArray(),
                new double[] {0.4, 0.6},
                PostStratified.Variance.LINEARISED)),
        CLUSTERS((y, x, units) -> ClusterMean.perElement(
                IntStream.range(0, y.length)
                        .mapToObj(i -> Cluster.sampled(3 * x[i], new double[] {y[i], y[i] * 1.5}))
                        .toList(),
                units)),
        HANSEN_HURWITZ((y, x, units) -> HansenHurwitz.total(y, Samples.times(0.01, x))),
        POISSON((y, x, units) -> ThreeP.unadjusted(y, x, 20)),
        HAJEK((y, x, units) -> HorvitzThompson.total(y, Samples.times(0.05, x), HorvitzThompson.UnitVariance.HAJEK));

        private final Estimator estimator;

        Design(Estimator estimator) {
            this.estimator = estimator;
        }

        @Override
        public MeanEstimate of(double[] y, double[] x, double units) {
            return estimator.of(y, x, units);
        }
    }

    @ParameterizedTest
    @EnumSource(Design.class)
    void orderOfUnitsDoesNotShow(Design design) {
        double[] y = Samples.positive(12, new Random(1));
        double[] x = Samples.positive(12, new Random(2));
        MeanEstimate shuffled = design.of(Samples.shuffled(y, new Random(7)), Samples.shuffled(x, new Random(7)), 50);
        checkSame(design.of(y, x, 50), shuffled);
    }

    @ParameterizedTest
    @EnumSource(Design.class)
    void estimateAndErrorScaleWithReadings(Design design) {
        double[] y = Samples.positive(12, new Random(3));
        double[] x = Samples.positive(12, new Random(4));
        checkSame(design.of(y, x, 50).times(7.5), design.of(Samples.times(7.5, y), x, 50));
    }

    @ParameterizedTest
    @EnumSource(
            value = Design.class,
            names = {"CLUSTERS", "HANSEN_HURWITZ", "POISSON", "HAJEK"},
            mode = EnumSource.Mode.EXCLUDE)
    void aCensusHasNoError(Design design) {
        double[] y = Samples.positive(12, new Random(5));
        MeanEstimate m = design.of(y, Samples.positive(12, new Random(6)), 12);
        assertEquals(0, m.se());
        assertTrue(m.hasError());
    }

    @Test
    void aCensusOfClustersOrSureUnitsHasNoError() {
        Random random = new Random(8);
        List<Cluster> clusters = IntStream.range(0, 5)
                .mapToObj(i -> Cluster.whole(Samples.positive(3 + i, random)))
                .toList();
        assertEquals(0, ClusterMean.perElement(clusters, 5).se());
        double all = clusters.stream().mapToDouble(c -> Moments.sum(c.values())).sum();
        Tolerance.ROUNDING.check(
                all, ClusterMean.perCluster(clusters, 5).times(5).mean(), "total");
        double[] y = Samples.positive(6, random);
        double[] sure = {1, 1, 1, 1, 1, 1};
        for (HorvitzThompson.UnitVariance form : HorvitzThompson.UnitVariance.values()) {
            assertEquals(0, HorvitzThompson.total(y, sure, form).se());
        }
        List<DoubleSampling.PhaseStratum> classes = List.of(
                new DoubleSampling.PhaseStratum(2, new double[] {3, 5}),
                new DoubleSampling.PhaseStratum(1, new double[] {9}));
        assertEquals(0, DoubleSampling.stratification(classes, 3).se());
    }

    /** Strata joined one by one or all at once: variances add, and so do totals. */
    @ParameterizedTest
    @EnumSource(DegreesOfFreedom.class)
    void strataAddUp(DegreesOfFreedom rule) {
        Random random = new Random(9);
        List<MeanEstimate> parts = IntStream.range(0, 4)
                .mapToObj(h -> StratifiedMean.simple(new StratumSample(1, 30, Samples.positive(4 + h, random))))
                .toList();
        double[] areas = {10, 20, 30, 40};
        MeanEstimate together = WeightedSum.of(areas, parts, rule);
        MeanEstimate one = WeightedSum.of(new double[] {10, 20}, parts.subList(0, 2), rule);
        MeanEstimate two = WeightedSum.of(new double[] {30, 40}, parts.subList(2, 4), rule);
        MeanEstimate joined = WeightedSum.of(new double[] {1, 1}, List.of(one, two), rule);
        Tolerance.ROUNDING.check(together.mean(), joined.mean(), "total");
        Tolerance.ROUNDING.check(together.se(), joined.se(), "error");
        Tolerance.ROUNDING.check(together.df(), joined.df(), "df");
    }

    /** With one stratum the separate ratio is the combined one; with a common ratio the means agree. */
    @Test
    void separateAndCombinedRatios() {
        Random random = new Random(10);
        StratumSample y = new StratumSample(1, 80, Samples.positive(9, random));
        StratumSample x = y.with(Samples.positive(9, random));
        for (RatioEstimate.Variance form : RatioEstimate.Variance.values()) {
            checkSame(
                    RatioEstimate.mean(List.of(y), List.of(x), 6, form, RULE),
                    RatioEstimate.separateMean(List.of(y), List.of(x), new double[] {6}, form, RULE));
        }
        List<StratumSample> xs = List.of(
                new StratumSample(0.3, 80, Samples.positive(5, random)),
                new StratumSample(0.7, 80, Samples.positive(6, random)));
        List<StratumSample> ys =
                xs.stream().map(s -> s.with(Samples.times(4, s.values()))).toList();
        double[] means = {5, 7};
        double both = 0.3 * 5 + 0.7 * 7;
        Tolerance.ROUNDING.check(
                RatioEstimate.mean(ys, xs, both, RatioEstimate.Variance.V2, RULE)
                        .mean(),
                RatioEstimate.separateMean(ys, xs, means, RatioEstimate.Variance.V2, RULE)
                        .mean(),
                "mean");
    }

    /** A first sample that is the population turns double sampling into a known mean of x (by algebra). */
    @Test
    void doubleSamplingOfThePopulationKnowsTheMean() {
        Random random = new Random(11);
        double[] all = Samples.positive(40, random);
        double[] x = Arrays.copyOf(all, 12);
        double[] y = Arrays.stream(x).map(v -> 3 * v + random.nextGaussian()).toArray();
        StratumSample first = new StratumSample(1, 40, all);
        StratumSample second = new StratumSample(1, 40, y);
        double meanX = Moments.of(all).mean();
        checkSame(
                RegressionEstimate.mean(second, x, meanX, RegressionEstimate.Variance.EXACT),
                DoubleSampling.regression(first, x, y, DoubleSampling.Variance.HANDBOOK));
        checkSame(
                RegressionEstimate.mean(second, x, meanX, RegressionEstimate.Variance.LARGE_SAMPLE),
                DoubleSampling.regression(first, x, y, DoubleSampling.Variance.COCHRAN));
        checkSame(
                RatioEstimate.mean(List.of(second), List.of(second.with(x)), meanX, RatioEstimate.Variance.V0, RULE),
                DoubleSampling.ratio(first, x, y));
    }

    /** A limit above all predictions and all units measured: adjusting gives back their sum. */
    @Test
    void sureUnitsAreAddedAsTheyAre() {
        double[] y = {4, 6, 5};
        double[] predictions = {8, 12, 10};
        MeanEstimate drawn = ThreeP.adjusted(y, predictions, 300);
        assertEquals(150, drawn.mean(), 1e-12);
        MeanEstimate with = ThreeP.adjusted(y, predictions, 300, new double[] {70, 80});
        assertEquals(300, with.mean(), 1e-12);
        assertEquals(drawn.se(), with.se(), 1e-12);
        assertEquals(2, with.df());
    }

    /** Two single units in strata of one size: W²·(y1 - y2)² (Cochran 1977, section 5A.12, from memory). */
    @Test
    void pairsOfSingleUnits() {
        List<StratumSample> strata = List.of(
                StratumSample.of(0.25, new double[] {8}),
                StratumSample.of(0.25, new double[] {5}),
                StratumSample.of(0.5, new double[] {1, 2, 6}));
        CollapsedStrata joined = CollapsedStrata.into(strata, new int[] {1, 0, -1});
        assertEquals(List.of(List.of(0, 1), List.of(2)), joined.groups());
        assertTrue(joined.isJoined());
        MeanEstimate m = joined.estimate(RULE);
        Tolerance.ROUNDING.check(0.25 * 13 + 0.5 * 3, m.mean(), "mean");
        Tolerance.ROUNDING.check(0.0625 * 9 + 0.25 * 7 / 3, m.variance(), "variance");
        assertEquals(3, m.df());
        checkSame(m, StratifiedMean.estimate(joined.merged(), RULE));
    }

    @Test
    void singleUnitsNeedANeighbour() {
        List<StratumSample> strata =
                List.of(StratumSample.of(0.5, new double[] {8}), StratumSample.of(0.5, new double[] {5, 3}));
        assertThrows(IllegalArgumentException.class, () -> CollapsedStrata.into(strata, new int[] {0, 0}));
        assertThrows(IllegalArgumentException.class, () -> CollapsedStrata.into(strata, new int[] {-1, 0}));
        CollapsedStrata joined = CollapsedStrata.into(strata, new int[] {1, -1});
        assertEquals(List.of(List.of(0, 1)), joined.groups());
        MeanEstimate m = joined.estimate(DegreesOfFreedom.SATTERTHWAITE);
        assertEquals(6, m.mean(), "the mean of the strata, not of the three units");
        assertEquals(2, m.df(), 1e-12);
        assertFalse(StratifiedMean.estimate(strata, RULE).hasError());
        List<StratumSample> plain = strata.subList(1, 2);
        assertFalse(CollapsedStrata.into(plain, new int[] {-1}).isJoined());
    }

    /** Half differences of five in a row: df 2(n-1)²/(3n-4), from the variance of von Neumann's statistic (by algebra). */
    @Test
    void degreesOfFreedomOfSuccessiveDifferences() {
        MeanEstimate m =
                SystematicVariance.SUCCESSIVE_DIFFERENCES.inOrder(StratumSample.of(1, new double[] {1, 5, 2, 2, 7}));
        Tolerance.ROUNDING.check(2 * 16 / 11.0, m.df(), "df");
        // 16 + 9 + 0 + 25 = 50, over 2·5·4
        Tolerance.ROUNDING.check(50 / 40.0, m.variance(), "variance");
    }

    /** A plane falls out of squares of four; a line of plots has none; to and fro keeps neighbours together. */
    @Test
    void contrastsOnAGrid() {
        List<GridPosition> grid = List.of(
                new GridPosition(1, 0),
                new GridPosition(0, 0),
                new GridPosition(0, 1),
                new GridPosition(1, 1),
                new GridPosition(2, 0));
        StratumSample plane = StratumSample.of(1, new double[] {12, 10, 15, 17, 14});
        assertEquals(
                0, SystematicVariance.OVERLAPPING_BLOCKS.estimate(plane, grid).se());
        assertFalse(SystematicVariance.OVERLAPPING_BLOCKS.inOrder(plane).hasError());
        // steps of 5, 2, 5 and then 2 from the end of row 1, on the left, to row 2
        double steps = (25 + 4 + 25 + 4) / 2.0 / 4 / 5;
        Tolerance.ROUNDING.check(
                steps,
                SystematicVariance.SUCCESSIVE_DIFFERENCES.estimate(plane, grid).variance(),
                "to and fro");
        // rows 5, 5; columns 2, 2, 2
        double sides = (25 + 25 + 4 + 4 + 4) / 2.0 / 5 / 5;
        Tolerance.ROUNDING.check(
                sides,
                SystematicVariance.NEIGHBOUR_DIFFERENCES.estimate(plane, grid).variance(),
                "neighbours");
        List<GridPosition> twice = List.of(grid.get(0), grid.get(0), grid.get(1), grid.get(2), grid.get(3));
        assertThrows(
                IllegalArgumentException.class, () -> SystematicVariance.NEIGHBOUR_DIFFERENCES.estimate(plane, twice));
    }

    /** exp(±t·SE/mean) by hand: t 2.2281 on 10 degrees of freedom (NIST table 2.228). */
    @Test
    void limitsOnALogScale() {
        MeanEstimate m = new MeanEstimate(11, 10, 40, 8, 26);
        Interval limits = LogInterval.of(m, 0.95);
        double step = StudentT.critical(0.95, 10) * 0.2;
        Tolerance.ROUNDING.check(40 * Math.exp(-step), limits.lower(), "lower");
        Tolerance.ROUNDING.check(40 * Math.exp(step), limits.upper(), "upper");
        Tolerance.ROUNDING.check(1600, limits.lower() * limits.upper(), "the mean is their geometric mean");
        assertTrue(Double.isNaN(LogInterval.of(m.times(0), 0.95).upper()));
    }

    /** Without a correction the variance between clusters holds the second stage already; with one in the second stage only, too. */
    @Test
    void secondStageIsInsideTheFirst() {
        Random random = new Random(12);
        List<Cluster> part = IntStream.range(0, 6)
                .mapToObj(i -> Cluster.sampled(20, Samples.positive(3, random)))
                .toList();
        List<Cluster> endless = part.stream()
                .map(c -> new Cluster(c.size(), Double.POSITIVE_INFINITY, c.values()))
                .toList();
        double[] means = part.stream().mapToDouble(Cluster::mean).toArray();
        checkSame(
                StratifiedMean.simple(StratumSample.of(1, means)),
                ClusterMean.perElement(part, Double.POSITIVE_INFINITY));
        double s2 = Moments.of(means).variance();
        double within =
                endless.stream().mapToDouble(Cluster::variance).average().orElseThrow();
        // f1 = 6/15: (1-f1)·s²/6 + f1·within/6
        MeanEstimate m = ClusterMean.perElement(endless, 15);
        Tolerance.ROUNDING.check(0.6 * s2 / 6 + 0.4 * within / 6, m.variance(), "variance");
        assertTrue(m.se() > ClusterMean.perElement(part, 15).se(), "elements left to draw from do not run out");
    }

    /** Regressions of two strata, each with its own line, join as any independent parts do (by algebra). */
    @Test
    void separateRegressions() {
        Random random = new Random(13);
        MeanEstimate one = regression(
                Samples.positive(6, random), Samples.positive(6, random), 50, RegressionEstimate.Variance.EXACT);
        MeanEstimate two = regression(
                Samples.positive(8, random), Samples.positive(8, random), 90, RegressionEstimate.Variance.EXACT);
        MeanEstimate both = WeightedSum.of(new double[] {0.4, 0.6}, List.of(one, two), RULE);
        Tolerance.ROUNDING.check(0.4 * one.mean() + 0.6 * two.mean(), both.mean(), "mean");
        Tolerance.ROUNDING.check(0.16 * one.variance() + 0.36 * two.variance(), both.variance(), "variance");
        assertEquals(4 + 6, both.df());
    }

    /** Two points make a line but no error about it; one unit makes no variance; a negative one makes no error. */
    @Test
    void tooFewUnitsGiveNoError() {
        MeanEstimate line =
                regression(new double[] {4, 6}, new double[] {5, 7}, 50, RegressionEstimate.Variance.LARGE_SAMPLE);
        assertEquals(5, line.mean(), 1e-12);
        assertFalse(line.hasError());
        double[] one = {3};
        double[] half = {0.5};
        assertFalse(HorvitzThompson.total(one, half, HorvitzThompson.UnitVariance.HAJEK)
                .hasError());
        assertFalse(HansenHurwitz.total(one, half).hasError());
        assertFalse(ClusterMean.perElement(List.of(Cluster.whole(one)), 9).hasError());
        double[] pair = {10, 1};
        double[] pi = {0.5, 0.5};
        double[][] joint = {{0.5, 0.45}, {0.45, 0.5}};
        // (0.25/0.45 - 1)·(20 - 2)² = -144
        assertEquals(
                -144, HorvitzThompson.variance(pair, pi, joint, HorvitzThompson.PairVariance.SEN_YATES_GRUNDY), 1e-9);
        assertFalse(HorvitzThompson.total(pair, pi, joint, HorvitzThompson.PairVariance.SEN_YATES_GRUNDY)
                .hasError());
        MeanEstimate wild = new MeanEstimate(3, 2, 1, 5, 9);
        assertFalse(ProductEstimate.of(List.of(wild, wild), ProductEstimate.Variance.GOODMAN)
                .hasError());
        assertTrue(ProductEstimate.of(List.of(wild, wild), ProductEstimate.Variance.BRUCE)
                .hasError());
        MeanEstimate known = new MeanEstimate(4, 3, 2, 0, 0);
        assertEquals(
                0,
                ProductEstimate.of(List.of(known, known), ProductEstimate.Variance.BRUCE)
                        .se());
    }

    @Test
    void argumentsThatDoNotFitAreRefused() {
        double[] two = {1, 2};
        double[] three = {1, 2, 3};
        double[] above = {0.5, 1.5};
        double[] none = {0, 0.5};
        assertThrows(IllegalArgumentException.class, () -> HansenHurwitz.total(two, three));
        assertThrows(IllegalArgumentException.class, () -> HansenHurwitz.total(two, above));
        assertThrows(IllegalArgumentException.class, () -> HansenHurwitz.total(two, none));
        assertThrows(IllegalArgumentException.class, () -> ThreeP.unadjusted(two, none, 3));
        assertThrows(IllegalArgumentException.class, () -> ThreeP.adjusted(new double[0], new double[0], 3));
        assertThrows(IllegalArgumentException.class, () -> ThreeP.limit(0, 3));
        assertThrows(
                IllegalArgumentException.class, () -> DoubleSampling.ratio(StratumSample.of(1, two), three, three));
        assertThrows(
                IllegalArgumentException.class,
                () -> PostStratified.mean(
                        StratumSample.of(1, two),
                        new int[2],
                        new double[] {0.5, 0.5},
                        PostStratified.Variance.TEXTBOOK));
        assertThrows(IllegalArgumentException.class, () -> WeightedSum.of(two, List.of(), RULE));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(3, 2));
    }

    /** Outputs tell variances apart by name. */
    @Test
    void variancesHaveNames() {
        List<String> names = new java.util.ArrayList<>();
        Arrays.stream(RatioEstimate.Variance.values()).forEach(v -> names.add(v.label()));
        Arrays.stream(RegressionEstimate.Variance.values()).forEach(v -> names.add(v.label()));
        Arrays.stream(DoubleSampling.Variance.values()).forEach(v -> names.add(v.label()));
        Arrays.stream(PostStratified.Variance.values()).forEach(v -> names.add(v.label()));
        Arrays.stream(ProductEstimate.Variance.values()).forEach(v -> names.add(v.label()));
        Arrays.stream(HorvitzThompson.PairVariance.values()).forEach(v -> names.add(v.label()));
        Arrays.stream(HorvitzThompson.UnitVariance.values()).forEach(v -> names.add(v.label()));
        Arrays.stream(SystematicVariance.values()).forEach(v -> names.add(v.label()));
        Arrays.stream(IntervalKind.values()).forEach(v -> names.add(v.label()));
        Arrays.stream(BootstrapNote.values()).forEach(v -> names.add(v.sentence()));
        assertEquals(names.size(), java.util.Set.copyOf(names).size());
    }

    private static MeanEstimate ratio(double[] y, double[] x, double units, RatioEstimate.Variance form) {
        StratumSample sample = new StratumSample(1, units, y);
        return RatioEstimate.mean(List.of(sample), List.of(sample.with(x)), 6, form, RULE);
    }

    private static MeanEstimate regression(double[] y, double[] x, double units, RegressionEstimate.Variance form) {
        return RegressionEstimate.mean(new StratumSample(1, units, y), x, 6, form);
    }

    private static void checkSame(MeanEstimate expected, MeanEstimate actual) {
        Tolerance close = Tolerance.relative("sums in another order", 1e-11);
        assertEquals(expected.n(), actual.n());
        close.check(expected.mean(), actual.mean(), "mean");
        close.check(expected.se(), actual.se(), "error");
        close.check(expected.df(), actual.df(), "df");
    }
}
