package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.Remeasure;
import quadmean.height.HeightedTree;
import quadmean.units.Unit;

/** The part of {@code estimate.json} about heights. */
final class JsonHeights {
    /** More extrapolated trees than this are not listed on the page or here. */
    static final int MOST_TREES = 200;

    private JsonHeights() {}

    static ObjectNode sources(CruiseResult result) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        Facts.heightSources(result).forEach((source, count) -> node.put(source.id(), count));
        return node;
    }

    /** The first trees whose heights are extrapolated; {@code trees.csv} has them all. */
    static ArrayNode extrapolated(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (HeightedTree t :
                Facts.extrapolated(result).stream().limit(MOST_TREES).toList()) {
            ObjectNode node = list.addObject();
            node.put("tree", t.tree().label());
            node.put("species", t.tree().species());
            node.put("dbhCm", t.tree().dbhCm());
            node.put("dbhIn", Unit.CENTIMETRE.convert(t.tree().dbhCm(), Unit.INCH));
            JsonNumbers.put(node, "heightM", t.heightM());
            JsonNumbers.put(node, "heightFt", Unit.METRE.convert(t.heightM(), Unit.FOOT));
            JsonNumbers.put(node, "standardErrorM", t.standardErrorM());
        }
        return list;
    }

    /** Trees worth measuring again, most harmful first. */
    static ArrayNode remeasure(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (Remeasure r : result.remeasure()) {
            ObjectNode node = list.addObject();
            node.put("plot", r.tree().tree().plot());
            node.put("number", r.tree().tree().number());
            node.put("species", r.tree().tree().species());
            JsonNumbers.put(node, "dbhCm", r.tree().tree().dbhCm());
            JsonNumbers.put(
                    node, "dbhIn", Unit.CENTIMETRE.convert(r.tree().tree().dbhCm(), Unit.INCH));
            JsonNumbers.put(node, "heightM", r.tree().heightM());
            JsonNumbers.put(node, "heightFt", Unit.METRE.convert(r.tree().heightM(), Unit.FOOT));
            JsonNumbers.put(node, "doubtM", r.doubtM());
            JsonNumbers.put(node, "doubtFt", Unit.METRE.convert(r.doubtM(), Unit.FOOT));
            JsonNumbers.put(node, "effectM3", r.effectM3());
            JsonNumbers.put(node, "effectFt3", Unit.CUBIC_METRE.convert(r.effectM3(), Unit.CUBIC_FOOT));
            JsonNumbers.put(node, "effectPercent", r.effectPercent());
            ArrayNode why = node.putArray("why");
            r.problems().forEach(why::add);
            r.remarks().forEach(why::add);
        }
        return list;
    }
}
