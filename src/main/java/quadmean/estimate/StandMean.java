package quadmean.estimate;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.Stratum;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;

/**
 * The mean of one attribute over the whole stand, taken apart: what each plot and each stem adds to it. Values per hectare, in metric
 * units.
 */
public final class StandMean {
    private final Sample sample;
    private final EstimateSettings settings;
    private final Attribute attribute;

    private StandMean(Sample sample, EstimateSettings settings, Attribute attribute) {
        this.sample = sample;
        this.settings = settings;
        this.attribute = attribute;
    }

    /**
     * The mean of an attribute.
     *
     * @param attribute a sum over trees, not a ratio
     */
    public static StandMean of(
            List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings, Attribute attribute) {
        return new StandMean(Sample.of(strata, plots, settings), settings, attribute);
    }

    /** The estimate; NaN without an error where a stratum has no plots. */
    public MeanEstimate estimate() {
        if (!sample.isComplete()) {
            return new MeanEstimate(0, 0, Double.NaN, Double.NaN, Double.NaN);
        }
        return sample.mean(PlotValue.of(settings.plot(), attribute, stem -> true));
    }

    /** The estimate from plots that have so much more per hectare each. */
    public MeanEstimate estimate(ToDoubleFunction<SampledPlot> more) {
        ToDoubleFunction<SampledPlot> value = PlotValue.of(settings.plot(), attribute, stem -> true);
        return sample.mean(p -> value.applyAsDouble(p) + more.applyAsDouble(p));
    }

    /** Mean per hectare of any number that plots have per hectare, under the same sampling design. */
    public MeanEstimate estimateOf(ToDoubleFunction<SampledPlot> value) {
        return sample.mean(value);
    }

    /** By how much the mean grows with each unit more per hectare on a plot; the mean is linear in the values of the plots. */
    public double weight(SampledPlot plot) {
        return sample.mean(p -> p.id().equals(plot.id()) && p.stratum().equals(plot.stratum()) ? 1 : 0)
                .mean();
    }

    /** What a plot has per hectare. */
    public double value(SampledPlot plot) {
        return PlotValue.of(settings.plot(), attribute, stem -> true).applyAsDouble(plot);
    }

    /** What a stem adds to its plot, per hectare. */
    public double value(SampledPlot plot, Stem stem) {
        return value(alone(plot, stem));
    }

    /** Number of trees per hectare that a stem stands for on its plot. */
    public double trees(SampledPlot plot, Stem stem) {
        return PlotValue.of(settings.plot(), Attribute.TREES, s -> true).applyAsDouble(alone(plot, stem));
    }

    private static SampledPlot alone(SampledPlot plot, Stem stem) {
        return new SampledPlot(plot.id(), plot.stratum(), List.of(stem), plot.inside(), plot.facts());
    }

    /** Area of the stand (ha). */
    public double areaHa() {
        return sample.areaHa();
    }

    /** How a bootstrap resamples the design; empty where it has no way to. */
    public Optional<Resampling> resampling() {
        return sample.resampling();
    }
}
