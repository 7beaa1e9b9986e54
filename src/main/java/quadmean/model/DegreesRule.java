package quadmean.model;

/** How degrees of freedom are counted over strata. */
public enum DegreesRule {
    PLOTS_MINUS_STRATA("plots_minus_strata", "plots minus strata"),
    SATTERTHWAITE("satterthwaite", "Satterthwaite 1946");

    private final String id;
    private final String label;

    DegreesRule(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }
}
