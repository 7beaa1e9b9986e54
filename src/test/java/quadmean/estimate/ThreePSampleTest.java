package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import quadmean.model.Measuring;
import quadmean.model.Measuring.Estimator;
import quadmean.model.PlotDesign;
import quadmean.model.PlotFacts;
import quadmean.model.Stratum;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.volume.TreeWood;

/** 236 red oaks with a known volume of 8 124.9 ft³ (Beers and Gingrich 1958; redoak.csv), and two points worked by hand. */
class ThreePSampleTest {
    private static final double TOTAL = 8124.9;
    private static final int DRAWS = 600;
    private static final List<Stratum> STAND = List.of(new Stratum("stand", "", 1));
    private static final Set<Attribute> ALL = Set.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME);
    private static final List<Oak> OAKS = ReferenceFiles.csv("redoak.csv").stream()
            .map(r -> new Oak(ReferenceFiles.number(r, "dbh_in"), ReferenceFiles.number(r, "volume_ft3")))
            .toList();

    /** From here on an oak of 20 in or more is sure to be measured, by 0.1·D². */
    private static final double LIMIT = 40;

    private record Oak(double dbhIn, double volume) {
        double prediction() {
            return 0.1 * dbhIn * dbhIn;
        }

        double chance(double limit) {
            return Math.min(1, prediction() / limit);
        }
    }

    private static Stem stem(double dbhCm, double volume, double prediction) {
        return new Stem("oak", dbhCm, Double.NaN, TreeWood.ofVolume(volume), 1, ALL, prediction);
    }

    private static SampledPlot plot(String id, List<Stem> measured, double... predicted) {
        List<CountedStem> counted = Arrays.stream(predicted)
                .mapToObj(k -> new CountedStem("oak", 1, Set.of(Attribute.TREES, Attribute.BASAL_AREA), k))
                .toList();
        return new SampledPlot(id, "stand", measured, 1, PlotFacts.NONE, counted);
    }

    private static boolean[] draw(Random random, double limit) {
        boolean[] drawn = new boolean[OAKS.size()];
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = random.nextDouble() < OAKS.get(i).chance(limit);
        }
        return drawn;
    }

    private static SampledPlot tally(boolean[] drawn) {
        List<Stem> measured = new ArrayList<>();
        DoubleStream.Builder predicted = DoubleStream.builder();
        for (int i = 0; i < drawn.length; i++) {
            Oak oak = OAKS.get(i);
            if (drawn[i]) {
                measured.add(stem(2.54 * oak.dbhIn(), oak.volume(), oak.prediction()));
            } else {
                predicted.add(oak.prediction());
            }
        }
        return plot("1", measured, predicted.build().toArray());
    }

    private static Measuring threeP(double limit, Estimator estimator) {
        return new Measuring.ThreeP(limit, OptionalDouble.empty(), estimator);
    }

    private static MeanEstimate volume(List<SampledPlot> plots, PlotDesign design) {
        return Sample.of(STAND, plots, Stands.settings(design)).mean(PlotValue.of(design, Attribute.VOLUME, s -> true));
    }

    private static MeanEstimate ofOaks(boolean[] drawn, double limit, Estimator estimator) {
        return volume(List.of(tally(drawn)), new PlotDesign.Complete(threeP(limit, estimator)));
    }

    /** Mean over many draws within three of its Monte Carlo standard errors; so is the mean variance, of Σ y²·(1 - p)/p. */
    @Test
    void unadjustedHasNoBiasAndNeitherHasItsVariance() {
        Random random = new Random(1965);
        double[] totals = new double[DRAWS];
        double[] variances = new double[DRAWS];
        for (int k = 0; k < DRAWS; k++) {
            MeanEstimate total = ofOaks(draw(random, LIMIT), LIMIT, Estimator.UNADJUSTED);
            totals[k] = total.mean();
            variances[k] = total.variance();
        }
        double variance = OAKS.stream()
                .mapToDouble(o -> o.volume() * o.volume() * (1 - o.chance(LIMIT)) / o.chance(LIMIT))
                .sum();
        checkMean(TOTAL, totals, "total");
        checkMean(variance, variances, "variance");
    }

    private static void checkMean(double expected, double[] values, String what) {
        Moments m = Moments.of(values);
        double standard = m.sd() / Math.sqrt(values.length);
        assertTrue(
                Math.abs(m.mean() - expected) < 3 * standard,
                what + ": " + m.mean() + " ± " + standard + ", not " + expected);
    }

    /** Sure oaks as they are, and the sum of the other predictions times the mean ratio: written out (by definition). */
    @Test
    void adjustedIsThePredictionsTimesTheMeanRatio() {
        boolean[] drawn = draw(new Random(3), LIMIT);
        double sure = 0;
        double predictions = 0;
        List<Double> ratios = new ArrayList<>();
        for (int i = 0; i < drawn.length; i++) {
            Oak oak = OAKS.get(i);
            if (oak.prediction() >= LIMIT) {
                sure += oak.volume();
                continue;
            }
            predictions += oak.prediction();
            if (drawn[i]) {
                ratios.add(oak.volume() / oak.prediction());
            }
        }
        assertTrue(sure > 0, "some are sure");
        Moments r = Moments.of(ratios.stream().mapToDouble(x -> x).toArray());
        MeanEstimate total = ofOaks(drawn, LIMIT, Estimator.ADJUSTED);
        Tolerance.relative("sums in another order", 1e-11).check(sure + predictions * r.mean(), total.mean(), "total");
        Tolerance.relative("sums in another order", 1e-11)
                .check(predictions * r.sd() / Math.sqrt(r.n()), total.se(), "standard error");
        assertEquals(r.n() - 1, total.df());
    }

    /** A limit below every prediction makes a complete tally. */
    @Test
    void whereEveryTreeIsSureNothingIsLeftToChance() {
        boolean[] all = new boolean[OAKS.size()];
        Arrays.fill(all, true);
        for (Estimator estimator : Estimator.values()) {
            MeanEstimate total = ofOaks(all, 0.1, estimator);
            Tolerance.relative("sums in another order", 1e-11).check(TOTAL, total.mean(), estimator.id());
            assertEquals(0, total.se(), estimator.id());
        }
    }

    /**
     * Factor 2 m²/ha, limit 100. Predictions 4 (measured, 8 m³ to each m²) and 6 on one point, 6 (measured, 18 m³/m²) on the other.
     * Adjusted: mean ratio 2.5 times 16; variance of 50 and 30 over 2, and 16²·0.5/2. Unadjusted: 400 and 600.
     */
    @Test
    void atPointsByHand() {
        double g = BasalArea.ofTree(30);
        List<SampledPlot> points =
                List.of(plot("1", List.of(stem(30, 8 * g, 4)), 6), plot("2", List.of(stem(30, 18 * g, 6))));
        MeanEstimate adjusted = volume(points, atPoints(Estimator.ADJUSTED));
        Tolerance.ROUNDING.check(40, adjusted.mean(), "adjusted");
        Tolerance.ROUNDING.check(164, adjusted.variance(), "variance");
        Tolerance.ROUNDING.check(164.0 * 164 / (100 * 100 + 64 * 64), adjusted.df(), "degrees of freedom");
        MeanEstimate unadjusted = volume(points, atPoints(Estimator.UNADJUSTED));
        Tolerance.ROUNDING.check(500, unadjusted.mean(), "unadjusted");
        Tolerance.ROUNDING.check(100, unadjusted.se(), "standard error");
    }

    /** Trees with predictions and none of them measured: the ratio of value to prediction is not known, and neither is the diameter. */
    @Test
    void withoutAMeasuredTreeThereIsNoAdjustedEstimate() {
        List<SampledPlot> none = List.of(plot("1", List.of(), 10, 20), plot("2", List.of(), 5));
        PlotDesign complete = new PlotDesign.Complete(threeP(100, Estimator.ADJUSTED));
        assertTrue(Double.isNaN(volume(none, complete).mean()), "tally");
        assertTrue(Double.isNaN(volume(none, atPoints(Estimator.ADJUSTED)).mean()), "points");
        assertEquals(
                0,
                volume(none, new PlotDesign.Complete(threeP(100, Estimator.UNADJUSTED)))
                        .mean());
        EstimateSettings settings = Stands.settings(complete);
        List<EstimateRow> rows = StandEstimator.estimate(STAND, none, settings).rows();
        assertTrue(
                rows.stream().allMatch(r -> Double.isNaN(r.mean()) && r.reason().contains("measured")), rows::toString);
    }

    private static PlotDesign atPoints(Estimator estimator) {
        return new PlotDesign.Point(2, quadmean.model.Sweep.FULL, threeP(100, estimator));
    }
}
