package quadmean.estimate;

import java.util.List;
import java.util.function.ToDoubleFunction;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Stratum;
import quadmean.stats.MeanEstimate;
import quadmean.stats.StratumSample;

/** Plots ready to be estimated from: any number that a plot has becomes an estimate, as the sampling design has it. */
interface Sample {
    /**
     * The plots of some strata under the sampling design of the settings.
     *
     * @param strata strata to estimate together
     * @param plots plots; those of other strata are left out
     */
    static Sample of(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
        StratifiedSample points = StratifiedSample.of(strata, plots, settings);
        if (settings.plot().measuring() instanceof Measuring.ThreeP threeP) {
            return ThreePSample.of(points, settings.plot(), threeP);
        }
        if (settings.plot() instanceof PlotDesign.Complete) {
            return new CensusSample(points);
        }
        return settings.plot() instanceof PlotDesign.Point point
                        && point.measuring().hasCounts()
                ? new CountedSample(points, point, settings.rules().product())
                : points;
    }

    /** What a reader should know of how the plots were estimated from, in sentences. */
    default List<String> notes() {
        return List.of();
    }

    /** Area of the strata (ha). */
    double areaHa();

    /** Whether each stratum has a plot, so that there is an estimate at all. */
    boolean isComplete();

    /** Strata with a single plot, which give no variance. */
    List<String> strataWithOnePlot();

    /** Number of plots where a value is above zero. */
    long plotsWith(ToDoubleFunction<SampledPlot> value);

    /** Mean per hectare of a number that each plot has per hectare. */
    MeanEstimate mean(ToDoubleFunction<SampledPlot> value);

    /** Ratio of two such means. */
    MeanEstimate ratio(ToDoubleFunction<SampledPlot> y, ToDoubleFunction<SampledPlot> x);

    /** The plot values stratum by stratum, with weights by area. */
    List<StratumSample> samples(ToDoubleFunction<SampledPlot> value);
}
