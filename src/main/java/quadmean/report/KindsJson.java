package quadmean.report;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import quadmean.design.KindInput;
import quadmean.plan.KindComparison;
import quadmean.plan.KindName;
import quadmean.plan.KindOption;
import quadmean.units.UnitSystem;

/** Kinds of plot compared, as a node of {@code plan.json}; metric but for the pace, which is in m/h, and names. */
final class KindsJson {
    private KindsJson() {}

    static ObjectNode node(KindComparison kinds, UnitSystem units) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        ObjectNode density = node.putObject("density");
        density.put("basalAreaM2PerHa", kinds.density().basalArea());
        density.put("treesPerHa", kinds.density().trees());
        ObjectNode rule = node.putObject("plotSizeRule");
        rule.put("cvPercent", kinds.cvPercent());
        JsonNumbers.put(rule, "areaHa", kinds.cvAreaHa());
        rule.put("source", "Freese 1961, from memory");
        kinds.study().ifPresentOrElse(s -> node.set("map", study(s)), () -> node.putNull("map"));
        node.put("pilotPlots", kinds.pilotPlots());
        ObjectNode times = node.putObject("times");
        for (KindInput input : KindInput.values()) {
            ObjectNode time = times.putObject(input.key());
            time.put("value", kinds.settings().times().of(input));
            time.put("unit", input == KindInput.WALKING ? "m/h" : input.unit(units));
            time.put("from", KindsPart.source(kinds, input));
        }
        var options = node.putArray("options");
        kinds.options().forEach(o -> options.add(option(o, units)));
        Optional<KindOption> quickest = kinds.quickest();
        node.put("fewestHours", quickest.map(o -> KindName.of(o.plot(), units)).orElse(null));
        node.put(
                "fewestHoursAmongUsualPoints",
                kinds.quickestUsual().map(o -> KindName.of(o.plot(), units)).orElse(null));
        var notes = node.putArray("notes");
        kinds.notes().forEach(notes::add);
        return node;
    }

    private static ObjectNode study(KindComparison.Study s) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("file", s.name());
        node.put("stems", s.stems());
        node.put("areaHa", s.areaHa());
        node.put("attribute", s.attribute().id());
        node.put("places", s.places());
        node.put("offTheEdgeM", s.reachM());
        return node;
    }

    private static ObjectNode option(KindOption o, UnitSystem units) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("name", KindName.of(o.plot(), units));
        node.put("kind", KindsCsv.kind(o));
        node.put("countsAsHa", o.areaHa());
        node.put("treesPerPlot", o.treesPerPlot());
        JsonNumbers.put(node, "cvByRulePercent", o.cvByRulePercent());
        JsonNumbers.put(node, "cvByMapPercent", o.cvByMapPercent());
        JsonNumbers.put(node, "cvByPilotPercent", o.cvByPilotPercent());
        JsonNumbers.put(node, "plots", o.plots());
        JsonNumbers.put(node, "walkM", o.work().walkM());
        JsonNumbers.put(node, "walkingHours", o.work().walkingHours());
        JsonNumbers.put(node, "setUpHours", o.work().setUpHours());
        JsonNumbers.put(node, "treeHours", o.work().treeHours());
        JsonNumbers.put(node, "hours", o.work().hours());
        JsonNumbers.putText(node, "remark", KindsPart.remark(o));
        return node;
    }
}
