package quadmean.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import quadmean.model.Estimator;
import quadmean.model.EstimatorRules;
import quadmean.model.OnePlotRule;
import quadmean.model.Rule;
import quadmean.model.VarianceForm;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads from {@code [estimate]} how plots become estimates. */
final class EstimatorParser {
    private EstimatorParser() {}

    static EstimatorRules parse(Section s, List<StratumEntry> strata, UnitSystem units) {
        Estimator estimator = s.choice("estimator", Options.of(Estimator.values(), Estimator::id))
                .orElse(Estimator.MEAN);
        EstimatorRules rules = EstimatorRules.of(estimator)
                .withAuxiliaryMeans(byStratum(s, "auxiliary_mean", strata, Range.FINITE))
                .withClusters(byStratum(s, "clusters_in_stand", strata, Range.TWO_OR_MORE_WHOLE))
                .withGroupAreas(groups(s, units))
                .with(s.choice("one_plot", Options.of(OnePlotRule.values(), OnePlotRule::id))
                        .orElse(OnePlotRule.NO_ERROR));
        return variance(s, estimator).map(rules::with).orElse(rules);
    }

    /** The variance that is asked for; one of another estimator is noted. */
    private static Optional<VarianceForm> variance(Section s, Estimator estimator) {
        Optional<VarianceForm> asked = s.choice("variance", Options.of(VarianceForm.values(), VarianceForm::id));
        if (asked.isEmpty() || estimator.variances().contains(asked.get())) {
            return asked;
        }
        List<String> own = estimator.variances().stream().map(VarianceForm::id).toList();
        s.problem(
                Rule.DESIGN_VALUE,
                "variance",
                asked.get().id(),
                "\"" + asked.get().id() + "\" is a variance of estimator = \""
                        + asked.get().estimator().id() + "\"; with \"" + estimator.id() + "\" "
                        + (own.isEmpty()
                                ? "there is one variance only: take the line out"
                                : "write one of " + String.join(", ", own)));
        return Optional.empty();
    }

    /** A number for the only stratum, or a table with one for each. */
    static Map<String, Double> byStratum(Section s, String key, List<StratumEntry> strata, Range range) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        if (!s.has(key)) {
            return numbers;
        }
        Stream<String> codes = strata.stream().map(e -> e.stratum().code());
        if (s.isTable(key)) {
            Section table = s.table(key);
            codes.forEach(c -> numbers.put(c, table.requiredNumber(c, range)));
            table.close();
        } else if (strata.size() == 1) {
            codes.forEach(c -> numbers.put(c, s.number(key, range, 1)));
        } else {
            s.problem(
                    Rule.DESIGN_TYPE,
                    key,
                    "",
                    "with strata each has its own: write " + key + " = { " + String.join(" = ..., ", codes.toList())
                            + " = ... }");
        }
        return numbers;
    }

    private static Map<String, Double> groups(Section s, UnitSystem units) {
        Map<String, Double> areas = new LinkedHashMap<>();
        for (Section g : s.tableList("post_stratum")) {
            String code = g.requiredText("code");
            double area = g.requiredNumber("area", Range.POSITIVE);
            if (areas.putIfAbsent(code, units.area().convert(area, Unit.HECTARE)) != null) {
                g.problem(Rule.DESIGN_VALUE, "code", code, "two post-strata have this code");
            }
            g.close();
        }
        return areas;
    }
}
