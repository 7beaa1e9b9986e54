package quadmean.model;

import java.util.List;

/** Forms of stem profile; D dbh, H total height, h height above ground, d diameter at h. */
public enum TaperForm {
    ORMEROD("ormerod", "d = D·((H - h)/(H - bh))^p", List.of("p"), "Ormerod 1973 (from memory)"),
    KOZAK_1969(
            "kozak_1969",
            "d² = D²·(b0 + b1·h/H + b2·(h/H)²)",
            List.of("b0", "b1", "b2"),
            "Kozak, Munro & Smith 1969 (from memory)"),
    /**
     * Girard form class, inside bark at the top of the first 16-ft log. Above it Behre's hyperbola; below it a straight
     * line through the diameter inside bark at breast height (common practice, no source).
     */
    FORM_CLASS(
            "form_class",
            "above 17.3 ft d = D·fc/100·x/(a + (1 - a)·x), x = (H - h)/(H - 17.3 ft); below it a straight line",
            List.of("fc", "a"),
            "Girard form class; Behre 1923 (from memory)");

    private final String id;
    private final String formula;

    @SuppressWarnings("ImmutableEnumChecker") // List.of
    private final List<String> coefficients;

    private final String source;

    TaperForm(String id, String formula, List<String> coefficients, String source) {
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
