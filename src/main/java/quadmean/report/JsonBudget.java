package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.ErrorBudget;
import quadmean.cruise.ErrorPart;
import quadmean.cruise.Remedy;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Error budgets, per hectare in metric units; relative ones in percent of the estimate. */
final class JsonBudget {
    private JsonBudget() {}

    static ArrayNode of(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (ErrorBudget budget : result.budgets()) {
            budget(list.addObject(), budget, result);
        }
        return list;
    }

    private static void budget(ObjectNode node, ErrorBudget budget, CruiseResult result) {
        Unit unit = budget.attribute().unit(Basis.PER_AREA, UnitSystem.METRIC);
        node.put("attribute", budget.attribute().id());
        node.put("unit", unit.symbol());
        node.put("method", result.design().estimation().errors().budget().id());
        JsonNumbers.put(node, "mean", budget.sampling().mean());
        JsonNumbers.put(node, "totalSe", budget.totalSe());
        JsonNumbers.put(node, "totalSePercent", percent(budget, budget.totalSe()));
        JsonNumbers.put(
                node,
                "samplingErrorPercent",
                budget.sampling().samplingErrorPercent(result.estimate().confidence()));
        JsonNumbers.put(node, "df", budget.df());
        JsonNumbers.put(node, "totalErrorPercent", budget.totalErrorPercent());
        node.put("best", budget.best().map(r -> id(r.name())).orElse(""));
        node.put("advice", budget.advice());
        node.put("units", budget.units());
        node.put("offsets", budget.offsets());
        ObjectNode gains = node.putObject("shareOfVarianceTakenOff");
        for (Remedy remedy : Remedy.values()) {
            JsonNumbers.put(gains, id(remedy.name()), budget.gain(remedy));
        }
        ArrayNode parts = node.putArray("parts");
        for (ErrorPart part : budget.parts()) {
            ObjectNode entry = parts.addObject();
            entry.put("name", id(part.source().name()));
            entry.put("kind", id(part.kind().name()));
            JsonNumbers.put(entry, "se", part.se());
            JsonNumbers.put(entry, "sePercent", percent(budget, part.se()));
            JsonNumbers.put(entry, "variance", part.variance());
            JsonNumbers.put(entry, "shareOfTotalVariance", budget.share(part));
            entry.put("words", part.words());
        }
    }

    /** A standard error in percent of the estimate. */
    static double percent(ErrorBudget budget, double se) {
        return 100 * se / budget.sampling().mean();
    }

    private static String id(String constant) {
        return constant.toLowerCase(Locale.ROOT);
    }
}
