package quadmean.model;

/** Variances with a name, each of one estimator; the first of an estimator is the usual one. */
public enum VarianceForm {
    SIMPLE_RANDOM("simple_random", "as if random", Estimator.MEAN),
    SUCCESSIVE_DIFFERENCES("successive_differences", "successive differences", Estimator.MEAN),
    NEIGHBOUR_DIFFERENCES("neighbour_differences", "differences of neighbours", Estimator.MEAN),
    OVERLAPPING_BLOCKS("overlapping_blocks", "overlapping squares of four", Estimator.MEAN),
    V2("v2", "v2", Estimator.RATIO),
    V0("v0", "v0", Estimator.RATIO),
    EXACT("exact", "exact for a line with even scatter", Estimator.REGRESSION),
    LARGE_SAMPLE("large_sample", "large sample", Estimator.REGRESSION),
    LINEARISED("linearised", "linearised", Estimator.POST_STRATIFIED),
    TEXTBOOK("textbook", "over all samples of this size", Estimator.POST_STRATIFIED),
    COCHRAN("cochran", "Cochran, large sample", Estimator.DOUBLE_REGRESSION),
    HANDBOOK("handbook", "handbook form", Estimator.DOUBLE_REGRESSION),
    HAJEK("hajek", "Hájek's approximation", Estimator.HORVITZ_THOMPSON),
    POISSON("poisson", "Poisson sampling", Estimator.HORVITZ_THOMPSON);

    private final String id;
    private final String label;
    private final Estimator estimator;

    VarianceForm(String id, String label, Estimator estimator) {
        this.id = id;
        this.label = label;
        this.estimator = estimator;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }

    /** The estimator that it belongs to. */
    public Estimator estimator() {
        return estimator;
    }

    /** Whether it goes by where plots stand on a grid. */
    public boolean isOfGrid() {
        return estimator == Estimator.MEAN && this != SIMPLE_RANDOM;
    }
}
