package quadmean.model;

/** How the error budget is worked out. */
public enum BudgetRule {
    NONE("none"),
    /** The error of height curves from the covariance of their parameters. */
    FORMULA("formula"),
    /** The error of height curves by refitting them to resampled plots. */
    BOOTSTRAP("bootstrap");

    private final String id;

    BudgetRule(String id) {
        this.id = id;
    }

    /** The word used in design files. */
    public String id() {
        return id;
    }
}
