package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.Remeasure;
import quadmean.height.CurveFit;
import quadmean.height.HeightCurve;
import quadmean.height.HeightedTree;
import quadmean.height.SpeciesCurve;
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

    static ArrayNode curves(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (SpeciesCurve search : Facts.searches(result)) {
            ObjectNode node = list.addObject();
            node.put("species", search.species());
            node.put("heights", search.heights());
            HeightCurve chosen = search.chosen();
            if (chosen == null) {
                node.putNull("chosen");
            } else {
                putCurve(node.putObject("chosen"), chosen);
            }
            node.put("reason", search.reason());
            ArrayNode fits = node.putArray("fits");
            for (CurveFit tried : search.fits()) {
                ObjectNode fit = fits.addObject();
                fit.put("form", tried.form().id());
                fit.put("status", tried.status().label());
                JsonNumbers.putFit(fit, tried.fit());
                JsonNumbers.putText(fit, "remark", tried.remark());
                fit.put("isChosen", Facts.isChosen(search, tried));
            }
        }
        return list;
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
        }
        return list;
    }

    private static void putCurve(ObjectNode node, HeightCurve curve) {
        node.put("curveOf", curve.species());
        node.put("form", curve.form().id());
        node.put("formula", curve.form().formula());
        JsonNumbers.putParameters(node.putObject("parameters"), curve.parameters());
        node.put("units", curve.units().id());
        node.put("breastHeight", curve.breastHeight());
        node.put("heights", curve.heights());
        node.put("minDbhCm", curve.minDbhCm());
        node.put("maxDbhCm", curve.maxDbhCm());
        node.put("minDbhIn", Unit.CENTIMETRE.convert(curve.minDbhCm(), Unit.INCH));
        node.put("maxDbhIn", Unit.CENTIMETRE.convert(curve.maxDbhCm(), Unit.INCH));
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
            JsonNumbers.put(node, "heightM", r.tree().heightM());
            JsonNumbers.put(node, "doubtM", r.doubtM());
            JsonNumbers.put(node, "effectM3", r.effectM3());
            JsonNumbers.put(node, "effectPercent", r.effectPercent());
            ArrayNode why = node.putArray("why");
            r.problems().forEach(why::add);
            r.remarks().forEach(why::add);
        }
        return list;
    }
}
