package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.stats.Enumeration.choices;
import static quadmean.stats.Enumeration.pick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.support.Tolerance;

/**
 * Over all samples that a design can draw, weighted with their probability, unbiased estimates average to the truth and unbiased
 * variances to the variance of the estimates (by definition). The population is the first twelve longleaf quadrats: basal area y,
 * stems x.
 */
class AllSamplesTest {
    private static final DegreesOfFreedom RULE = DegreesOfFreedom.UNITS_MINUS_STRATA;
    private static final double[] IDS =
            IntStream.rangeClosed(1, 12).asDoubleStream().toArray();
    private static final double[] Y = Samples.quadrats(IDS, "ba_m2");
    private static final double[] X = Samples.quadrats(IDS, "stems");
    private static final double MEAN = Moments.of(Y).mean();
    private static final double TOTAL = Moments.sum(Y);

    @Test
    void simpleRandom() {
        Enumeration all = new Enumeration();
        List<int[]> samples = choices(12, 4);
        assertEquals(495, samples.size());
        samples.forEach(s -> add(all, 1, StratifiedMean.estimate(List.of(sample(s, 12)), RULE)));
        all.checkUnbiased(MEAN);
    }

    @Test
    void stratified() {
        Enumeration all = new Enumeration();
        for (int[] a : choices(5, 2)) {
            for (int[] b : choices(7, 3)) {
                int[] shifted = Arrays.stream(b).map(i -> i + 5).toArray();
                StratumSample one = new StratumSample(5.0 / 12, 5, pick(Y, a));
                StratumSample two = new StratumSample(7.0 / 12, 7, pick(Y, shifted));
                add(all, 1, StratifiedMean.estimate(List.of(one, two), RULE));
            }
        }
        all.checkUnbiased(MEAN);
    }

    /** Hartley and Ross 1954 (by algebra): E(r·X) - Y = -Cov(r, x̄), X and Y the population means. */
    @Test
    void biasOfTheRatioIsItsCovarianceWithTheMeanOfX() {
        double meanX = Moments.of(X).mean();
        List<int[]> samples = choices(12, 4);
        double estimate = 0;
        double ratio = 0;
        double product = 0;
        for (int[] s : samples) {
            StratumSample y = sample(s, 12);
            StratumSample x = y.with(pick(X, s));
            estimate += RatioEstimate.mean(List.of(y), List.of(x), meanX, RatioEstimate.Variance.V0, RULE)
                            .mean()
                    / samples.size();
            double r = RatioEstimate.estimate(List.of(y), List.of(x), RULE).mean();
            ratio += r / samples.size();
            product += r * Moments.of(x.values()).mean() / samples.size();
        }
        double bias = estimate - MEAN;
        assertTrue(Math.abs(bias) > 1e-3 * MEAN, "the ratio is biased: " + bias);
        Tolerance.R_SCRIPT.check(-(product - ratio * meanX), bias, "bias");
    }

    @Test
    void equalClusters() {
        Enumeration perElement = new Enumeration();
        Enumeration perCluster = new Enumeration();
        for (int[] s : choices(6, 3)) {
            List<Cluster> clusters = Arrays.stream(s)
                    .mapToObj(c -> Cluster.whole(new double[] {Y[2 * c], Y[2 * c + 1]}))
                    .toList();
            add(perElement, 1, ClusterMean.perElement(clusters, 6));
            add(perCluster, 1, ClusterMean.perCluster(clusters, 6).times(6));
        }
        perElement.checkUnbiased(MEAN);
        perCluster.checkUnbiased(TOTAL);
    }

    @Test
    void twoStagesOfEqualClusters() {
        checkTwoStages(new int[] {0, 3, 6, 9, 12}, true);
    }

    /** The total over clusters of unequal size is unbiased, its ratio to size is not. */
    @Test
    void twoStagesOfUnequalClusters() {
        checkTwoStages(new int[] {0, 4, 7, 10, 12}, false);
    }

