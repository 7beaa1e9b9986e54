package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.cruise.CruiseResult;
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
}
