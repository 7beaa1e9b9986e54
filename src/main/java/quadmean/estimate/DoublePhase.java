package quadmean.estimate;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.Estimator;
import quadmean.model.VarianceForm;
import quadmean.stats.DoubleSampling;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.stats.Reweighting.Target;
import quadmean.stats.StratumSample;
import quadmean.stats.Working;

/** An auxiliary on all plots of the plan, trees on some: the ratio or the line of these, read at the mean of all. */
final class DoublePhase implements StratumEstimator {
    @Override
    public MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value, Working working) {
        StratumSample first = drawn.sample(drawn.firstPhase().stream()
                .mapToDouble(p -> p.facts().auxiliary())
                .toArray());
        double[] x = drawn.auxiliary();
        double[] y = drawn.values(value);
        if (drawn.rules().estimator() == Estimator.DOUBLE_RATIO) {
            return DoubleSampling.ratio(first, x, y, working);
        }
        DoubleSampling.Variance form = drawn.rules().variance() == VarianceForm.HANDBOOK
                ? DoubleSampling.Variance.HANDBOOK
                : DoubleSampling.Variance.COCHRAN;
        return DoubleSampling.regression(first, x, y, form, working);
    }

    @Override
    public boolean isEnough(DrawnPlots drawn) {
        return drawn.rules().estimator() == Estimator.DOUBLE_RATIO
                ? Moments.sum(drawn.auxiliary()) > 0
                : RegressionMean.hasLine(drawn);
    }

    @Override
    public Optional<Resampling> resampling(DrawnPlots drawn) {
        double[] x = drawn.inOrder().auxiliary();
        return Optional.of(TwoPhases.resampling(drawn, (plain, first) -> {
            Target mean = Target.ofUnits(
                    new int[first.size()],
                    first.stream().mapToDouble(p -> p.facts().auxiliary()).toArray());
            return drawn.rules().estimator() == Estimator.DOUBLE_RATIO ? plain.scaled(x, mean) : plain.onLine(x, mean);
        }));
    }
}
