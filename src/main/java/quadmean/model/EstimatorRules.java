package quadmean.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How plots become estimates.
 *
 * @param estimator the estimator
 * @param variance which of its variances; null where it has only one
 * @param auxiliaryMeans mean of the auxiliary over each stratum, by code
 * @param clusters number of clusters in each stratum, by code; empty for no correction
 * @param groupAreas area of each post-stratum (ha), by code, in the order of the design
 * @param onePlot what becomes of a stratum with a single plot
 */
public record EstimatorRules(
        Estimator estimator,
        @Nullable VarianceForm variance,
        Map<String, Double> auxiliaryMeans,
        Map<String, Double> clusters,
        Map<String, Double> groupAreas,
        OnePlotRule onePlot) {
    public EstimatorRules {
        auxiliaryMeans = Map.copyOf(auxiliaryMeans);
        clusters = Map.copyOf(clusters);
        groupAreas = Collections.unmodifiableMap(new LinkedHashMap<>(groupAreas));
    }

    /** Means of plots, as if they were random within strata. */
    public static final EstimatorRules STANDARD = of(Estimator.MEAN);

    /** An estimator with its usual variance, and nothing known besides. */
    public static EstimatorRules of(Estimator estimator) {
        VarianceForm usual = estimator.variances().stream().findFirst().orElse(null);
        return new EstimatorRules(estimator, usual, Map.of(), Map.of(), Map.of(), OnePlotRule.NO_ERROR);
    }

    /** The same with another variance. */
    public EstimatorRules with(VarianceForm other) {
        return new EstimatorRules(estimator, other, auxiliaryMeans, clusters, groupAreas, onePlot);
    }

    /** The same with another rule for single plots. */
    public EstimatorRules with(OnePlotRule other) {
        return new EstimatorRules(estimator, variance, auxiliaryMeans, clusters, groupAreas, other);
    }

    /** The same with means of the auxiliary. */
    public EstimatorRules withAuxiliaryMeans(Map<String, Double> means) {
        return new EstimatorRules(estimator, variance, means, clusters, groupAreas, onePlot);
    }

    /** The same with numbers of clusters. */
    public EstimatorRules withClusters(Map<String, Double> numbers) {
        return new EstimatorRules(estimator, variance, auxiliaryMeans, numbers, groupAreas, onePlot);
    }

    /** The same with areas of post-strata. */
    public EstimatorRules withGroupAreas(Map<String, Double> areasHa) {
        return new EstimatorRules(estimator, variance, auxiliaryMeans, clusters, areasHa, onePlot);
    }
}
