package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.PlotsNeeded;
import quadmean.model.RowCount;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

/** The machine-readable result: every number of the report, unrounded. */
public final class EstimateJson {
    /** Version of the layout; it changes when a reader of the old one would go wrong. */
    static final int SCHEMA_VERSION = 1;

    private static final String UNKNOWN_PLOTS = "the number of plots cannot be worked out from these plots";

    private EstimateJson() {}

    /** The result as a JSON document in UTF-8. What cannot be computed is null, with a reason beside it. */
    public static Content of(CruiseResult result) {
        return JsonFile.of(tree(result));
    }

    static ObjectNode tree(CruiseResult result) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("$schema", EstimateSchema.NAME);
        root.put("schemaVersion", SCHEMA_VERSION);
        root.set("design", JsonInputs.design(result));
        root.put("seed", result.design().seed());
        root.put("confidence", result.estimate().confidence());
        root.set("target", target(result));
        root.set("estimates", estimates(ShownRows.of(result)));
        root.set("alternatives", JsonSeries.alternatives(result));
        root.set("otherEstimates", JsonSeries.otherEstimates(result));
        root.set("rows", rows(result.tally().rows()));
        root.put("plots", result.tally().plots().size());
        root.put("trees", result.trees().size());
        root.set("problemsByRule", JsonInputs.problemsByRule(result));
        root.set("problems", JsonInputs.problems(result));
        root.set("heightSources", JsonHeights.sources(result));
        root.put("extrapolatedTrees", Facts.extrapolated(result).size());
        root.set("extrapolated", JsonHeights.extrapolated(result));
        root.set("remeasure", JsonHeights.remeasure(result));
        root.set("curves", JsonCurves.of(result.curves()));
        root.set("equations", JsonEquations.of(result.equations()));
        root.set("wood", JsonWood.of(result));
        root.set("diameterClasses", JsonStructure.diameters(result));
        root.set("standTable", JsonStructure.classes(result));
        root.set("statistics", JsonStructure.statistics(result));
        root.set("errorBudget", JsonBudget.of(result));
        root.set("running", JsonSeries.running(result));
        ArrayNode notes = root.putArray("notes");
        result.estimate().notes().forEach(notes::add);
        return root;
    }

    static ArrayNode estimates(ShownRows shown) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (EstimateRow row : shown.rows()) {
            for (UnitSystem system : UnitSystem.values()) {
                list.add(estimate(shown, row, system));
            }
        }
        return list;
    }

    static ObjectNode estimate(ShownRows shown, EstimateRow row, UnitSystem system) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("stratum", row.stratum());
        node.put("species", row.species());
        node.put("product", row.part().product());
        node.put("log", row.part().place());
        node.put("attribute", row.attribute().id());
        node.put("basis", row.basis().id());
        node.put("unit", Wording.unitSymbol(shown.design(), row.attribute(), row.basis(), system));
        node.put("n", row.n());
        JsonNumbers.put(node, "df", row.df());
        JsonNumbers.put(node, "mean", row.in(system, row.mean()));
        JsonNumbers.put(node, "se", row.in(system, row.se()));
        JsonNumbers.put(node, "cvPercent", row.cvPercent());
        JsonNumbers.put(node, "lower", row.in(system, row.lower()));
        JsonNumbers.put(node, "upper", row.in(system, row.upper()));
        JsonNumbers.put(node, "samplingErrorPercent", row.samplingErrorPercent());
        node.put("interval", shown.design().estimation().interval().id());
        JsonNumbers.putText(node, "equationStanding", shown.standing(row));
        JsonNumbers.putText(node, "reason", row.reason());
        return node;
    }

    static ObjectNode target(CruiseResult result) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("attribute", result.design().targetAttribute().id());
        node.put("targetErrorPercent", result.design().targetErrorPercent());
        ArrayNode list = node.putArray("attributes");
        for (PlotsNeeded needed : result.estimate().needed()) {
            ObjectNode entry = list.addObject();
            entry.put("attribute", needed.attribute().id());
            JsonNumbers.put(entry, "achievedPercent", needed.achievedPercent());
            entry.put("plots", needed.plots());
            JsonNumbers.put(entry, "needed", needed.needed());
            JsonNumbers.put(entry, "more", needed.more());
            entry.put("verdict", needed.verdict().name().toLowerCase(Locale.ROOT));
            if (needed.needed().isEmpty() || Double.isNaN(needed.achievedPercent())) {
                entry.put("reason", unknown(result, needed));
            } else if (!needed.remark().isEmpty()) {
                entry.put("remark", needed.remark());
            }
            entry.set("allocations", JsonPlots.allocations(needed));
        }
        return node;
    }

    /** Why nothing is known of an attribute's error or of the plots it needs. */
    static String unknown(CruiseResult result, PlotsNeeded needed) {
        return rowReason(result, needed.attribute())
                .orElse(needed.remark().isEmpty() ? UNKNOWN_PLOTS : needed.remark());
    }

    /** Why nothing is known of an attribute's error: the reason of the stand's row, or that the target is out of reach. */
    static String reason(CruiseResult result, Attribute attribute) {
        return rowReason(result, attribute).orElse(UNKNOWN_PLOTS);
    }

    private static Optional<String> rowReason(CruiseResult result, Attribute attribute) {
        Basis basis = attribute == Attribute.QUADRATIC_MEAN_DIAMETER ? Basis.RATIO : Basis.TOTAL;
        return result.estimate()
                .row(EstimateRow.ALL, EstimateRow.ALL, attribute, basis)
                .map(EstimateRow::reason)
                .filter(r -> !r.isEmpty());
    }

    static ObjectNode rows(RowCount rows) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("in", rows.in());
        node.put("used", rows.used());
        node.put("dropped", rows.dropped());
        node.put("kept", rows.kept());
        return node;
    }
}
