package quadmean.estimate;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import quadmean.model.Estimator;
import quadmean.model.PlotDesign;
import quadmean.model.VarianceForm;
import quadmean.stats.HansenHurwitz;
import quadmean.stats.HorvitzThompson;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Reweighting;
import quadmean.stats.Working;

/** Plots that tile the tract, drawn with chances of their own: totals of plots over their chances, spread over the area. */
final class UnequalChances implements StratumEstimator {
    @Override
    public MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value, Working working) {
        if (drawn.rules().estimator() == Estimator.HANSEN_HURWITZ) {
            working.heading("Value over chance, for each draw");
            return spread(
                    HansenHurwitz.total(
                            perDraw(drawn, value), perDraw(drawn, p -> p.facts().chance()), working.ofFactors()),
                    drawn,
                    working);
        }
        HorvitzThompson.UnitVariance form = drawn.rules().variance() == VarianceForm.POISSON
                ? HorvitzThompson.UnitVariance.POISSON
                : HorvitzThompson.UnitVariance.HAJEK;
        return spread(
                HorvitzThompson.total(
                        drawn.values(value), drawn.values(p -> p.facts().chance()), form, working.ofFactors()),
                drawn,
                working);
    }

    /** A sum over plots that tile the stratum, as a mean per hectare. */
    private static MeanEstimate spread(MeanEstimate sum, DrawnPlots drawn, Working working) {
        double area = drawn.stratum().areaHa();
        MeanEstimate mean = sum.times(plotHa(drawn) / area);
        working.heading("Per unit area: the sum over all plots times the share of the area that a plot is");
        working.given("T", "sum over all plots", sum.mean(), Working.Scale.FACTOR);
        working.given("v_T", "its variance", sum.variance(), Working.Scale.SQUARE);
        working.given("a", "area of a plot", plotHa(drawn), Working.Scale.AREA);
        working.given("A", "area of the stratum", area, Working.Scale.AREA);
        working.step("mean", "mean", "{T} × {a} / {A}", mean.mean(), Working.Scale.VALUE);
        if (mean.hasError()) {
            working.step("v", "variance", "{v_T} × {a}² / {A}²", mean.variance(), Working.Scale.SQUARE);
            working.error(mean, "");
        }
        return mean;
    }

    @Override
    public int units(DrawnPlots drawn) {
        return perDraw(drawn, p -> 0).length;
    }

    /** A plot drawn twice stands twice. */
    private static double[] perDraw(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value) {
        return drawn.plots().stream()
                .flatMapToDouble(p -> DoubleStream.generate(() -> value.applyAsDouble(p))
                        .limit(p.facts().draws()))
                .toArray();
    }

    private static double plotHa(DrawnPlots drawn) {
        if (drawn.settings().plot() instanceof PlotDesign.Fixed fixed) {
            return fixed.areaHa();
        }
        throw new IllegalArgumentException("unequal chances belong to plots of one fixed area");
    }

    /** Draws are the units. Plots of which none is drawn twice were not drawn independently, which resamples cannot follow. */
    @Override
    public Optional<Resampling> resampling(DrawnPlots drawn) {
        if (drawn.rules().estimator() == Estimator.HORVITZ_THOMPSON) {
            return Optional.empty();
        }
        List<SampledPlot> draws = drawn.inOrder().plots().stream()
                .flatMap(p -> Collections.nCopies(p.facts().draws(), p).stream())
                .toList();
        double share = plotHa(drawn) / drawn.stratum().areaHa();
        int n = draws.size();
        return Optional.of(Resampling.ofStratum(
                Double.POSITIVE_INFINITY,
                n,
                draws,
                Reweighting.expanded(
                        IntStream.range(0, n).toArray(),
                        draws.stream()
                                .mapToDouble(p -> share / p.facts().chance())
                                .toArray()),
                "draws"));
    }
}
