package quadmean.estimate;

import java.util.List;
import java.util.function.ToDoubleFunction;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.stats.StratumSample;

/** A complete tally: plots are parts of their stratum and add up to it, and nothing is left to chance. */
final class CensusSample implements Sample {
    private final StratifiedSample parts;

    CensusSample(StratifiedSample parts) {
        this.parts = parts;
    }

    @Override
    public List<String> notes() {
        return List.of(
                "Complete tally: each tree stands for itself, the plots of a stratum are its parts, and the sampling"
                        + " error is zero. Errors of readings, height curves and volume equations remain, and are not in the limits.");
    }

    @Override
    public double areaHa() {
        return parts.areaHa();
    }

    @Override
    public boolean isComplete() {
        return parts.isComplete();
    }

    /** None: a census needs no second plot. */
    @Override
    public List<String> strataWithOnePlot() {
        return List.of();
    }

    @Override
    public long plotsWith(ToDoubleFunction<SampledPlot> value) {
        return parts.plotsWith(value);
    }

    @Override
    public MeanEstimate mean(ToDoubleFunction<SampledPlot> value) {
        return known(total(value) / areaHa());
    }

    @Override
    public MeanEstimate ratio(ToDoubleFunction<SampledPlot> y, ToDoubleFunction<SampledPlot> x) {
        return known(total(y) / total(x));
    }

    /** None: nothing is left to the number of plots. */
    @Override
    public List<StratumSample> samples(ToDoubleFunction<SampledPlot> value) {
        return List.of();
    }

    private double total(ToDoubleFunction<SampledPlot> value) {
        return Moments.sum(parts.samples(value).stream()
                .mapToDouble(s -> Moments.sum(s.values()))
                .toArray());
    }

    private MeanEstimate known(double value) {
        int n = parts.plots().stream().mapToInt(List::size).sum();
        return new MeanEstimate(n, Double.isNaN(value) ? 0 : Double.POSITIVE_INFINITY, value, 0, 0);
    }
}