    private static void checkTwoStages(int[] starts, boolean equal) {
        Enumeration perElement = new Enumeration();
        Enumeration total = new Enumeration();
        for (int[] s : choices(4, 2)) {
            List<Cluster> first = parts(starts, s[0]);
            List<Cluster> second = parts(starts, s[1]);
            for (Cluster a : first) {
                for (Cluster b : second) {
                    double p = 1.0 / first.size() / second.size();
                    add(perElement, p, ClusterMean.perElement(List.of(a, b), 4));
                    add(total, p, ClusterMean.perCluster(List.of(a, b), 4).times(4));
                }
            }
        }
        total.checkUnbiased(TOTAL);
        if (equal) {
            perElement.checkUnbiased(MEAN);
        }
    }

    /** All ways to draw two of a cluster's elements. */
    private static List<Cluster> parts(int[] starts, int cluster) {
        double[] elements = Arrays.copyOfRange(Y, starts[cluster], starts[cluster + 1]);
        return choices(elements.length, 2).stream()
                .map(c -> Cluster.sampled(elements.length, pick(elements, c)))
                .toList();
    }

    /** Any design of fixed size will do: here samples of three out of seven, the n-th with probability in proportion to n. */
    @ParameterizedTest
    @EnumSource(HorvitzThompson.PairVariance.class)
    void horvitzThompson(HorvitzThompson.PairVariance form) {
        List<int[]> samples = choices(7, 3);
        double sum = samples.size() * (samples.size() + 1) / 2.0;
        double[][] joint = new double[7][7];
        for (int k = 0; k < samples.size(); k++) {
            for (int i : samples.get(k)) {
                for (int j : samples.get(k)) {
                    joint[i][j] += (k + 1) / sum;
                }
            }
        }
        Enumeration all = new Enumeration();
        for (int k = 0; k < samples.size(); k++) {
            int[] s = samples.get(k);
            double[] pi = Arrays.stream(s).mapToDouble(i -> joint[i][i]).toArray();
            double[][] pairs = Arrays.stream(s).mapToObj(i -> pick(joint[i], s)).toArray(double[][]::new);
            double[] y = pick(Y, s);
            all.add(
                    (k + 1) / sum,
                    HorvitzThompson.total(y, pi, pairs, form).mean(),
                    HorvitzThompson.variance(y, pi, pairs, form));
        }
        all.checkUnbiased(Moments.sum(Arrays.copyOf(Y, 7)));
    }

    /** All 128 outcomes of drawing each of seven units by itself, stems and one more as predictions, of which the largest are sure. */
    @Test
    void unadjustedThreeP() {
        double limit = 9;
        double[] predictions = Arrays.stream(X).map(x -> x + 1).toArray();
        Enumeration all = new Enumeration();
        for (int set = 0; set < 128; set++) {
            int chosen = set;
            double p = 1;
            for (int i = 0; i < 7; i++) {
                double own = Math.min(1, predictions[i] / limit);
                p *= (set >> i & 1) == 1 ? own : 1 - own;
            }
            int[] s = IntStream.range(0, 7).filter(i -> (chosen >> i & 1) == 1).toArray();
            MeanEstimate total = ThreeP.unadjusted(pick(Y, s), pick(predictions, s), limit);
            add(all, p, total);
        }
        all.checkUnbiased(Moments.sum(Arrays.copyOf(Y, 7)));
    }

    /** All 125 ordered draws of three out of five with replacement. */
    @Test
    void hansenHurwitz() {
        double[] chances = {0.3, 0.1, 0.25, 0.15, 0.2};
        Enumeration all = new Enumeration();
        for (int k = 0; k < 125; k++) {
            int[] s = {k / 25, k / 5 % 5, k % 5};
            double[] p = pick(chances, s);
            add(all, p[0] * p[1] * p[2], HansenHurwitz.total(pick(Y, s), p));
        }
        all.checkUnbiased(Moments.sum(Arrays.copyOf(Y, 5)));
    }

