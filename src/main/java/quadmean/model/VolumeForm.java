package quadmean.model;

import java.util.List;

/**
 * Forms of tree volume equation; D dbh, H total height, L number of 16-ft logs, V volume, in the units of the
 * coefficients.
 */
public enum VolumeForm {
    COMBINED_VARIABLE(
            "combined_variable", "V = a + b·D²·H", List.of("a", "b"), "combined variable; Spurr 1952 (from memory)"),
    SCHUMACHER_HALL(
            "schumacher_hall", "log V = a + b·log D + c·log H", List.of("a", "b", "c"), "Schumacher & Hall 1933"),
    /** The logarithmic form of second degree. */
    LOG_POLYNOMIAL(
            "log_polynomial",
            "log V = a + b·log D + c·log H + d·(log D)² + e·(log H)² + f·log D·log H",
            List.of("a", "b", "c", "d", "e", "f"),
            "Brackett 1973 (from memory)"),
    HONER("honer", "V = D²/(a + b/H)", List.of("a", "b"), "Honer 1967 (from memory)"),
    /** Honer's form with its coefficients for inches, feet and cubic feet, written for cm, m and m³. */
    HONER_METRIC(
            "honer_metric",
            "V = 0.0043891·D²/(a + 0.3048·b/H)",
            List.of("a", "b"),
            "Honer 1967 (from memory), converted by the definitions of foot and inch"),
    /** g is the cross-section at breast height. */
    FORM_FACTOR("form_factor", "V = f·g·H, g = π/4·D²", List.of("f"), "definition of the breast height form factor"),
    /** Volume by dbh and number of 16-ft logs for one form class, moved to another by so many percent a point. */
    FORM_CLASS(
            "form_class",
            "V = (a0 + a1·L + a2·L² + (b0 + b1·L + b2·L²)·D + (c0 + c1·L + c2·L²)·D²)"
                    + "·(1 + percent_per_point/100·(form_class - table_form_class))",
            List.of(
                    "a0",
                    "a1",
                    "a2",
                    "b0",
                    "b1",
                    "b2",
                    "c0",
                    "c1",
                    "c2",
                    "percent_per_point",
                    "table_form_class",
                    "form_class"),
            "Wiant 1986 for the tables of Mesavage & Girard 1946 (from memory)"),
    TABLE(
            "table",
            "V by a table, straight lines between its points in both directions, nothing outside",
            List.of(),
            "bilinear interpolation"),
    TAPER("taper", "V = ∫ π/4·d² dh along the stem profile", List.of(), "definition of the volume of a solid");

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

    /** Whether the form gives the logarithm of the volume, so that the back-transform has a bias to correct. */
    public boolean isLogarithmic() {
        return this == SCHUMACHER_HALL || this == LOG_POLYNOMIAL;
    }
}
