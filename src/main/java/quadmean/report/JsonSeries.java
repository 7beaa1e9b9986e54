package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.RunningMean;
import quadmean.units.Attribute;
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
                values(node.putObject(system.id()), result.design().targetAttribute(), m, system);
            }
        }
        return list;
    }

    private static void values(ObjectNode node, Attribute attribute, RunningMean m, UnitSystem system) {
        Unit from = attribute.unit(Wording.comparable(attribute), UnitSystem.METRIC);
        Unit to = attribute.unit(Wording.comparable(attribute), system);
        node.put("unit", to.symbol());
        JsonNumbers.put(node, "mean", from.convert(m.mean(), to));
        JsonNumbers.put(node, "lower", from.convert(m.lower(), to));
        JsonNumbers.put(node, "upper", from.convert(m.upper(), to));
        if (Double.isNaN(m.mean())) {
            node.put("reason", "a stratum has no plot yet");
        } else if (Double.isNaN(m.lower())) {
            node.put("reason", "a stratum has fewer than two plots yet");
        }
    }
}
