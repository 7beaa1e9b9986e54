package quadmean.model;

import java.util.List;

/** How plots become an estimate of a stratum; {@link VarianceForm} has the variances of each. */
public enum Estimator {
    MEAN("mean", "mean of the plots"),
    RATIO("ratio", "mean by a ratio to an auxiliary of known mean"),
    REGRESSION("regression", "mean by a regression on an auxiliary of known mean"),
    POST_STRATIFIED("post_stratified", "mean over classes of known area"),
    DOUBLE_RATIO("double_ratio", "double sampling, by a ratio"),
    DOUBLE_REGRESSION("double_regression", "double sampling, by a regression"),
    DOUBLE_STRATIFIED("double_stratified", "double sampling, by classes"),
    CLUSTER("cluster", "clusters of plots"),
    TWO_STAGE("two_stage", "plots drawn within drawn clusters"),
    HANSEN_HURWITZ("hansen_hurwitz", "plots drawn with unequal chances and replacement"),
    HORVITZ_THOMPSON("horvitz_thompson", "plots drawn with unequal chances, none twice");

    private final String id;
    private final String label;

    Estimator(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The name used in sentences. */
    public String label() {
        return label;
    }

    /** Its variances, the usual one first; empty where there is only one. */
    public List<VarianceForm> variances() {
        return List.of(VarianceForm.values()).stream()
                .filter(v -> v.estimator() == this)
                .toList();
    }

    /** Whether the mean of an auxiliary over the whole stratum must be known. */
    public boolean needsAuxiliaryMean() {
        return this == RATIO || this == REGRESSION;
    }

    /** Whether each plot needs an auxiliary value. */
    public boolean needsAuxiliary() {
        return needsAuxiliaryMean() || this == DOUBLE_RATIO || this == DOUBLE_REGRESSION;
    }

    /** Whether a first phase of plots that nobody visits belongs to it. */
    public boolean isDouble() {
        return this == DOUBLE_RATIO || this == DOUBLE_REGRESSION || this == DOUBLE_STRATIFIED;
    }

    /** Whether each plot needs a class. */
    public boolean needsGroup() {
        return this == POST_STRATIFIED || this == DOUBLE_STRATIFIED;
    }

    /** Whether plots come in clusters. */
    public boolean isClustered() {
        return this == CLUSTER || this == TWO_STAGE;
    }

    /** Whether each plot needs a chance. */
    public boolean needsChance() {
        return this == HANSEN_HURWITZ || this == HORVITZ_THOMPSON;
    }

    /** Whether it is a line through the plots, which takes three of them in each stratum. */
    public boolean isLine() {
        return this == REGRESSION || this == DOUBLE_REGRESSION;
    }

    /** Whether a finite population correction can be asked for; with unequal chances it is in the chances. */
    public boolean takesFinitePopulation() {
        return !needsChance();
    }
}
