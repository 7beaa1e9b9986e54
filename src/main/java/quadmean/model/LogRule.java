package quadmean.model;

/** Log rules of the trade: board feet of a log from its small-end diameter inside bark (in) and its length (ft). */
public enum LogRule {
    DOYLE("doyle", "Doyle", "published Doyle scale table, 84 cells", Standing.VERIFIED),
    SCRIBNER_FORMULA(
            "scribner_formula",
            "Scribner formula",
            "V = (0.79D² - 2D - 4)·L/16; Bruce & Schumacher, as printed in public pages",
            Standing.VERIFIED),
    /** A second regression on Scribner's diagrams. */
    SCRIBNER_REGRESSION(
            "scribner_regression",
            "Scribner, second regression",
            "V = 0.0494D²L - 0.124DL - 0.269L; Bruce 1925",
            Standing.FROM_MEMORY),
    /** A table in tens of board feet. */
    SCRIBNER_DECIMAL_C(
            "scribner_decimal_c",
            "Scribner Decimal C",
            "table of 175 cells, five of them seen in print",
            Standing.FROM_MEMORY),
    INTERNATIONAL_QUARTER(
            "international_quarter",
            "International 1/4-inch",
            "sections of 4 ft by the formula in Michigan C.L. 290.401 and Massachusetts G.L. 96 s. 11A",
            Standing.VERIFIED),
    INTERNATIONAL_EIGHTH(
            "international_eighth",
            "International 1/8-inch",
            "sections of 4 ft, V = 0.22D² - 0.71D; Clark",
            Standing.VERIFIED);

    private final String id;
    private final String label;
    private final String source;
    private final Standing standing;

    LogRule(String id, String label, String source, Standing standing) {
        this.id = id;
        this.label = label;
        this.source = source;
        this.standing = standing;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The name used in outputs. */
    public String label() {
        return label;
    }

    /** Where the rule as used here comes from. */
    public String source() {
        return source;
    }

    /** Whether anybody checked it against that source. */
    public Standing standing() {
        return standing;
    }
}
