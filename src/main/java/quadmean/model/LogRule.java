package quadmean.model;

/** Log rules of the trade: board feet of a log from its small-end diameter inside bark (in) and its length (ft). */
public enum LogRule {
    DOYLE("doyle", "Doyle"),
    SCRIBNER_FORMULA("scribner_formula", "Scribner formula"),
    /** A second regression on Scribner's diagrams. */
    SCRIBNER_REGRESSION("scribner_regression", "Scribner, second regression"),
    /** A table in tens of board feet. */
    SCRIBNER_DECIMAL_C("scribner_decimal_c", "Scribner Decimal C"),
    INTERNATIONAL_QUARTER("international_quarter", "International 1/4-inch"),
    INTERNATIONAL_EIGHTH("international_eighth", "International 1/8-inch");

    private final String id;
    private final String label;

    LogRule(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The name used in outputs. */
    public String label() {
        return label;
    }
}
