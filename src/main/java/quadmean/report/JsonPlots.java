package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.estimate.GainPoint;
import quadmean.estimate.PlotShares;
import quadmean.estimate.PlotsNeeded;
import quadmean.estimate.StratumPlots;

/** Plots needed by stratum, and what more plots bring, in {@code estimate.json}. */
final class JsonPlots {
    private JsonPlots() {}

    static ArrayNode allocations(PlotsNeeded needed) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        needed.shares().forEach(s -> list.add(allocation(s)));
        return list;
    }

    private static ObjectNode allocation(PlotShares shares) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("allocation", shares.allocation().label());
        node.put("run", shares.run());
        node.put("needed", shares.needed());
        node.put("more", shares.more());
        JsonNumbers.put(node, "expectedErrorPercent", shares.expectedErrorPercent());
        JsonNumbers.put(node, "assurance", shares.assurance());
        JsonNumbers.put(node, "plotsFor80PercentAssurance", shares.plotsFor80());
        JsonNumbers.put(node, "plotsFor90PercentAssurance", shares.plotsFor90());
        if (shares.plotsFor90().isEmpty()) {
            node.put("reason", "so sure a target is out of reach");
        }
        ArrayNode strata = node.putArray("strata");
        for (StratumPlots s : shares.strata()) {
            strata.addObject()
                    .put("stratum", s.stratum())
                    .put("run", s.run())
                    .put("needed", s.needed())
                    .put("more", s.more());
        }
        ArrayNode gain = node.putArray("gain");
        for (GainPoint g : shares.gain()) {
            JsonNumbers.put(gain.addObject().put("plots", g.plots()), "expectedErrorPercent", g.errorPercent());
        }
        return node;
    }
}
