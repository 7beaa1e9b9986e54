package quadmean.report;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quadmean.design.Design;
import quadmean.plan.CruisePlan;
import quadmean.plan.PlanOption;
import quadmean.plan.StratumOutlook;

/** The files that a plan is written to. */
public final class PlanOutputs {
    private static final int SCHEMA_VERSION = 1;

    private PlanOutputs() {}

    /** Content by file name: {@code plan.json} and {@code plan.csv}. */
    public static Map<String, Content> of(Design design, CruisePlan plan) {
        Map<String, Content> files = new LinkedHashMap<>();
        ObjectNode root = json(design, plan);
        files.put("plan.json", JsonFile.of(root));
        files.put("plan.csv", csv(plan));
        return files;
    }

    static ObjectNode json(Design design, CruisePlan plan) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("design", design.name());
        root.put("designSha256", design.sha256());
        root.put("seed", design.seed());
        root.put("confidence", plan.confidence());
        root.put("targetErrorPercent", plan.targetErrorPercent());
        root.put("targetAttribute", design.targetAttribute().id());
        root.put("finitePopulation", plan.finitePopulation().id());
        root.put("variation", plan.variation());
        var strata = root.putArray("strata");
        for (StratumOutlook s : plan.outlook()) {
            ObjectNode node = strata.addObject();
            node.put("code", s.code());
            node.put("areaHa", s.areaHa());
            node.put("expectedMean", s.mean());
            node.put("expectedCvPercent", s.cvPercent());
        }
        var options = root.putArray("options");
        for (PlanOption o : plan.options()) {
            ObjectNode node = options.addObject();
            node.put("name", o.name());
            if (o.isReachable()) {
                node.put("plots", o.total());
                ObjectNode shares = node.putObject("plotsByStratum");
                for (int i = 0; i < o.plots().size(); i++) {
                    shares.put(plan.outlook().get(i).code(), o.plots().get(i));
                }
            } else {
                node.putNull("plots");
                node.put("reason", "no number of plots reaches the target");
            }
            JsonNumbers.put(node, "expectedErrorPercent", o.expectedErrorPercent());
        }
        var notes = root.putArray("notes");
        plan.notes().forEach(notes::add);
        return root;
    }

    private static Content csv(CruisePlan plan) {
        List<String> header = List.of("option", "stratum", "area_ha", "expected_cv_percent", "plots");
        Stream<List<String>> rows = plan.options().stream().flatMap(o -> rows(plan, o).stream());
        return Csv.of(header, rows);
    }

    private static List<List<String>> rows(CruisePlan plan, PlanOption option) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < plan.outlook().size(); i++) {
            StratumOutlook s = plan.outlook().get(i);
            String plots = option.isReachable() ? String.valueOf(option.plots().get(i)) : "";
            rows.add(List.of(option.name(), s.code(), Csv.number(s.areaHa()), Csv.number(s.cvPercent()), plots));
        }
        return rows;
    }
}
