package quadmean.estimate;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.VarianceForm;
import quadmean.stats.MeanEstimate;
import quadmean.stats.RegressionEstimate;
import quadmean.stats.Reweighting.Target;
import quadmean.stats.StraightLine;
import quadmean.stats.Working;

/** The line of the plots on their auxiliary, read at its known mean, with a line of its own in each stratum. */
final class RegressionMean implements StratumEstimator {
    @Override
    public MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value, Working working) {
        RegressionEstimate.Variance form = drawn.rules().variance() == VarianceForm.LARGE_SAMPLE
                ? RegressionEstimate.Variance.LARGE_SAMPLE
                : RegressionEstimate.Variance.EXACT;
        return RegressionEstimate.mean(
                drawn.sample(drawn.values(value)), drawn.auxiliary(), RatioMean.knownMean(drawn), form, working);
    }

    @Override
    public boolean isEnough(DrawnPlots drawn) {
        return hasLine(drawn);
    }

    @Override
    public double[] spread(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value) {
        double[] x = drawn.auxiliary();
        double[] y = drawn.values(value);
        StraightLine line = StraightLine.through(x, y);
        double[] z = new double[y.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = line.at(RatioMean.knownMean(drawn)) + y[i] - line.at(x[i]);
        }
        return z;
    }

    /** Whether two plots differ in their auxiliary. */
    static boolean hasLine(DrawnPlots drawn) {
        return java.util.Arrays.stream(drawn.auxiliary()).distinct().count() > 1;
    }

    @Override
    public Optional<Resampling> resampling(DrawnPlots drawn) {
        DrawnPlots own = drawn.inOrder();
        return Optional.of(
                Resampling.ofPlots(own, same -> same.onLine(own.auxiliary(), Target.known(RatioMean.knownMean(own)))));
    }
}
