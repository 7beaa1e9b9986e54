package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.design.Design;
import quadmean.plan.CruisePlan;
import quadmean.plan.PilotEffect;
import quadmean.plan.PlanOption;
import quadmean.plan.PlanOption.Size;
import quadmean.plan.PlanOption.TargetResult;
import quadmean.plan.SampleKind;
import quadmean.plan.StratumOutlook;
import quadmean.plan.TargetOutlook;

/** A plan as JSON, unrounded; what is out of reach is null, with a reason beside it. */
final class PlanJson {
    private static final int SCHEMA_VERSION = 2;

    private PlanJson() {}

    static ObjectNode tree(Design design, CruisePlan plan) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("design", design.name());
        root.put("designSha256", design.sha256());
        root.put("seed", design.seed());
        root.put("finitePopulation", plan.finitePopulation().id());
        root.put("variation", plan.variation());
        ArrayNode targets = root.putArray("targets");
        plan.targets().forEach(t -> target(targets.addObject(), t));
        ObjectNode costs = root.putObject("costs");
        costs.put("stated", plan.costs().areStated());
        costs.put("unit", plan.costs().unit());
        costs.put("fixed", plan.costs().fixed());
        costs.put("plot", plan.costs().perPlot());
        plan.costs().budget().ifPresent(b -> costs.put("budget", b));
        ArrayNode options = root.putArray("options");
        plan.options().forEach(o -> option(options.addObject(), plan, o));
        plan.laidOut().ifPresentOrElse(o -> root.put("laidOut", o.name()), () -> root.putNull("laidOut"));
        plan.pilot().ifPresent(p -> pilot(root.putObject("pilot"), p));
        ArrayNode notes = root.putArray("notes");
        plan.notes().forEach(notes::add);
        return root;
    }

    private static void target(ObjectNode node, TargetOutlook outlook) {
        node.put("attribute", outlook.target().attribute().id());
        node.put("targetErrorPercent", outlook.target().errorPercent());
        node.put("confidence", outlook.target().confidence());
        node.put("expectedCvPercent", outlook.cvPercent());
        ArrayNode strata = node.putArray("strata");
        for (StratumOutlook s : outlook.strata()) {
            ObjectNode stratum = strata.addObject();
            stratum.put("code", s.code());
            stratum.put("areaHa", s.areaHa());
            stratum.put("expectedMean", s.mean());
            stratum.put("expectedCvPercent", s.cvPercent());
            stratum.put("pilotPlots", s.plots());
        }
    }

    private static void option(ObjectNode node, CruisePlan plan, PlanOption o) {
        node.put("name", o.name());
        node.put("kind", o.kind().id());
        if (o.isReachable()) {
            size(node, plan, o, o.atTarget().orElseThrow());
        } else {
            node.putNull("plots");
            node.put("reason", PlanWords.outOfReach(o));
        }
        ArrayNode results = node.putArray("targets");
        o.results().forEach(r -> result(results.addObject(), r));
        ArrayNode surer = node.putArray("assured");
        o.surer().forEach(s -> {
            ObjectNode one = surer.addObject();
            one.put("probability", s.probability());
            one.put("spread", s.spread().id());
            s.size().ifPresentOrElse(size -> size(one, plan, o, size), () -> one.putNull("plots"));
        });
        if (plan.costs().budget().isPresent()) {
            ObjectNode budget = node.putObject("inBudget");
            o.inBudget().ifPresentOrElse(size -> size(budget, plan, o, size), () -> {
                budget.putNull("plots");
                budget.put("reason", "the budget does not pay for the smallest sample");
            });
        }
        ArrayNode curve = node.putArray("curve");
        o.curve().forEach(p -> {
            ObjectNode point = curve.addObject();
            point.put("plots", p.plots());
            point.put("cost", p.cost());
            JsonNumbers.put(point, "expectedErrorPercent", p.errorPercent());
        });
        ArrayNode notes = node.putArray("notes");
        o.notes().forEach(notes::add);
    }

    private static void size(ObjectNode node, CruisePlan plan, PlanOption o, Size size) {
        node.put("plots", size.plots());
        boolean strata = o.kind() == SampleKind.STRATIFIED || o.kind() == SampleKind.SIMPLE;
        ObjectNode units = node.putObject(strata ? "plotsByStratum" : "units");
        for (int i = 0; i < size.units().size(); i++) {
            String name = strata ? plan.outlook().get(i).code() : o.partNames().get(i);
            units.put(name, size.units().get(i));
        }
        node.put("cost", size.cost());
        JsonNumbers.put(node, "expectedErrorPercent", size.errorPercent());
    }

    private static void result(ObjectNode node, TargetResult r) {
        node.put("attribute", r.target().attribute().id());
        JsonNumbers.put(node, "plotsAlone", r.plotsAlone());
        JsonNumbers.put(node, "expectedErrorPercent", r.expectedErrorPercent());
        JsonNumbers.put(node, "chance", r.chance());
        JsonNumbers.put(node, "chanceAfterPilot", r.chanceAfterPilot());
    }

    private static void pilot(ObjectNode node, PilotEffect pilot) {
        node.put("df", pilot.df());
        node.put("cvPercent", pilot.cvPercent());
        ArrayNode limits = node.putArray("limits");
        pilot.limits().forEach(l -> {
            ObjectNode limit = limits.addObject();
            limit.put("confidence", l.confidence());
            limit.put("cvPercent", l.cvPercent());
            JsonNumbers.put(limit, "plots", l.plots());
        });
    }
}
