package quadmean.model;

/** The height-diameter curve forms by name; the room {@code height} holds their mathematics. */
public enum CurveForm {
    /** Näslund 1936, exponent 2. */
    NASLUND("naslund", "Näslund", "bh + d²/(a + b·d)²", "Näslund 1936"),
    /** Wykoff, Crookston and Stage 1982. */
    WYKOFF(
            "wykoff",
            "Wykoff",
            "bh + exp(a + b/(d + 1))",
            "Wykoff, Crookston & Stage 1982 (USDA Forest Service GTR INT-133)"),
    /** Chapman-Richards. */
    CHAPMAN_RICHARDS(
            "chapman_richards",
            "Chapman-Richards",
            "bh + a·(1 - exp(-b·d))^c",
            "Richards 1959; Chapman 1961 (from memory)");

    private final String id;
    private final String label;
    private final String formula;
    private final String source;

    CurveForm(String id, String label, String formula, String source) {
        this.id = id;
        this.label = label;
        this.formula = formula;
        this.source = source;
    }

    /** The name used in design files, JSON and CSV. */
    public String id() {
        return id;
    }

    /** The name used in sentences. */
    public String label() {
        return label;
    }

    /** The formula with d for dbh and bh for breast height. */
    public String formula() {
        return formula;
    }

    /** Where the form was published. */
    public String source() {
        return source;
    }
}
