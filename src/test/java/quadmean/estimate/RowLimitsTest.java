package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.model.DegreesRule;
import quadmean.model.EstimateRules;
import quadmean.model.EstimatorRules;
import quadmean.model.FinitePopulation;
import quadmean.model.IntervalRule;
import quadmean.model.PlotDesign;
import quadmean.model.SizeRules;
import quadmean.model.Stratum;
import quadmean.model.VarianceForm;
import quadmean.stats.Bootstrap;
import quadmean.stats.BootstrapInterval;
import quadmean.stats.BootstrapSample;
import quadmean.stats.ColumnMeans;
import quadmean.stats.ResampledStratum;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** Limits of rows by each rule, held against the formula or against the bootstrap of the plot values themselves. */
class RowLimitsTest {
    private static final int REPLICATES = 400;
    private static final long SEED = 20_261_125;
    private static final PlotDesign POINTS = new PlotDesign.Point(4);
    private static final List<Stratum> ONE = List.of(new Stratum("stand", "stand", 50));

    private static EstimateSettings settings(IntervalRule rule) {
        EstimateRules usual = EstimateRules.STANDARD;
        return new EstimateSettings(
                POINTS,
                FinitePopulation.IGNORE,
                DegreesRule.PLOTS_MINUS_STRATA,
                0.90,
                10,
                Attribute.VOLUME,
                SizeRules.ofWidth(5),
                List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME),
                List.of(),
                Map.of(),
                new EstimateRules(rule, REPLICATES, usual.estimation(), usual.errors(), usual.product()));
    }

    private static List<SampledPlot> plots() {
        return Stands.random(7).stream()
                .map(p -> new SampledPlot(p.id(), "stand", p.stems()))
                .toList();
    }

    private static EstimateRow row(List<SampledPlot> plots, IntervalRule rule, Attribute attribute, Basis basis) {
        return StandEstimator.estimate(ONE, plots, settings(rule), SEED)
                .row(EstimateRow.ALL, EstimateRow.ALL, attribute, basis)
                .orElseThrow();
    }

    /** mean·exp(±t·SE/mean), by definition; the sampling error is half the width. */
    @Test
    void onALogScaleLimitsAreFactorsOfTheMean() {
        EstimateRow t = row(plots(), IntervalRule.STUDENT_T, Attribute.VOLUME, Basis.TOTAL);
        EstimateRow log = row(plots(), IntervalRule.LOG_SCALE, Attribute.VOLUME, Basis.TOTAL);
        double factor = Math.exp((t.upper() - t.mean()) / t.mean());
        Tolerance.ROUNDING.check(log.mean() * factor, log.upper(), "upper");
        Tolerance.ROUNDING.check(log.mean() / factor, log.lower(), "lower");
        Tolerance.ROUNDING.check(
                100 * (log.upper() - log.lower()) / 2 / log.mean(), log.samplingErrorPercent(), "sampling error");
    }

    /** The same seed on the same plot values, drawn here without rows. */
    @ParameterizedTest
    @EnumSource(
            value = IntervalRule.class,
            names = {"PERCENTILE", "BCA"})
    void bootstrapLimitsAreThoseOfThePlotValues(IntervalRule rule) {
        List<SampledPlot> sorted = new ArrayList<>(plots());
        sorted.sort(java.util.Comparator.comparing(SampledPlot::id));
        double[][] values = sorted.stream()
                .map(p -> new double[] {
                    PlotValue.of(POINTS, Attribute.VOLUME, s -> true).applyAsDouble(p)
                })
                .toArray(double[][]::new);
        BootstrapSample sample = Bootstrap.run(
                List.of(new ResampledStratum(1, Double.POSITIVE_INFINITY, values.length)),
                ColumnMeans.of(values),
                REPLICATES,
                SEED);
        BootstrapInterval expected = rule == IntervalRule.BCA ? sample.bca(0, 0.90) : sample.percentile(0, 0.90);
        EstimateRow row = row(plots(), rule, Attribute.VOLUME, Basis.PER_AREA);
        Tolerance.ROUNDING.check(expected.limits().lower(), row.lower(), "lower");
        Tolerance.ROUNDING.check(expected.limits().upper(), row.upper(), "upper");
        EstimateRow total = row(plots(), rule, Attribute.VOLUME, Basis.TOTAL);
        Tolerance.ROUNDING.check(50 * row.upper(), total.upper(), "a total is 50 ha of it");
        EstimateRow qmd = row(plots(), rule, Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO);
        assertTrue(qmd.lower() < qmd.mean() && qmd.mean() < qmd.upper(), qmd.toString());
    }

    @ParameterizedTest
    @EnumSource(IntervalRule.class)
    void theOrderOfPlotsChangesNothing(IntervalRule rule) {
        List<SampledPlot> shuffled = new ArrayList<>(plots());
        Collections.shuffle(shuffled, new Random(3));
        for (Attribute attribute : List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME)) {
            EstimateRow before = row(plots(), rule, attribute, Basis.PER_AREA);
            EstimateRow after = row(shuffled, rule, attribute, Basis.PER_AREA);
            Tolerance.ROUNDING.check(before.lower(), after.lower(), attribute + " lower");
            Tolerance.ROUNDING.check(before.upper(), after.upper(), attribute + " upper");
        }
    }

    @Test
    void strataAreResampledEachForItself() {
        StandEstimate e =
                StandEstimator.estimate(Stands.TWO_STRATA, Stands.random(7), settings(IntervalRule.PERCENTILE), SEED);
        for (Stratum s : Stands.TWO_STRATA) {
            EstimateRow row = e.row(s.code(), EstimateRow.ALL, Attribute.VOLUME, Basis.PER_AREA)
                    .orElseThrow();
            assertTrue(row.lower() < row.mean() && row.mean() < row.upper(), row.toString());
        }
    }

    /** Plots all alike vary by rounding at the most. */
    @ParameterizedTest
    @EnumSource(IntervalRule.class)
    void plotsAllAlikeHaveLimitsOfNoWidth(IntervalRule rule) {
        List<SampledPlot> alike = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            alike.add(new SampledPlot("" + i, "stand", List.of(new Stem("X", 30, 0.8))));
        }
        EstimateRow row = row(alike, rule, Attribute.VOLUME, Basis.PER_AREA);
        Tolerance.ROUNDING.check(row.mean(), row.lower(), "lower");
        Tolerance.ROUNDING.check(row.mean(), row.upper(), "upper");
    }

    /** Where nothing stands at all there is no spread, and the row says why it has no limits. */
    @Test
    void aSpeciesOfNoVolumeHasNoBootstrapLimits() {
        List<SampledPlot> plots = new ArrayList<>(plots());
        plots.add(new SampledPlot("20", "stand", List.of(new Stem("NONE", 30, 0))));
        EstimateRow row = StandEstimator.estimate(ONE, plots, settings(IntervalRule.BCA), SEED)
                .row(EstimateRow.ALL, "NONE", Attribute.VOLUME, Basis.TOTAL)
                .orElseThrow();
        assertTrue(Double.isNaN(row.lower()) && Double.isNaN(row.upper()), row.toString());
        assertFalse(row.reason().isEmpty());
    }

    @Test
    void aFewPlotsAreSaidToSayLittle() {
        List<SampledPlot> few = plots().subList(0, 5);
        String notes = String.join(
                " ",
                StandEstimator.estimate(ONE, few, settings(IntervalRule.BCA), SEED)
                        .notes());
        // 1/√(2·4) of the standard error, for normal values (by algebra)
        assertTrue(notes.contains("With 5 plots little is known: the standard error itself may be off by 35 %"), notes);
        EstimateRow one = row(plots().subList(0, 1), IntervalRule.BCA, Attribute.VOLUME, Basis.PER_AREA);
        assertTrue(Double.isNaN(one.lower()), one.toString());
    }

    /** A grid is drawn from as if its plots were random, whatever its variance, and the notes say so. */
    @Test
    void aGridIsResampledAsIfRandom() {
        List<SampledPlot> plots =
                Quadrats.plots(IntStream.rangeClosed(1, 64).asDoubleStream().toArray());
        EstimateSettings random = settings(IntervalRule.PERCENTILE);
        EstimateSettings grid = random.with(EstimatorRules.STANDARD.with(VarianceForm.SUCCESSIVE_DIFFERENCES));
        StandEstimate e = StandEstimator.estimate(Quadrats.WHOLE, plots, grid, SEED);
        EstimateRow row = e.row(EstimateRow.ALL, EstimateRow.ALL, Attribute.BASAL_AREA, Basis.PER_AREA)
                .orElseThrow();
        EstimateRow plain = StandEstimator.estimate(Quadrats.WHOLE, plots, random, SEED)
                .row(EstimateRow.ALL, EstimateRow.ALL, Attribute.BASAL_AREA, Basis.PER_AREA)
                .orElseThrow();
        Tolerance.ROUNDING.check(plain.lower(), row.lower(), "lower");
        Tolerance.ROUNDING.check(plain.upper(), row.upper(), "upper");
        String notes = String.join(" ", e.notes());
        assertTrue(notes.contains("as if") && notes.contains("random"), notes);
    }
}
