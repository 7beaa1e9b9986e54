package quadmean.estimate;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.EstimatorRules;
import quadmean.stats.MeanEstimate;
import quadmean.stats.Working;

/** Estimates one stratum from the plots drawn in it. Each is linear in the values, so that the parts of a stand add up. */
interface StratumEstimator {
    /** What stands where the plots do not make an estimate yet. */
    MeanEstimate UNKNOWN = new MeanEstimate(0, 0, Double.NaN, Double.NaN, Double.NaN);

    /** The estimator that the design asks for, in its own variance. */
    static StratumEstimator of(EstimatorRules rules) {
        return switch (rules.estimator()) {
            case MEAN -> new GridMean();
            case RATIO -> new RatioMean();
            case REGRESSION -> new RegressionMean();
            case POST_STRATIFIED -> new GroupedMean();
            case DOUBLE_RATIO, DOUBLE_REGRESSION -> new DoublePhase();
            case DOUBLE_STRATIFIED -> new DoubleGroups();
            case CLUSTER, TWO_STAGE -> new Clustered();
            case HANSEN_HURWITZ, HORVITZ_THOMPSON -> new UnequalChances();
        };
    }

    /** Mean per hectare of a number that each plot has per hectare. */
    default MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value) {
        return mean(drawn, value, Working.silent());
    }

    /** The same, step by step. */
    MeanEstimate mean(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value, Working working);

    /** Whether the plots make an estimate at all. */
    default boolean isEnough(DrawnPlots drawn) {
        return !drawn.plots().isEmpty();
    }

    /** Number of units that vary: plots, or clusters of them. */
    default int units(DrawnPlots drawn) {
        return drawn.plots().size();
    }

    /**
     * One value for each plot, with the estimate for its mean, whose spread makes the sampling error; empty where the error
     * does not go by the number of plots alone.
     */
    default double[] spread(DrawnPlots drawn, ToDoubleFunction<SampledPlot> value) {
        return new double[0];
    }

    /** How a bootstrap resamples the stratum; empty where it has no way to. */
    default Optional<Resampling> resampling(DrawnPlots drawn) {
        return Optional.empty();
    }
}
