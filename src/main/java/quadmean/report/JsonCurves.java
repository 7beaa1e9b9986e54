package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import quadmean.height.CurveFit;
import quadmean.height.CurveTable;
import quadmean.height.HeightCurve;
import quadmean.height.PlotCalibration;
import quadmean.height.SpeciesCurve;
import quadmean.units.Unit;

/** Height curves as JSON: what was tried, what is in use and why. */
final class JsonCurves {
    private JsonCurves() {}

    static ArrayNode of(CurveTable curves) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (SpeciesCurve search : curves.searches()) {
            ObjectNode node = list.addObject();
            node.put("species", search.species());
            node.put("scope", search.scope().name().toLowerCase(Locale.ROOT));
            node.put("heights", search.heights());
            HeightCurve chosen = search.chosen();
            if (chosen == null) {
                node.putNull("chosen");
            } else {
                putCurve(node.putObject("chosen"), chosen);
            }
            node.put("reason", search.reason());
            PlotCalibration calibration = search.calibration();
            if (calibration != null) {
                putCalibration(node.putObject("calibration"), calibration);
            }
            ArrayNode fits = node.putArray("fits");
            search.fits().forEach(tried -> putFit(fits.addObject(), search, tried));
        }
        return list;
    }

    private static void putFit(ObjectNode node, SpeciesCurve search, CurveFit tried) {
        node.put("form", tried.form().id());
        node.put("source", tried.form().source());
        node.put("status", tried.status().label());
        JsonNumbers.putFit(node, tried.fit());
        if (tried.fit() != null) {
            JsonNumbers.put(node, "aicc", tried.aicc());
            JsonNumbers.put(node, "leaveOneOutError", tried.leaveOneOutError());
            JsonNumbers.put(node, "scatterPowerOfDbh", tried.scatter().power());
        }
        JsonNumbers.putText(node, "remark", tried.remark());
        node.put("isChosen", Facts.isChosen(search, tried));
    }

    private static void putCalibration(ObjectNode node, PlotCalibration c) {
        node.put("linearForm", c.line().form().id());
        node.put("correctionOfBias", c.line().correction());
        node.put("outcome", c.outcome().words());
        JsonNumbers.put(node, "heldOutErrorCalibrated", c.errorWith());
        JsonNumbers.put(node, "leaveOneOutErrorWithout", c.errorWithout());
        JsonNumbers.putParameters(node.putObject("fixed"), c.model().fixed());
        JsonNumbers.put(node, "sdPlot", Math.sqrt(c.model().groupVariance()));
        JsonNumbers.put(node, "sdResidual", Math.sqrt(c.model().residualVariance()));
        JsonNumbers.put(node, "restrictedLogLikelihood", c.model().logLikelihood());
        ObjectNode effects = node.putObject("plotEffects");
        c.plots().forEach((plot, measured) -> JsonNumbers.put(effects, plot, c.effect(plot)));
    }

    private static void putCurve(ObjectNode node, HeightCurve curve) {
        node.put("curveOf", curve.species());
        node.put("scope", curve.scope().name().toLowerCase(Locale.ROOT));
        node.put("form", curve.form().id());
        node.put("formula", curve.form().formula());
        JsonNumbers.putParameters(node.putObject("parameters"), curve.parameters());
        if (curve.ratio().heights() > 0) {
            ObjectNode ratio = node.putObject("speciesRatio");
            JsonNumbers.put(ratio, "value", curve.ratio().value());
            JsonNumbers.put(ratio, "standardError", curve.ratio().se());
            ratio.put("heights", curve.ratio().heights());
        }
        node.put("units", curve.units().id());
        node.put("breastHeight", curve.breastHeight());
        node.put("heights", curve.heights());
        node.put("minDbhCm", curve.minDbhCm());
        node.put("maxDbhCm", curve.maxDbhCm());
        node.put("minDbhIn", Unit.CENTIMETRE.convert(curve.minDbhCm(), Unit.INCH));
        node.put("maxDbhIn", Unit.CENTIMETRE.convert(curve.maxDbhCm(), Unit.INCH));
    }
}
