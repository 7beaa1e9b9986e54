package quadmean.volume;

import java.util.List;
import quadmean.model.FelledTree;
import quadmean.model.VolumeForm;
import quadmean.units.BasalArea;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * Forms of tree volume equation that become linear in their coefficients, and so can be fitted by linear least squares.
 * D dbh, H total height, V volume, in the units of the fit; g basal area.
 */
public enum VolumeFitForm {
    COMBINED_VARIABLE("combined_variable", "V = a + b·D²·H", "V on D²·H", List.of("a", "b")),
    SCHUMACHER_HALL("schumacher_hall", "ln V = a + b·ln D + c·ln H", "ln V on ln D and ln H", List.of("a", "b", "c")),
    /** The logarithmic form of second degree. */
    LOG_POLYNOMIAL(
            "log_polynomial",
            "ln V = a + b·ln D + c·ln H + d·(ln D)² + e·(ln H)² + f·ln D·ln H",
            "ln V on ln D, ln H, their squares and their product",
            List.of("a", "b", "c", "d", "e", "f")),
    HONER("honer", "V = D²/(a + b/H)", "D²/V on 1/H", List.of("a", "b")),
    FORM_FACTOR("form_factor", "V = f·g·H", "V on g·H, without intercept", List.of("f"));

    /** Six coefficients bend to few trees: five trees for each are asked for (common practice, no source). */
    private static final int TREES_A_TERM = 5;

    private final String id;
    private final String formula;
    private final String regression;

    @SuppressWarnings("ImmutableEnumChecker") // List.of
    private final List<String> coefficients;

    VolumeFitForm(String id, String formula, String regression, List<String> coefficients) {
        this.id = id;
        this.formula = formula;
        this.regression = regression;
        this.coefficients = coefficients;
    }

    /** The name used on the command line and in files. */
    public String id() {
        return id;
    }

    /** The formula. */
    public String formula() {
        return formula;
    }

    /** What is regressed on what. */
    public String regression() {
        return regression;
    }

    /** Names of the coefficients, in order. */
    public List<String> coefficients() {
        return coefficients;
    }

    /** Whether the residuals are in volume, so that weights by size make sense; the others are fitted with equal weights. */
    public boolean isFittedInVolume() {
        return this == COMBINED_VARIABLE || this == FORM_FACTOR;
    }

    /** Whether the logarithm of the volume is fitted, so that the way back has a bias to correct. */
    public boolean isLogarithmic() {
        return designForm().isLogarithmic();
    }

    /** The fewest trees that the form is fitted to. */
    public int treesNeeded() {
        return this == LOG_POLYNOMIAL ? TREES_A_TERM * coefficients.size() : coefficients.size() + 2;
    }

    /** Where that number comes from, in words. */
    public String treesNeededWhy() {
        return this == LOG_POLYNOMIAL
                ? "five for each coefficient (common practice, no source)"
                : "two more than coefficients";
    }

    /** The predictors of a tree. */
    double[] predictors(FelledTree tree, UnitSystem units) {
        double d = Unit.CENTIMETRE.convert(tree.dbhCm(), units.diameter());
        double h = Unit.METRE.convert(tree.heightM(), units.length());
        return switch (this) {
            case COMBINED_VARIABLE -> new double[] {1, d * d * h};
            case SCHUMACHER_HALL -> new double[] {1, Math.log(d), Math.log(h)};
            case LOG_POLYNOMIAL -> secondDegree(Math.log(d), Math.log(h));
            case HONER -> new double[] {1, 1 / h};
            case FORM_FACTOR -> new double[] {cylinder(tree, units)};
        };
    }

    /** What the predictors explain: V, or a transform of it. */
    double response(FelledTree tree, UnitSystem units) {
        double d = Unit.CENTIMETRE.convert(tree.dbhCm(), units.diameter());
        double v = Unit.CUBIC_METRE.convert(tree.volumeM3(), units.volume());
        return switch (this) {
            case COMBINED_VARIABLE, FORM_FACTOR -> v;
            case SCHUMACHER_HALL, LOG_POLYNOMIAL -> Math.log(v);
            case HONER -> d * d / v;
        };
    }

    /**
     * Volume back from the response, in the volume unit of the fit. The logarithm is corrected for bias by exp(σ²/2)
     * (Baskerville 1972, from memory); the Honer form is not corrected.
     *
     * @param sigma residual standard deviation of the response
     */
    double volume(FelledTree tree, double response, double sigma, UnitSystem units) {
        double d = Unit.CENTIMETRE.convert(tree.dbhCm(), units.diameter());
        return switch (this) {
            case COMBINED_VARIABLE, FORM_FACTOR -> response;
            case SCHUMACHER_HALL, LOG_POLYNOMIAL -> Math.exp(response + sigma * sigma / 2);
            case HONER -> d * d / response;
        };
    }

    /** The form under which a design states the equation; its coefficients are the same. */
    public VolumeForm designForm() {
        return switch (this) {
            case COMBINED_VARIABLE -> VolumeForm.COMBINED_VARIABLE;
            case SCHUMACHER_HALL -> VolumeForm.SCHUMACHER_HALL;
            case LOG_POLYNOMIAL -> VolumeForm.LOG_POLYNOMIAL;
            case HONER -> VolumeForm.HONER;
            case FORM_FACTOR -> VolumeForm.FORM_FACTOR;
        };
    }

    private static double[] secondDegree(double lnD, double lnH) {
        return new double[] {1, lnD, lnH, lnD * lnD, lnH * lnH, lnD * lnH};
    }

    private static double cylinder(FelledTree tree, UnitSystem units) {
        return Unit.CUBIC_METRE.convert(BasalArea.ofTree(tree.dbhCm()) * tree.heightM(), units.volume());
    }
}
