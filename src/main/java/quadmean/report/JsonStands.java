package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.estimate.Bins;
import quadmean.estimate.EstateSpread;
import quadmean.estimate.EstateSpread.StandLine;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The part of an estate's {@code estimate.json} about how its stands are spread. */
final class JsonStands {
    private static final String NO_ERRORS = "no stand has two plots with trees";

    private JsonStands() {}

    static ObjectNode of(EstateResult result, EstateSpread spread) {
        Design design = result.design();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("attribute", spread.attribute().id());
        node.put("withPlots", spread.stands());
        node.put("withSamplingError", spread.known());
        node.put("withinTarget", spread.withinTarget());
        JsonNumbers.put(node, "medianSamplingErrorPercent", spread.medianErrorPercent());
        if (spread.known() == 0) {
            node.put("reason", NO_ERRORS);
        }
        node.set(
                "byMean",
                bins(
                        spread.means(),
                        spread.attribute().unit(Basis.PER_AREA, design.units()).symbol()));
        node.set("bySamplingError", bins(spread.errors(), "percent"));
        node.set("largest", lines(design, spread.largest()));
        node.set("worstSamplingError", lines(design, spread.worst()));
        return node;
    }

    private static ObjectNode bins(Bins bins, String unit) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("unit", unit);
        node.put("width", bins.width());
        ArrayNode counts = node.putArray("counts");
        bins.counts().forEach(counts::add);
        node.put("beyond", bins.beyond());
        return node;
    }

    private static ArrayNode lines(Design design, List<StandLine> lines) {
        UnitSystem units = design.units();
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (StandLine line : lines) {
            ObjectNode node = list.addObject();
            node.put("stand", line.stand().code());
            node.put("region", line.stand().region());
            node.put("stratum", line.stand().stratum());
            node.put("areaHa", line.stand().areaHa());
            node.put("areaAc", Unit.HECTARE.convert(line.stand().areaHa(), Unit.ACRE));
            node.put("plots", line.plots());
            JsonNumbers.put(
                    node, "perArea", line.perArea().in(units, line.perArea().mean()));
            node.put("perAreaUnit", line.perArea().unit(units).symbol());
            JsonNumbers.put(node, "total", line.total().in(units, line.total().mean()));
            node.put("totalUnit", line.total().unit(units).symbol());
            JsonNumbers.put(node, "samplingErrorPercent", line.perArea().samplingErrorPercent());
            JsonNumbers.putText(node, "reason", line.perArea().reason());
        }
        return list;
    }
}
