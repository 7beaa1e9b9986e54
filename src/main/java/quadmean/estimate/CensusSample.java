package quadmean.estimate;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Moments;
import quadmean.stats.StratumSample;
import quadmean.stats.Working;

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

    @Override
    public boolean hasLinearRatios() {
        return false;
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
    public MeanEstimate mean(ToDoubleFunction<SampledPlot> value, Working working) {
        double total = total(value);
        MeanEstimate mean = known(total / areaHa());
        working.ofTotals().sum("T", "sum over the plots", Working.SUM, values(value), total, Working.Scale.VALUE);
        working.given("A", "area", areaHa(), Working.Scale.AREA);
        working.step("mean", "mean", "{T} / {A}", mean.mean(), Working.Scale.VALUE);
        return mean;
    }

    @Override
    public MeanEstimate ratio(ToDoubleFunction<SampledPlot> y, ToDoubleFunction<SampledPlot> x, Working working) {
        working.given("Y", "sum of the numerator over all trees", total(y), Working.Scale.FACTOR);
        working.number("X", "sum of the denominator over all trees", total(x));
        MeanEstimate ratio = known(total(y) / total(x));
        working.step("r", "their ratio", "{Y} / {X}", ratio.mean(), Working.Scale.FACTOR);
        return ratio;
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

    private double[] values(ToDoubleFunction<SampledPlot> value) {
        return parts.samples(value).stream()
                .flatMapToDouble(s -> Arrays.stream(s.values()))
                .toArray();
    }

    private MeanEstimate known(double value) {
        int n = parts.plots().stream().mapToInt(List::size).sum();
        return new MeanEstimate(n, Double.isNaN(value) ? 0 : Double.POSITIVE_INFINITY, value, 0, 0);
    }
}
