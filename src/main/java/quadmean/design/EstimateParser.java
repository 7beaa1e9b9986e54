package quadmean.design;

import java.util.List;
import quadmean.model.EstimateRules;
import quadmean.model.IntervalRule;
import quadmean.units.UnitSystem;

/** Reads {@code [estimate]}. */
final class EstimateParser {
    private EstimateParser() {}

    static EstimateRules parse(Section root, List<StratumEntry> strata, UnitSystem units) {
        Section s = root.table("estimate");
        EstimateRules rules = new EstimateRules(
                s.choice("interval", Options.of(IntervalRule.values(), IntervalRule::id))
                        .orElse(EstimateRules.STANDARD.interval()),
                (int) s.number("replicates", Range.REPLICATES, EstimateRules.STANDARD.replicates()),
                EstimatorParser.parse(s, strata, units));
        s.close();
        return rules;
    }
}
