package quadmean.estimate;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
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
        return StratifiedSample.of(strata, plots, settings);
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

    /** The units that a bootstrap draws; empty where the sampling design has none. */
    default Optional<ResampledUnits> resampled() {
        return Optional.empty();
    }
}