    /** Six of nine units sorted into classes of five and four, then half of each class, at least two, measured. */
    @Test
    void doubleSamplingForStratification() {
        Enumeration all = new Enumeration();
        for (int[] first : choices(9, 6)) {
            int[] low = Arrays.stream(first).filter(i -> i < 5).toArray();
            int[] high = Arrays.stream(first).filter(i -> i >= 5).toArray();
            List<int[]> lows = choices(low.length, half(low.length));
            List<int[]> highs = choices(high.length, half(high.length));
            for (int[] a : lows) {
                for (int[] b : highs) {
                    List<DoubleSampling.PhaseStratum> strata = new ArrayList<>();
                    strata.add(new DoubleSampling.PhaseStratum(low.length, pick(pick(Y, low), a)));
                    if (high.length > 0) {
                        strata.add(new DoubleSampling.PhaseStratum(high.length, pick(pick(Y, high), b)));
                    }
                    add(all, 1.0 / lows.size() / highs.size(), DoubleSampling.stratification(strata, 9));
                }
            }
        }
        all.checkUnbiased(Moments.of(Arrays.copyOf(Y, 9)).mean());
    }

    private static int half(int n) {
        return Math.min(n, Math.max(2, n / 2));
    }

    /** Given how many units fall into each stratum, each is a random sample of its stratum. */
    @Test
    void postStratifiedMeanIsUnbiasedWhereNoStratumIsMissed() {
        Enumeration all = new Enumeration();
        for (int[] s : choices(12, 4)) {
            int[] stratum = Arrays.stream(s).map(i -> i < 5 ? 0 : 1).toArray();
            int ofFirst = (int) Arrays.stream(stratum).filter(h -> h == 0).count();
            if (ofFirst > 0 && ofFirst < 4) {
                double[] weights = {5.0 / 12, 7.0 / 12};
                add(all, 1, PostStratified.mean(sample(s, 12), stratum, weights, PostStratified.Variance.TEXTBOOK));
            }
        }
        Tolerance.R_SCRIPT.check(MEAN, all.mean(), "mean");
    }

    @Test
    void productOfIndependentMeans() {
        Enumeration all = new Enumeration();
        for (int[] a : choices(6, 3)) {
            for (int[] b : choices(5, 2)) {
                MeanEstimate one = StratifiedMean.simple(new StratumSample(1, 6, pick(Y, a)));
                MeanEstimate two = StratifiedMean.simple(new StratumSample(1, 5, pick(X, b)));
                add(all, 1, ProductEstimate.of(List.of(one, two), ProductEstimate.Variance.GOODMAN));
            }
        }
        all.checkUnbiased(Moments.of(Arrays.copyOf(Y, 6)).mean()
                * Moments.of(Arrays.copyOf(X, 5)).mean());
    }

    /** On ground without any pattern, all 720 arrangements being as likely, every contrast variance is that of a random sample. */
    @ParameterizedTest
    @EnumSource(SystematicVariance.class)
    void contrastsOnGroundWithoutPattern(SystematicVariance form) {
        List<GridPosition> grid = IntStream.range(0, 6)
                .mapToObj(i -> new GridPosition(i / 3, i % 3))
                .toList();
        double[] values = Arrays.copyOf(Y, 6);
        List<double[]> arrangements = new ArrayList<>();
        arrange(values, 0, arrangements);
        double[] variances = arrangements.stream()
                .mapToDouble(
                        v -> form.estimate(new StratumSample(1, 24, v), grid).variance())
                .toArray();
        assertEquals(720, variances.length);
        double expected = Moments.of(values).variance() / 6 * 0.75;
        Tolerance.R_SCRIPT.check(expected, Moments.sum(variances) / 720, "mean variance");
    }

    private static void arrange(double[] values, int at, List<double[]> all) {
        if (at == values.length) {
            all.add(values.clone());
        }
        for (int i = at; i < values.length; i++) {
            swap(values, at, i);
            arrange(values, at + 1, all);
            swap(values, at, i);
        }
    }

    private static void swap(double[] values, int i, int j) {
        double kept = values[i];
        values[i] = values[j];
        values[j] = kept;
    }

    private static void add(Enumeration all, double p, MeanEstimate m) {
        all.add(p, m.mean(), m.variance());
    }

    private static StratumSample sample(int[] chosen, double units) {
        return new StratumSample(1, units, pick(Y, chosen));
    }
}
