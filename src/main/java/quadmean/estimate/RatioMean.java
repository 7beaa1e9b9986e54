package quadmean.estimate;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.VarianceForm;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.stats.RatioEstimate;
import quadmean.stats.Reweighting.Target;
import quadmean.stats.Working;

/** The ratio of the plots to their auxiliary times its known mean, with a ratio of its own in each stratum. */
final class RatioMean implements StratumEstimator {
    @Override
    public MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value, Working working) {
        return RatioEstimate.mean(
                List.of(drawn.sample(drawn.values(value))),
                List.of(drawn.sample(drawn.auxiliary())),
                knownMean(drawn),
                drawn.rules().variance() == VarianceForm.V0 ? RatioEstimate.Variance.V0 : RatioEstimate.Variance.V2,
                DegreesOfFreedom.UNITS_MINUS_STRATA,
                working);
    }

    @Override
    public boolean isEnough(DrawnPlots drawn) {
        return Moments.sum(drawn.auxiliary()) > 0;
    }

    @Override
    public double[] spread(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value) {
        double[] x = drawn.auxiliary();
        double[] y = drawn.values(value);
        double ratio = Moments.sum(y) / Moments.sum(x);
        double[] z = new double[y.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = ratio * knownMean(drawn) + y[i] - ratio * x[i];
        }
        return z;
    }

    static double knownMean(DrawnPlots drawn) {
        return drawn.rules().auxiliaryMeans().getOrDefault(drawn.stratum().code(), Double.NaN);
    }

    @Override
    public Optional<Resampling> resampling(DrawnPlots drawn) {
        DrawnPlots own = drawn.inOrder();
        return Optional.of(Resampling.ofPlots(own, same -> same.scaled(own.auxiliary(), Target.known(knownMean(own)))));
    }
}
