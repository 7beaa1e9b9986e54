package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import quadmean.cruise.EstateResult;
import quadmean.model.FillingCurve;
import quadmean.units.Unit;

/** The part of an estate's {@code estimate.json} about the height curves of its regions. */
final class JsonEstateCurves {
    private JsonEstateCurves() {}

    static ObjectNode of(EstateResult result) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("origin", result.fitted().name().toLowerCase(Locale.ROOT));
        ArrayNode list = node.putArray("curves");
        result.curves().forEach((region, curves) -> curves.curves().forEach(c -> list.add(curve(region, c))));
        return node;
    }

    private static ObjectNode curve(String region, FillingCurve c) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("region", region);
        node.put("species", c.species());
        node.put("source", c.source().id());
        node.put("form", c.form().id());
        node.put("formula", c.form().formula());
        JsonNumbers.putParameters(node.putObject("parameters"), c.parameters());
        node.put("units", c.units().id());
        JsonNumbers.put(node, "breastHeight", c.breastHeight());
        JsonNumbers.put(node, "ratio", c.ratio());
        node.put("heights", c.heights());
        JsonNumbers.put(node, "scatterM", c.scatterM());
        JsonNumbers.put(node, "scatterFt", Unit.METRE.convert(c.scatterM(), Unit.FOOT));
        JsonNumbers.put(node, "minDbhCm", c.minDbhCm());
        JsonNumbers.put(node, "maxDbhCm", c.maxDbhCm());
        JsonNumbers.put(node, "minDbhIn", Unit.CENTIMETRE.convert(c.minDbhCm(), Unit.INCH));
        JsonNumbers.put(node, "maxDbhIn", Unit.CENTIMETRE.convert(c.maxDbhCm(), Unit.INCH));
        boolean isKnown = Double.isFinite(c.scatterM()) && Double.isFinite(c.minDbhCm());
        JsonNumbers.putText(node, "reason", isKnown ? "" : "the file of curves does not say");
        return node;
    }
}
