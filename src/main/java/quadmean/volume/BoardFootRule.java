package quadmean.volume;

import java.util.List;
import quadmean.model.LogRule;
import quadmean.model.Scaling.Figures;

/** A log rule: board feet from the small-end diameter inside bark (in) and the length (ft). */
public sealed interface BoardFootRule permits FormulaRule, DecimalC {
    /** The rule of this name. */
    static BoardFootRule of(LogRule rule) {
        return switch (rule) {
            case DOYLE -> FormulaRule.DOYLE;
            case SCRIBNER_FORMULA -> FormulaRule.SCRIBNER;
            case SCRIBNER_REGRESSION -> FormulaRule.SCRIBNER_REGRESSION;
            case SCRIBNER_DECIMAL_C -> DecimalC.table();
            case INTERNATIONAL_QUARTER -> FormulaRule.INTERNATIONAL_QUARTER;
            case INTERNATIONAL_EIGHTH -> FormulaRule.INTERNATIONAL_EIGHTH;
        };
    }

    /**
     * Board feet of a log in one piece.
     *
     * @param inches small-end diameter inside bark (in), zero or more
     * @param feet length (ft), zero or more
     * @param figures whether the volume is rounded as the rule's tables are
     * @throws IllegalArgumentException if a size is out of its domain
     */
    RuleFigure figure(double inches, double feet, Figures figures);

    /** The rule in words, with what is known of its source. */
    List<String> statement();

    /** The step that volumes are rounded to, in words. */
    String rounding();
}
