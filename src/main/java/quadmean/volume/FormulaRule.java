package quadmean.volume;

import java.util.List;
import java.util.Locale;
import quadmean.model.LogRule;
import quadmean.model.Scaling.Figures;
import quadmean.model.Standing;

/** Log rules that are formulas of D, the small-end diameter inside bark (in), and L, the length (ft). */
enum FormulaRule implements BoardFootRule {
    DOYLE(
            LogRule.DOYLE,
            1,
            "V = ((D - 4)/4)²·L, nothing for 4 in and less",
            Standing.VERIFIED,
            "agrees with a printed table"),
    SCRIBNER(
            LogRule.SCRIBNER_FORMULA,
            1,
            "V = (0.79·D² - 2·D - 4)·L/16",
            Standing.VERIFIED,
            "formula seen in print; Bruce & Schumacher as its origin from memory"),
    SCRIBNER_REGRESSION(
            LogRule.SCRIBNER_REGRESSION,
            1,
            "V = 0.0494·D²·L - 0.124·D·L - 0.269·L",
            Standing.FROM_MEMORY,
            "Bruce 1925, from memory"),
    INTERNATIONAL_QUARTER(
            LogRule.INTERNATIONAL_QUARTER,
            5,
            "sum over sections of 4 ft of 0.904762·(0.22·D² - 0.71·D), D 1/2 in larger from one section to the next"
                    + " towards the butt, and of a last section under 4 ft its share",
            Standing.VERIFIED,
            "formula and taper as in Michigan Compiled Laws 290.401; the share of a last section is ours"),
    INTERNATIONAL_EIGHTH(
            LogRule.INTERNATIONAL_EIGHTH,
            5,
            "sum over sections of 4 ft of 0.22·D² - 0.71·D, D 1/2 in larger from one section to the next"
                    + " towards the butt, and of a last section under 4 ft its share",
            Standing.VERIFIED,
            "as the 1/4-inch rule of Michigan Compiled Laws 290.401, without its factor for the wider saw cut");

    private static final double QUARTER_OF_EIGHTH = 0.904762;
    private static final double SECTION_FT = 4;
    private static final double TAPER_IN = 0.5;

    private final LogRule rule;
    private final double tableStep;
    private final String formula;
    private final Standing standing;
    private final String source;

    FormulaRule(LogRule rule, double tableStep, String formula, Standing standing, String source) {
        this.rule = rule;
        this.tableStep = tableStep;
        this.formula = formula;
        this.standing = standing;
        this.source = source;
    }

    @Override
    public RuleFigure figure(double inches, double feet, Figures figures) {
        double volume = Math.max(0, volume(Sizes.notNegative(inches, "diameter (in)"), Sizes.logFeet(feet)));
        double figure = figures == Figures.AS_TABLED ? Steps.nearest(volume, tableStep) : volume;
        return new RuleFigure(figure, Coverage.FORMULA, standing);
    }

    /** The formula. */
    String formula() {
        return formula;
    }

    @Override
    public List<String> statement() {
        return List.of(String.format(
                Locale.ROOT,
                "Board feet by the log rule %s: %s; D small-end diameter inside bark (in), L length (ft); never less"
                        + " than nothing (%s).",
                rule.label(),
                formula,
                source));
    }

    @Override
    public String rounding() {
        return tableStep == 1
                ? "to whole board feet, halves up"
                : String.format(Locale.ROOT, "to the nearest %.0f board feet", tableStep);
    }

    private double volume(double d, double l) {
        return switch (this) {
            case DOYLE -> d > 4 ? (d - 4) / 4 * ((d - 4) / 4) * l : 0;
            case SCRIBNER -> (0.79 * d * d - 2 * d - 4) * l / 16;
            case SCRIBNER_REGRESSION -> 0.0494 * d * d * l - 0.124 * d * l - 0.269 * l;
            case INTERNATIONAL_QUARTER -> QUARTER_OF_EIGHTH * internationalEighth(d, l);
            case INTERNATIONAL_EIGHTH -> internationalEighth(d, l);
        };
    }

    private static double internationalEighth(double d, double l) {
        double sum = 0;
        double sectionD = d;
        for (double left = l; left > 0; left -= SECTION_FT) {
            double section = 0.22 * sectionD * sectionD - 0.71 * sectionD;
            sum += Math.max(0, section) * Math.min(1, left / SECTION_FT);
            sectionD += TAPER_IN;
        }
        return sum;
    }
}
