package quadmean.design;

import quadmean.model.EstimateRules;
import quadmean.model.IntervalRule;
import quadmean.model.ProductRule;

/** Reads {@code [estimate]}. */
final class EstimateParser {
    private EstimateParser() {}

    static EstimateRules parse(Section root) {
        Section s = root.table("estimate");
        EstimateRules rules = new EstimateRules(
                s.choice("interval", Options.of(IntervalRule.values(), IntervalRule::id))
                        .orElse(EstimateRules.STANDARD.interval()),
                (int) s.number("replicates", Range.REPLICATES, EstimateRules.STANDARD.replicates()),
                s.choice("product_variance", Options.of(ProductRule.values(), ProductRule::id))
                        .orElse(EstimateRules.STANDARD.product()));
        s.close();
        return rules;
    }
}
