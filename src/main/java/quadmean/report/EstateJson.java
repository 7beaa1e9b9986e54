package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.estimate.EstateEstimate.Extent;
import quadmean.estimate.EstateSpread;
import quadmean.estimate.EstimateRow;
import quadmean.units.Basis;
import quadmean.units.Unit;

/** {@code estimate.json} of an estate: every number of its report, unrounded. Stands one by one are in {@code stands.csv}. */
final class EstateJson {
    /** Version of the layout; it changes when a reader of the old one would go wrong. */
    static final int SCHEMA_VERSION = 1;

    private EstateJson() {}

    static Content of(EstateResult result, EstateSpread spread) {
        return out -> JsonFile.of(tree(result, spread)).writeTo(out);
    }

    static ObjectNode tree(EstateResult result, EstateSpread spread) {
        Design design = result.design();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("$schema", EstimateSchema.ESTATE);
        root.put("schemaVersion", SCHEMA_VERSION);
        root.set("design", design(design));
        root.put("seed", design.seed());
        root.put("confidence", result.estimate().confidence());
        root.set("target", target(result));
        root.set("estimates", EstimateJson.estimates(ShownRows.of(result)));
        ArrayNode files = root.putArray("files");
        result.files().forEach(files::add);
        root.set("rows", EstimateJson.rows(result.rows()));
        root.set("problemsByRule", problems(result));
        root.set("extent", extent(result.estimate().stands()));
        ArrayNode strata = root.putArray("strata");
        result.estimate().strata().forEach(s -> {
            ObjectNode node = strata.addObject();
            node.put("code", s.code());
            node.setAll(extent(s.extent()));
        });
        root.set("stands", JsonStands.of(result, spread));
        root.set("curves", JsonEstateCurves.of(result));
        root.set("equations", JsonEquations.of(result.used().volumes()));
        ArrayNode notes = root.putArray("notes");
        result.estimate().notes().forEach(notes::add);
        result.notes().forEach(notes::add);
        return root;
    }

    private static ObjectNode design(Design design) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("name", design.name());
        node.put("file", JsonInputs.fileName(design));
        node.put("sha256", design.sha256());
        node.put("units", design.units().id());
        node.put("date", design.date());
        node.put("finitePopulation", design.finitePopulation().id());
        node.put("degreesRule", design.degreesRule().id());
        node.put("onePlot", design.estate().map(e -> e.onePlot().id()).orElseThrow());
        node.set("plot", JsonInputs.plot(design.plot()));
        node.put("breastHeight", design.height().breastHeight());
        node.put("breastHeightUnit", design.units().length().symbol());
        node.put("offCurve", design.height().offCurve());
        return node;
    }

    static ObjectNode target(EstateResult result) {
        Design design = result.design();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("attribute", design.targetAttribute().id());
        node.put("targetErrorPercent", design.targetErrorPercent());
        EstimateRow row = result.estimate()
                .row(EstimateRow.ALL, EstimateRow.ALL, design.targetAttribute(), Basis.TOTAL)
                .orElseThrow();
        JsonNumbers.put(node, "achievedPercent", row.samplingErrorPercent());
        node.put(
                "verdict",
                result.estimate()
                        .verdict(design.targetAttribute(), design.targetErrorPercent())
                        .name()
                        .toLowerCase(Locale.ROOT));
        JsonNumbers.putText(node, "reason", row.reason());
        return node;
    }

    private static ArrayNode problems(EstateResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        result.problems()
                .forEach((rule, policies) -> policies.forEach((policy, count) -> {
                    ObjectNode node = list.addObject();
                    node.put("rule", rule.code());
                    node.put("says", rule.sentence());
                    node.put("policy", policy.id());
                    node.put("count", count);
                }));
        return list;
    }

    static ObjectNode extent(Extent extent) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("stands", extent.stands());
        node.put("areaHa", extent.areaHa());
        node.put("areaAc", Unit.HECTARE.convert(extent.areaHa(), Unit.ACRE));
        node.put("plots", extent.plots());
        node.put("onePlot", extent.onePlot());
        node.put("withoutPlots", extent.withoutPlots());
        node.put("areaWithoutPlotsHa", extent.areaWithoutHa());
        node.put("areaWithoutPlotsAc", Unit.HECTARE.convert(extent.areaWithoutHa(), Unit.ACRE));
        return node;
    }
}
