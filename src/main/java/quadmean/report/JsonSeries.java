package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.estimate.OtherEstimate;
import quadmean.estimate.OtherVariance;
import quadmean.estimate.RunningMean;
import quadmean.model.Estimator;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The part of {@code estimate.json} behind the charts. */
final class JsonSeries {
    private JsonSeries() {}

    /** The target attribute as plots came in, in both unit systems. */
    static ArrayNode running(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (RunningMean m : result.estimate().running()) {
            ObjectNode node = list.addObject();
            node.put("plots", m.plots());
            node.put("plot", m.plot());
            for (UnitSystem system : UnitSystem.values()) {
                values(node.putObject(system.id()), result.design(), m, system);
            }
        }
        return list;
    }

    /** The stand's error by every variance of the estimator, in both unit systems. */
    static ArrayNode alternatives(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (OtherVariance v : result.estimate().alternatives()) {
            for (UnitSystem system : UnitSystem.values()) {
                Unit unit = v.attribute().unit(Basis.PER_AREA, system);
                ObjectNode node = list.addObject();
                node.put("attribute", v.attribute().id());
                node.put("basis", Basis.PER_AREA.id());
                node.put("variance", v.variance().id());
                node.put(
                        "inUse",
                        v.variance()
                                == result.design().estimation().estimation().variance());
                node.put("unit", unit.symbol());
                JsonNumbers.put(node, "df", v.df());
                JsonNumbers.put(
                        node,
                        "se",
                        v.attribute().unit(Basis.PER_AREA, UnitSystem.METRIC).convert(v.se(), unit));
                JsonNumbers.put(node, "samplingErrorPercent", v.samplingErrorPercent());
                JsonNumbers.putText(node, "reason", v.reason());
            }
        }
        return list;
    }

    /** Both estimates of 3P sampling, the one in use first, in both unit systems. */
    static ArrayNode otherEstimates(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (OtherEstimate e : result.estimate().otherEstimates()) {
            for (UnitSystem system : UnitSystem.values()) {
                Unit unit = e.attribute().unit(Basis.PER_AREA, system);
                Unit metric = e.attribute().unit(Basis.PER_AREA, UnitSystem.METRIC);
                ObjectNode node = list.addObject();
                node.put("attribute", e.attribute().id());
                node.put("basis", Basis.PER_AREA.id());
                node.put("estimator", e.estimator().id());
                node.put("unit", unit.symbol());
                JsonNumbers.put(node, "mean", metric.convert(e.mean().mean(), unit));
                JsonNumbers.put(node, "se", metric.convert(e.mean().se(), unit));
                JsonNumbers.put(node, "df", e.mean().df());
                JsonNumbers.put(
                        node,
                        "samplingErrorPercent",
                        e.mean().samplingErrorPercent(result.estimate().confidence()));
            }
        }
        return list;
    }

    private static void values(ObjectNode node, Design design, RunningMean m, UnitSystem system) {
        Attribute attribute = design.targetAttribute();
        Unit from = attribute.unit(Wording.comparable(attribute), UnitSystem.METRIC);
        Unit to = attribute.unit(Wording.comparable(attribute), system);
        node.put("unit", to.symbol());
        JsonNumbers.put(node, "mean", from.convert(m.mean(), to));
        JsonNumbers.put(node, "lower", from.convert(m.lower(), to));
        JsonNumbers.put(node, "upper", from.convert(m.upper(), to));
        boolean isMean = design.estimation().estimation().estimator() == Estimator.MEAN;
        if (Double.isNaN(m.mean())) {
            node.put(
                    "reason",
                    isMean ? "a stratum has no plot yet" : "a stratum has too few plots yet for this estimator");
        } else if (Double.isNaN(m.lower())) {
            node.put(
                    "reason",
                    isMean ? "a stratum has fewer than two plots yet" : "too few plots yet for a standard error");
        }
    }
}
