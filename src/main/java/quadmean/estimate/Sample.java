package quadmean.estimate;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.Estimator;
import quadmean.model.EstimatorRules;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Stratum;
import quadmean.stats.MeanEstimate;
import quadmean.stats.StratumSample;
import quadmean.stats.Working;

/** Plots ready to be estimated from: any number that a plot has becomes an estimate, as the sampling design has it. */
interface Sample {
    /**
     * The plots of some strata under the sampling design of the settings.
     *
     * @param strata strata to estimate together
     * @param plots plots; those of other strata are left out
     */
    static Sample of(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
        EstimatorRules rules = settings.rules().estimation();
        boolean random = rules.variance() == null || !rules.variance().isOfGrid();
        if (rules.estimator() != Estimator.MEAN || !random) {
            return SeparateSample.of(strata, plots, settings);
        }
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

    /** Area of the strata (ha). */
    double areaHa();

    /** Whether each stratum has plots enough, so that there is an estimate at all. */
    boolean isComplete();

    /** Strata with a single plot, or a single cluster of them, which give no variance. */
    List<String> strataWithOnePlot();

    /** Number of plots where a value is above zero. */
    long plotsWith(ToDoubleFunction<SampledPlot> value);

    /** Mean per hectare of a number that each plot has per hectare. */
    default MeanEstimate mean(ToDoubleFunction<SampledPlot> value) {
        return mean(value, Working.silent());
    }

    /** The same, step by step. */
    MeanEstimate mean(ToDoubleFunction<SampledPlot> value, Working working);

    /**
     * Ratio of two such means. Its error is that, under the same sampling design, of the mean of (y - ratio·x)/mean(x) (linearisation;
     * Cochran 1977, section 2.11, from memory).
     */
    default MeanEstimate ratio(ToDoubleFunction<SampledPlot> y, ToDoubleFunction<SampledPlot> x) {
        return ratio(y, x, Working.silent());
    }

    /** Whether a ratio is that of two means, with the error of the mean above. */
    default boolean hasLinearRatios() {
        return true;
    }

    /** The same, step by step. */
    default MeanEstimate ratio(ToDoubleFunction<SampledPlot> y, ToDoubleFunction<SampledPlot> x, Working working) {
        double meanX = mean(x).mean();
        double ratio = mean(y).mean() / meanX;
        working.given("ȳ", "mean of the numerator", ratio * meanX, Working.Scale.FACTOR);
        working.number("x̄", "mean of the denominator", meanX);
        working.step("r", "their ratio", "{ȳ} / {x̄}", ratio, Working.Scale.FACTOR);
        working.heading("Its error is that of the mean of (y - r × x) / x̄, a value for each plot");
        MeanEstimate linear = mean(p -> (y.applyAsDouble(p) - ratio * x.applyAsDouble(p)) / meanX, working);
        return new MeanEstimate(linear.n(), linear.df(), ratio, linear.se(), linear.sd());
    }

    /**
     * Values stratum by stratum, with weights by area, whose spread between plots makes the sampling error: of plain means the plot
     * values themselves, else what the estimator leaves of them. Empty where the error does not go by the number of plots alone.
     */
    List<StratumSample> samples(ToDoubleFunction<SampledPlot> value);

    /** What a reader should know of the sample, in sentences. */
    List<String> notes();

    /** Why there may be no estimate of something that is known of trees. */
    default String whyNoEstimate() {
        return "no trees tallied here";
    }

    /** Why there may be no standard error although each stratum has plots enough. */
    default String whyNoError() {
        return "no standard error: too few plots";
    }

    /** How a bootstrap resamples the design; empty where it has no way to. */
    default Optional<Resampling> resampling() {
        return Optional.empty();
    }

    /** Why there is no bootstrap, and what to take instead. */
    default String whyNoBootstrap() {
        return RowLimits.NO_BOOTSTRAP;
    }
}
