package quadmean.design;

import java.util.List;
import java.util.OptionalDouble;
import quadmean.model.BudgetRule;
import quadmean.model.ErrorRules;
import quadmean.model.EstimateRules;
import quadmean.model.IntervalRule;
import quadmean.model.ProductRule;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [estimate]} and {@code [errors]}. */
final class EstimateParser {
    private EstimateParser() {}

    static EstimateRules parse(Section root, List<StratumEntry> strata, UnitSystem units) {
        Section s = root.table("estimate");
        EstimateRules rules = new EstimateRules(
                s.choice("interval", Options.of(IntervalRule.values(), IntervalRule::id))
                        .orElse(EstimateRules.STANDARD.interval()),
                (int) s.number("replicates", Range.REPLICATES, EstimateRules.STANDARD.replicates()),
                EstimatorParser.parse(s, strata, units),
                errors(s, root.table("errors"), units),
                s.choice("product_variance", Options.of(ProductRule.values(), ProductRule::id))
                        .orElse(EstimateRules.STANDARD.product()));
        s.close();
        return rules;
    }

    private static ErrorRules errors(Section estimate, Section s, UnitSystem units) {
        OptionalDouble dbh = s.number("dbh_sd", Range.NOT_NEGATIVE);
        ErrorRules errors = new ErrorRules(
                estimate.choice("budget", Options.of(BudgetRule.values(), BudgetRule::id))
                        .orElse(ErrorRules.STANDARD.budget()),
                dbh.isPresent()
                        ? units.diameter().convert(dbh.getAsDouble(), Unit.CENTIMETRE)
                        : ErrorRules.COMMON_DBH_SD_CM,
                s.number("height_sd", Range.PERCENT_OR_ZERO, Double.NaN),
                s.number("height_bias_sd", Range.PERCENT_OR_ZERO, Double.NaN),
                s.number("dbh_bias_sd", Range.PERCENT_OR_ZERO, Double.NaN),
                s.number("equation_sd", Range.PERCENT_OR_ZERO, Double.NaN));
        s.close();
        return errors;
    }
}
