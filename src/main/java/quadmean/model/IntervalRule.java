package quadmean.model;

/** How confidence limits are made. */
public enum IntervalRule {
    STUDENT_T("t", "Student's t"),
    LOG_SCALE("log", "t on a log scale"),
    PERCENTILE("percentile", "bootstrap percentiles"),
    BCA("bca", "bootstrap BCa");

    private final String id;
    private final String label;

    IntervalRule(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The word used in design files. */
    public String id() {
        return id;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }

    /** Whether plots are resampled. */
    public boolean isBootstrap() {
        return this == PERCENTILE || this == BCA;
    }
}
