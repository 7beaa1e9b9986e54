package quadmean.model;

import java.util.List;

/** Forms of tree volume equation; D dbh, H total height, V volume, in the units of the coefficients. */
public enum VolumeForm {
    COMBINED_VARIABLE(
            "combined_variable", "V = a + b·D²·H", List.of("a", "b"), "combined variable; Spurr 1952 (from memory)"),
    SCHUMACHER_HALL(
            "schumacher_hall", "log V = a + b·log D + c·log H", List.of("a", "b", "c"), "Schumacher & Hall 1933"),
    HONER("honer", "V = D²/(a + b/H)", List.of("a", "b"), "Honer 1967 (from memory)");

    private final String id;
    private final String formula;

    @SuppressWarnings("ImmutableEnumChecker") // List.of
    private final List<String> coefficients;

    private final String source;

    VolumeForm(String id, String formula, List<String> coefficients, String source) {
        this.id = id;
        this.formula = formula;
        this.coefficients = coefficients;
        this.source = source;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The formula. */
    public String formula() {
        return formula;
    }

    /** Names of the coefficients, in order. */
    public List<String> coefficients() {
        return coefficients;
    }

    /** Where the form was published. */
    public String source() {
        return source;
    }
}
