package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.design.StratumEntry;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.VarianceForm;
import quadmean.units.Unit;

/** The part of {@code estimate.json} about what went in: design, equations, problems. */
final class JsonInputs {
    /** More problems than this are not listed on the page or here; {@code problems.csv} has them all. */
    static final int MOST_PROBLEMS = 200;

    private JsonInputs() {}

    static ObjectNode design(CruiseResult result) {
        Design design = result.design();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("name", design.name());
        node.put("file", fileName(design));
        node.put("sha256", design.sha256());
        node.put("units", design.units().id());
        node.put("date", design.date());
        node.put("areaHa", design.areaHa());
        node.put("areaAc", Unit.HECTARE.convert(design.areaHa(), Unit.ACRE));
        node.put("selection", design.selection().id());
        node.put("estimator", design.estimation().estimation().estimator().id());
        VarianceForm variance = design.estimation().estimation().variance();
        JsonNumbers.putText(node, "variance", variance == null ? "" : variance.id());
        node.put("finitePopulation", design.finitePopulation().id());
        node.put("degreesRule", design.degreesRule().id());
        node.set("plot", plot(design.plot()));
        node.put("boundary", design.plotRules().boundary().id());
        node.put("breastHeight", design.height().breastHeight());
        node.put("breastHeightUnit", design.units().length().symbol());
        node.put("minHeights", design.height().minHeights());
        node.put("offCurve", design.height().offCurve());
        node.put("diameterClassCm", design.diameterClassCm());
        node.put("diameterClassIn", Unit.CENTIMETRE.convert(design.diameterClassCm(), Unit.INCH));
        ArrayNode strata = node.putArray("strata");
        for (StratumEntry entry : design.strata()) {
            ObjectNode stratum = strata.addObject();
            stratum.put("code", entry.stratum().code());
            stratum.put("name", entry.stratum().name());
            stratum.put("areaHa", entry.stratum().areaHa());
            stratum.put("areaAc", Unit.HECTARE.convert(entry.stratum().areaHa(), Unit.ACRE));
            stratum.put("plots", Facts.plots(result, entry.stratum().code()));
        }
        return node;
    }

    /** Name of the design file without the folders it lies in. */
    static String fileName(Design design) {
        return String.valueOf(design.file().getFileName());
    }

    static ObjectNode plot(PlotDesign plot) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (plot instanceof PlotDesign.Point point) {
            node.put("kind", "point");
            node.put("basalAreaFactorM2PerHa", point.basalAreaFactor());
            node.put(
                    "basalAreaFactorFt2PerAc",
                    Unit.SQUARE_METRES_PER_HECTARE.convert(point.basalAreaFactor(), Unit.SQUARE_FEET_PER_ACRE));
            node.put("sweep", point.sweep().id());
            measuring(node, point.measuring());
        } else if (plot instanceof PlotDesign.Strip strip) {
            node.put("kind", "strip");
            node.put("widthM", strip.widthM());
            node.put("lengthM", strip.lengthM());
            putArea(node, strip.areaHa());
        } else if (plot instanceof PlotDesign.Complete complete) {
            node.put("kind", "complete");
            measuring(node, complete.measuring());
        } else if (plot instanceof PlotDesign.Fixed fixed) {
            node.put("kind", "fixed");
            putArea(node, fixed.areaHa());
        } else if (plot instanceof PlotDesign.Nested nested) {
            node.put("kind", "nested");
            ArrayNode rings = node.putArray("rings");
            for (PlotDesign.Ring ring : nested.rings()) {
                ObjectNode entry = rings.addObject();
                entry.put("minDbhCm", ring.minDbhCm());
                entry.put("minDbhIn", Unit.CENTIMETRE.convert(ring.minDbhCm(), Unit.INCH));
                putArea(entry, ring.areaHa());
            }
        }
        return node;
    }

    private static void measuring(ObjectNode node, Measuring measuring) {
        if (measuring instanceof Measuring.SomePoints) {
            node.put("measured", "some_points");
        } else if (measuring instanceof Measuring.LargerFactor larger) {
            node.put("measured", "larger_factor");
            node.put("measureFactorM2PerHa", larger.basalAreaFactor());
        } else if (measuring instanceof Measuring.ThreeP threeP) {
            node.put("measured", "threep");
            node.put("limit", threeP.limit());
            node.put("estimator", threeP.estimator().id());
        } else {
            node.put("measured", "all");
        }
    }

    private static void putArea(ObjectNode node, double areaHa) {
        node.put("areaHa", areaHa);
        node.put("areaAc", Unit.HECTARE.convert(areaHa, Unit.ACRE));
    }

    static ArrayNode problemsByRule(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (Map.Entry<Rule, Long> entry : Facts.problemsByRule(result).entrySet()) {
            ObjectNode node = list.addObject();
            node.put("rule", entry.getKey().code());
            node.put("says", entry.getKey().sentence());
            node.put("count", entry.getValue());
        }
        return list;
    }

    /** The first problems; all of them are in {@code problems.csv}. */
    static ArrayNode problems(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (Problem p : result.tally().problems().stream().limit(MOST_PROBLEMS).toList()) {
            ObjectNode node = list.addObject();
            node.put("file", p.file());
            node.put("row", p.row());
            node.put("column", p.column());
            node.put("value", p.value());
            node.put("rule", p.rule().code());
            node.put("policy", p.policy().id());
            node.put("problem", p.detail());
        }
        return list;
    }
}
