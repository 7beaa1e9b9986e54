package quadmean.model;

/** How the cubic volume of a log follows from cross-sections: B large end, M middle, b small end, L length. */
public enum CubicRule {
    SMALIAN("smalian", "Smalian", "V = (B + b)/2·L"),
    HUBER("huber", "Huber", "V = M·L"),
    NEWTON("newton", "Newton", "V = (B + 4M + b)/6·L");

    private final String id;
    private final String label;
    private final String formula;

    CubicRule(String id, String label, String formula) {
        this.id = id;
        this.label = label;
        this.formula = formula;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The name used in outputs. */
    public String label() {
        return label;
    }

    /** The formula. */
    public String formula() {
        return formula;
    }
}
