package quadmean.stats;

/** How confidence limits are made. */
public enum IntervalKind {
    /** mean ± t·SE. */
    STUDENT_T("Student's t"),
    /** mean·exp(±t·SE/mean): {@link LogInterval}. */
    LOG_SCALE("t on a log scale"),
    /** Quantiles of the bootstrap: {@link BootstrapSample#percentile}. */
    BOOTSTRAP_PERCENTILE("bootstrap percentiles"),
    /** Quantiles corrected for bias and skewness: {@link BootstrapSample#bca}. */
    BOOTSTRAP_BCA("bootstrap BCa");

    private final String label;

    IntervalKind(String label) {
        this.label = label;
    }

    /** The name used in outputs. */
    public String label() {
        return label;
    }
}
